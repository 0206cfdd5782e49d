package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import loadwalk.journal.TornLine;
import loadwalk.report.Journals;
import loadwalk.view.state.Library;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a journal stands at the top of every form of sheet, ledger and replay. */
class DamageInReportsTest {
  private static final List<String> FINISHED = Journals.practice(1, "stereo-only");
  private static final List<String> OPEN = beforeDone("stereo-2");
  private static final String MISSING = "The journal is damaged: 40 records are missing at its end";
  private static final String TORN = "The last line of the journal was cut off.";
  private static final String UNKNOWN =
      "Whether records are missing at the end of the journal cannot be known.";
  private static final String SPOILED = "The file that says where the journal ends is spoiled";
  private static final String WINDOWS = "The lines of the journal end as Windows writes them";

  @TempDir Path folder;

  private KeptHome home;

  @BeforeEach
  void home() {
    home = new KeptHome(folder.resolve("home"));
  }

  /** Returns the finished walk up to the last moment of a step. */
  private static List<String> beforeDone(String step) {
    String done = "\"fact\":\"done\",\"step\":\"" + step + "\"";
    List<String> before = FINISHED.stream().takeWhile(body -> !body.contains(done)).toList();
    assertTrue(before.size() < FINISHED.size(), done);
    return before;
  }

  /** Holds that every form of every report says it, with the word and the exit code. */
  private void holds(int code, String word, String told, String mark) throws IOException {
    for (List<String> form :
        List.of(
            List.<String>of(),
            List.of("--html", "-"),
            List.of("--markdown", "-"),
            List.of("--csv", "-"),
            List.of("--json", "-"))) {
      String[] words = form.toArray(String[]::new);
      inOneForm(code, told, home.sheet(words), form + " sheet");
      inOneForm(code, told, home.replay(), "replay");
      KeptHome.Printed ledger = home.ledger(words);
      assertEquals(code, ledger.code(), ledger::toString);
      boolean machine = form.contains("--csv") || form.contains("--json");
      String shown = ledger.out().replaceAll("\\s+", " ");
      assertTrue(shown.contains(machine ? word : mark), () -> form + ledger.toString());
    }
    ObjectMapper json = new ObjectMapper();
    JsonNode sheet = json.readTree(home.sheet("--json", "-").out());
    assertEquals(word, sheet.get("journal").asText());
    assertTrue(sheet.get("warnings").get(0).asText().startsWith(told), sheet::toString);
    JsonNode walk = json.readTree(home.ledger("--json", "-").out()).get("walks").get(0);
    assertEquals(word, walk.get("journal").asText());
    assertTrue(walk.get("told").asText().startsWith(told), walk::toString);
    JsonNode replay = json.readTree(home.replay("--json").out()).get("walks").get(0);
    assertEquals(word, replay.get("journal").asText());
  }

  private static void inOneForm(int code, String told, KeptHome.Printed printed, String where) {
    assertEquals(code, printed.code(), where + printed);
    String out = printed.out().replaceAll("\\s+", " ");
    assertTrue(out.contains(told), () -> where + printed);
    assertTrue(printed.err().contains(told), () -> where + printed);
    int results = out.indexOf("Power at each load");
    assertTrue(results < 0 || out.indexOf(told) < results, () -> where + printed);
  }

  @Test
  void recordsMissingAtTheEnd_areToldEverywhere_andTheWalkIsNotRanked() throws IOException {
    home.keep(FINISHED);
    byte[] whole = Files.readAllBytes(home.journal());
    home.cutAfter(whole, FINISHED.size() - 40);
    holds(4, "damaged", MISSING, "(practice, damaged)");
    KeptHome.Printed ledger = home.ledger();
    assertTrue(ledger.out().contains(KeptHome.NAME + " is not ranked: The journal is damaged"));
    assertFalse(ledger.out().contains("unfinished"), ledger::out);
    assertFalse(ledger.out().contains("Best at each load"), ledger::out);
    assertFalse(home.sheet().out().contains("not finished"));
  }

  /** What is missing may be what takes a reading back: nothing of it ranks, finished or not. */
  @Test
  void finishedWalkThatLacksALaterCorrection_isNotRanked() throws IOException {
    home.keep(FINISHED);
    byte[] finished = Files.readAllBytes(home.journal());
    Files.delete(home.journal());
    List<String> corrected = new ArrayList<>(FINISHED);
    corrected.add(FINISHED.get(FINISHED.size() - 1));
    home.keep(corrected);
    assertEquals(0, home.ledger().code());
    Files.write(home.journal(), finished);
    KeptHome.Printed ledger = home.ledger();
    assertEquals(4, ledger.code());
    assertFalse(ledger.out().contains("Best at each load"), ledger::out);
  }

  @Test
  void damagedWalk_isNamedSoOnTheHomeScreen_andNotOfferedAsOpen() throws IOException {
    home.keep(OPEN);
    assertEquals("open at stereo-2", atHome().standing());
    assertTrue(atHome().isOpen());
    home.cutAfter(Files.readAllBytes(home.journal()), 60);
    assertEquals("damaged", atHome().standing());
    assertFalse(atHome().isOpen());
  }

  private Library.KeptWalk atHome() throws IOException {
    DataHome there = new DataHome(folder.resolve("home"));
    return new WalkFolder(new JournalFolder(there))
        .library(new SequenceFinder(there))
        .walks()
        .get(0);
  }

  @Test
  void bitTurnedInTheLastRecord_isToldEverywhere() throws IOException {
    home.keep(FINISHED);
    byte[] bytes = Files.readAllBytes(home.journal());
    bytes[bytes.length - 30] ^= 4;
    Files.write(home.journal(), bytes);
    String told = "The journal is damaged: 1 record at its end cannot be read.";
    holds(4, "damaged", told, "damaged");
    Files.delete(home.witness());
    holds(4, "damaged", "The journal is damaged: it cannot be read to the end.", "damaged");
  }

  @Test
  void recordsTurnedToZeros_areToldEverywhere() throws IOException {
    home.keep(FINISHED);
    byte[] whole = Files.readAllBytes(home.journal());
    home.cutAfter(whole, FINISHED.size() - 67);
    int left = (int) Files.size(home.journal());
    Files.write(home.journal(), new byte[whole.length - left], StandardOpenOption.APPEND);
    String told = "The journal is damaged: 67 records at its end cannot be read.";
    holds(4, "damaged", told, "damaged");
    Files.delete(home.witness());
    holds(4, "damaged", "The journal is damaged: it cannot be read to the end.", "damaged");
  }

  @Test
  void lineThatAnInterruptedWriteLeft_isToldEverywhere_andIsNoFault() throws IOException {
    home.keep(OPEN);
    byte[] torn = TornLine.after(Files.readAllBytes(home.journal()), 60);
    Files.write(home.journal(), torn, StandardOpenOption.APPEND);
    holds(0, "torn", TORN, "cut off in a record");
    assertFalse(home.sheet().out().replaceAll("\\s+", " ").contains(UNKNOWN));
    Files.delete(home.witness());
    holds(0, "torn", TORN, "cut off in a record");
    assertTrue(home.sheet().out().replaceAll("\\s+", " ").contains(UNKNOWN));
  }

  @Test
  void openWalkWithoutItsWitness_isToldToBeUnknowable_andAFinishedOneIsKnown() throws IOException {
    home.keep(OPEN);
    assertEquals("", home.sheet().err());
    Files.delete(home.witness());
    holds(0, "end-unknown", UNKNOWN, "(practice, unfinished, end unknown)");
    Files.delete(home.journal());
    home.keep(FINISHED);
    Files.delete(home.witness());
    assertEquals("", home.sheet().err());
    assertTrue(home.sheet("--json", "-").out().contains("\"journal\" : \"whole\""));
  }

  @Test
  void spoiledWitness_isToldEverywhere_andResumingWritesItAnew() throws IOException {
    home.keep(OPEN);
    byte[] bytes = Files.readAllBytes(home.witness());
    bytes[20] ^= 1;
    Files.write(home.witness(), bytes);
    holds(4, "end-spoiled", SPOILED, "(practice, end spoiled)");
    JournalFolder store = new JournalFolder(new DataHome(folder.resolve("home")));
    Walks.writing(store.open(new WalkName(KeptHome.NAME))).walk().close();
    assertEquals(0, home.sheet().code());
    assertEquals("", home.sheet().err());
  }

  @Test
  void witnessOfAnEarlierWalkOfTheName_misleadsNobody() throws IOException {
    home.keep(FINISHED);
    byte[] witness = Files.readAllBytes(home.witness());
    Files.delete(home.journal());
    List<String> others = Journals.practice(2, "stereo-only").subList(0, 50);
    home.keep(others);
    assertEquals(0, home.sheet().code());
    assertEquals("", home.sheet().err());
    Files.write(home.witness(), witness);
    holds(0, "end-unknown", UNKNOWN, "end unknown");
  }

  @Test
  void linesThatEndAsWindowsWritesThem_areRead_andSaid() throws IOException {
    home.keep(FINISHED);
    String sheet = home.sheet("--json", "-").out();
    String text = Files.readString(home.journal(), UTF_8);
    Files.writeString(home.journal(), text.replace("\n", "\r\n"));
    KeptHome.Printed windows = home.sheet("--json", "-");
    assertEquals(0, windows.code(), windows::toString);
    assertTrue(windows.err().startsWith(WINDOWS), windows::err);
    assertEquals(sheet, windows.out().replaceFirst("\"" + WINDOWS + "[^\"]*\", ", ""));
    assertEquals(0, home.ledger().code());
    assertTrue(home.replay().out().contains(WINDOWS));
  }
}
