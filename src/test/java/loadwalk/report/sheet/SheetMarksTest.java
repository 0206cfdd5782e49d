package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.result.Mark;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;

/** What a reader must know first stands at the top of the sheet and at the number. */
class SheetMarksTest {
  private static List<String> warnings(Walks walk) {
    return Cases.sheet(Cases.ended(walk)).warnings();
  }

  private static Walks typed(ReadingId id, String text) {
    return Cases.read(Cases.warm(), Cases.but(Map.of(id, text)));
  }

  @Test
  void soundResult_hasNoMarkAndNoWarning() {
    Sheet sheet = Cases.sheet(Cases.ended(Cases.read(Cases.warm(), Cases.FINE)));
    assertEquals(List.of(), sheet.warnings());
    assertEquals(List.of(), sheet.loads().get(0).power().marks());
  }

  /** 2 · 43.9² / 4 = 963.6 W out of 13.9 V · 60.0 A = 834 W. */
  @Test
  void impossibleStoodBy_comesFirst_thenTheRestByWeight() {
    Walks walk =
        Cases.read(
            Cases.cold(),
            Map.of(
                ReadingId.OUTPUT_VOLTS, "43.9 V",
                ReadingId.SUPPLY_VOLTS, "13.9 V",
                ReadingId.SUPPLY_AMPS, "60.0 A"));
    List<String> told = warnings(walk);
    assertEquals(5, told.size(), told.toString());
    assertTrue(
        told.get(0).matches("stereo 4 Ω: 96\\d ± \\d+ W came out of 834 ± \\d+ W in, .*"),
        told.get(0));
    assertTrue(told.get(0).endsWith("which cannot be: a reading is wrong."), told.get(0));
    assertTrue(
        told.get(1).startsWith("stereo 4 Ω rests on what was doubted and stood by: output volts"),
        told.get(1));
    assertTrue(told.get(1).contains("43.9 V"), told.get(1));
    assertEquals(
        List.of(
            "The warm-up lasted 0 of 15 min. Every load was read on an amplifier that was not"
                + " warm.",
            "Not known at what distortion, with no THD read and nothing said: stereo 4 Ω.",
            "stereo 4 Ω was read at 13.9 V at the amplifier; 14.4 V was asked for."),
        told.subList(2, 5));
  }

  @Test
  void marks_standAtTheNumberInEveryFormat() throws Exception {
    Sheet sheet =
        Cases.sheet(Cases.read(Cases.cold(), Cases.but(Map.of(ReadingId.THD_PERCENT, "9.0 %"))));
    assertTrue(
        Cases.text(sheet).contains("stood by, not warm, above the limit") || rowHolds(sheet),
        Cases.text(sheet));
    assertTrue(
        Sheets.html(sheet).contains("<dt>Marks</dt><dd>stood by, not warm, above the limit"),
        Sheets.html(sheet));
    assertTrue(Sheets.markdown(sheet).contains("| stood by, not warm, above the limit"));
    String csv = SheetCsv.text(sheet);
    assertTrue(csv.contains("\r\npower,stereo-4,mark,,,,not-warm\r\n"), csv);
    assertTrue(csv.contains("\r\npower,stereo-4,mark,,,,above-limit\r\n"), csv);
    assertTrue(csv.contains("\r\nresult,stereo-4,mark,,,,above-limit\r\n"), csv);
    JsonNode load = new ObjectMapper().readTree(SheetJson.text(sheet)).at("/loads/0");
    List<String> marks = new ArrayList<>();
    load.get("marks").forEach(mark -> marks.add(mark.asText()));
    assertTrue(marks.containsAll(List.of("not-warm", "above-limit")), marks.toString());
    assertEquals("above-limit", load.at("/conditions/criterion").asText());
  }

  /** At 80 columns the marks of a row wrap below each other; all of them are there. */
  private static boolean rowHolds(Sheet sheet) {
    List<String> lines = Cases.lines(sheet);
    int row =
        lines.indexOf(
            lines.stream().filter(l -> l.startsWith("stereo 4 Ω  ")).findFirst().orElseThrow());
    String cells = String.join(" ", lines.subList(row, row + 3)).replaceAll("\\s+", " ");
    return cells.contains("not warm,") && cells.contains("above") && cells.contains("limit");
  }

  @Test
  void readAboveTheLimit_namesTheFigure() {
    assertTrue(
        warnings(typed(ReadingId.THD_PERCENT, "9.0 %"))
            .contains("Not read at 1 % THD but above it: stereo 4 Ω at 9 %."));
  }

  @Test
  void readBelowTheLimit_namesTheFigure() {
    assertTrue(
        warnings(typed(ReadingId.THD_PERCENT, "0.10 %"))
            .contains("Not read at 1 % THD but below it: stereo 4 Ω at 0.1 %."));
  }

  @Test
  void supplyOff_namesBothVolts_andWithinAPercentAndAHalfIsSilent() {
    assertTrue(
        warnings(typed(ReadingId.SUPPLY_VOLTS, "13.4 V"))
            .contains("stereo 4 Ω was read at 13.4 V at the amplifier; 14.4 V was asked for."));
    List<String> near = warnings(typed(ReadingId.SUPPLY_VOLTS, "14.2 V"));
    assertTrue(near.stream().noneMatch(w -> w.contains("asked for")), near.toString());
  }

  @Test
  void openDoubt_comesBeforeThePractice_whichComesLast() {
    Walks walk = Walks.practicing(1, "stereo-only").oneStep();
    walk.begin();
    walk.enter("idle", ReadingId.SUPPLY_AMPS, "190 A");
    walk.hear(new Intent.Finish());
    List<String> told = Cases.sheet(walk).warnings();
    assertEquals(3, told.size(), told.toString());
    assertEquals(
        "idle: a doubt on supply amps has no answer. Every result from it is in doubt too.",
        told.get(0));
    assertTrue(told.get(1).startsWith("This walk is not finished"), told.get(1));
    assertEquals("Practice: a simulated amplifier (seed 1), not a measurement.", told.get(2));
  }

  /** Efficiency above 1 and heat below 0 are no results. */
  @Test
  void impossibleResult_hasNoEfficiencyAndNoHeat() {
    Sheet sheet =
        Cases.sheet(Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.SUPPLY_AMPS, "2.0 A"))));
    List<String> rows = Cases.lines(sheet);
    assertTrue(
        rows.stream().anyMatch(r -> r.matches("stereo 4 Ω .* 50 +impossible")),
        String.join("\n", rows));
    assertTrue(
        rows.stream().anyMatch(r -> r.matches("stereo-4 .* W +impossible +impossible")),
        String.join("\n", rows));
    assertTrue(
        SheetPage.of(sheet).charts().stream()
            .noneMatch(c -> c.title().equals("Efficiency vs. load")));
  }

  /** Volts and a distortion as rated: the verdict says beside it that it rests on a doubt. */
  @Test
  void verdictOnWhatWasStoodBy_saysSo() {
    Walks walk =
        Cases.read(
            Cases.warm(),
            Cases.but(
                Map.of(
                    ReadingId.OUTPUT_VOLTS, "28.3 V",
                    ReadingId.OTHER_OUTPUT_VOLTS, "28.3 V",
                    ReadingId.SUPPLY_AMPS, "40.0 A")));
    Sheet sheet = Cases.sheet(walk);
    assertTrue(
        sheet.loads().get(0).power().marks().contains(Mark.STOOD_BY), sheet.warnings().toString());
    assertTrue(Cases.text(sheet).contains("met, stood by"), Cases.text(sheet));
  }

  /** Two runs that agree, the second after a warm-up of nothing: the mean says so. */
  @Test
  void coldRecheckOfAWarmRun_isNotComparedWithIt_norCounts() {
    Walks walk = Cases.read(Cases.warm(), Cases.FINE);
    walk.hear(new Intent.Skip("no open load today"));
    walk.begin();
    walk.hear(new Intent.EndEarly("no time"));
    Map<ReadingId, String> again =
        Cases.but(
            Map.of(
                ReadingId.OUTPUT_VOLTS, "14.10 V",
                ReadingId.OTHER_OUTPUT_VOLTS, "14.10 V"));
    Sheet sheet = Cases.sheet(Cases.read(walk, "recheck", again));
    assertEquals(List.of("stereo-4"), sheet.loads().get(0).power().runs());
    assertEquals(List.of(), sheet.loads().get(0).power().marks());
    assertEquals(List.of(), sheet.warnings());
    String not =
        "Recheck and stereo-4 are not compared: tone, supply or warm-up were not alike, or not"
            + " read.";
    assertTrue(Cases.text(sheet).replaceAll("\\s+", " ").contains(not), Cases.text(sheet));
  }
}
