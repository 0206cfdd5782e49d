package loadwalk.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables are read strictly: a slip in a row is told with its line and never passes. */
class SituationReaderTest {
  private static final String COLUMNS = "| " + String.join(" | ", Situations.COLUMNS) + " |\n";
  private static final String RULE = "| ---".repeat(Situations.COLUMNS.size()) + " |\n";
  private static final String ROW =
      "| A supply too small | Strong | Sound; supplies: 13.8 V 50 A | – | measure stereo 4 Ω"
          + " | 51–52 A | halt supply-amps | halt | – |\n";

  private final Situations situations = Situations.kept();

  private String faultOf(String row) {
    return assertThrows(
            IllegalArgumentException.class,
            () -> situations.read("x.md", "# Title\n\n" + COLUMNS + RULE + ROW + row))
        .getMessage();
  }

  @Test
  void row_isReadWhole() {
    List<Situations.Situation> read = situations.read("x.md", "Prose.\n\n" + COLUMNS + RULE + ROW);
    assertEquals("x.md:5 A supply too small", read.get(0).name());
    assertEquals(List.of("halt supply-amps"), read.get(0).cautions());
    assertEquals("halt", situations.brief(read.get(0)).verdict().word());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          Strong           ; Weak           ; there is no amplifier «Weak»
          Sound            ; Silent         ; there is no bench «Silent»
          supplies:        ; supply:        ; must name one of
          13.8 V 50 A      ; 13.8 V         ; is not a supply such as
          stereo 4         ; mono 4         ; is not a step such as
          52 A             ; 52 ampere      ; is not a band such as
          halt supply-amps ; halt supply    ; codes.md knows no «halt supply»
          halt supply-amps ; clear supply-amps ; codes.md knows no «clear supply-amps»
          halt |           ; stop |         ; a verdict is one of
          A supply too small ; ' '          ; the cell of "situation" is blank
          | measure        ; measure        ; 'a row has 9 cells, found 8'
          """)
  void slipInARow_isToldWithItsLine(String right, String wrong, String told) {
    assertTrue(ROW.contains(right), right);
    String fault = faultOf(ROW.replace(right, wrong));
    assertTrue(fault.startsWith("x.md:6: ") && fault.contains(told), fault);
  }

  @Test
  void unknownColumn_isToldWithItsLine() {
    String table = COLUMNS.replace("verdict", "judgement") + RULE + ROW;
    String fault =
        assertThrows(IllegalArgumentException.class, () -> situations.read("x.md", table))
            .getMessage();
    assertTrue(fault.startsWith("x.md:1: the columns must be "), fault);
  }

  @Test
  void whatWasDone_mustBePossible() {
    for (String done : List.of("stereo-8: 13 V", "here: 3 furlongs", "stereo-4: stood by")) {
      String row = ROW.replace("| – | measure", "| " + done + " | measure");
      Situations.Situation situation = situations.read("x.md", COLUMNS + RULE + row).get(0);
      String fault =
          assertThrows(IllegalArgumentException.class, () -> situations.brief(situation))
              .getMessage();
      assertTrue(fault.startsWith("x.md:3: "), fault);
    }
  }

  /** The message of a row that differs holds the row to copy and the program's reasons. */
  @Test
  void difference_showsBothAnswers_theReasons_andTheRow() {
    Situations.Situation situation =
        situations.read("x.md", COLUMNS + RULE + ROW.replace("halt", "heed")).get(0);
    String told = Situations.difference(situation, situations.brief(situation));
    assertTrue(told.contains("expected heed supply-amps → heed"), told);
    assertTrue(told.contains("found    halt supply-amps → halt"), told);
    assertTrue(told.contains("the supplies bear 45 A"), told);
    assertTrue(told.endsWith("\n" + ROW.strip()), told);
  }
}
