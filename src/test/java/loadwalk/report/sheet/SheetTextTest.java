package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.text.Columns;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;

class SheetTextTest {
  private static final Sheet EVENTFUL =
      Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES);

  @Test
  void lines_neverExceedTheColumns() {
    Sheet whole = Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES);
    for (Sheet sheet : List.of(whole, EVENTFUL)) {
      for (int columns : new int[] {40, 80, 100, 120}) {
        for (String line : Sheets.lines(sheet, columns, false)) {
          assertTrue(Columns.of(line) <= columns, columns + " columns: " + line);
        }
      }
    }
  }

  @Test
  void ascii_holdsNothingElseAndLosesNothing() {
    List<String> lines = Sheets.lines(EVENTFUL, 80, true);
    lines.forEach(l -> assertTrue(l.chars().allMatch(c -> c >= 32 && c < 127), l));
    assertEquals(List.of(), lines.stream().filter(l -> l.contains("?")).toList());
  }

  @Test
  void serialNumber_isShownOnlyWhenAsked() {
    assertFalse(all(EVENTFUL).contains("HP-000417"));
    assertTrue(all(EVENTFUL).contains("hidden"));
    Sheet shown = Sheet.of(Walks.eventful().state(), new SheetOptions(true), StockRules.RULES);
    assertTrue(all(shown).contains("HP-000417"));
  }

  @Test
  void whatHappened_isAllThere() {
    String text = all(EVENTFUL);
    for (String expected :
        List.of(
            "Corrected to 15.0 V.",
            "stereo-2, output volts: 150 V → 15.0 V.",
            "Ended early: “steady already, and the shop closes”.",
            "smell from a load, moved it away",
            "bridged-0.5: “not today, the bank is too hot”.",
            "fan came on <b>loud</b>",
            "stereo-1: One channel measured",
            "AC volts is specified from 45 Hz to 1 kHz and the tone is 40 Hz")) {
      String sought = expected.replace("stereo-1: ", "");
      assertTrue(text.contains(sought), sought);
    }
  }

  @Test
  void ratio_ofTheLowerChannel_saysSo() {
    Sheet sheet =
        Sheet.of(Walks.practice(3, "stereo-only"), SheetOptions.DEFAULT, StockRules.RULES);
    Sheet.LoadLine line = sheet.loads().get(0);
    double lower = line.rating().orElseThrow().measured().value();
    assertTrue(lower < line.power().watts().value(), () -> lower + " W is not the lower");
    assertTrue(
        all(sheet).contains("stereo 4 Ω: the rating is set against the weaker channel, "),
        all(sheet));
  }

  @Test
  void unfinishedWalk_saysSoFirst() {
    Walks walk = Walks.practicing(1, "stereo-only").oneStep().oneStep().oneStep();
    Sheet sheet = Sheet.of(walk.state(), SheetOptions.DEFAULT, StockRules.RULES);
    List<String> lines = Sheets.lines(sheet, 80, false);
    assertEquals("WARNING: This walk is not finished: it is at stereo-2.", lines.get(3));
  }

  @Test
  void stopWithoutItsReason_isAStopAllTheSame() {
    Walks walk = Walks.practicing(1, "stereo-only").oneStep();
    walk.hear(new Intent.Stop());
    String text = all(walk);
    assertTrue(text.contains("This walk is not finished: it was stopped at idle."), text);
    assertTrue(text.contains("no reason typed yet"), text);
    assertFalse(text.contains("never stopped"), text);
  }

  @Test
  void fitThroughTwoReadings_claimsNoCloseness() {
    Walks walk = Walks.practicing(1, "stereo-only").oneStep().oneStep().oneStep();
    assertFalse(all(walk).contains("two readings alone"), all(walk));
    String two = all(walk.oneStep());
    assertTrue(two.contains("It rests on two readings alone, so nothing checks it."), two);
    assertFalse(two.contains("Every reading is within"), two);
    String three = all(walk.oneStep());
    assertTrue(three.contains("Every reading is within"), three);
  }

  @Test
  void bandOfAMeter_isTakenAsItStands() {
    assertTrue(all(Walks.practicing(1, "stereo-only")).contains("20 Hz to 20 kHz"));
  }

  private static String all(Walks walk) {
    return all(Sheet.of(walk.state(), SheetOptions.DEFAULT, StockRules.RULES));
  }

  private static String all(Sheet sheet) {
    return String.join("\n", Sheets.lines(sheet, 4000, false));
  }
}
