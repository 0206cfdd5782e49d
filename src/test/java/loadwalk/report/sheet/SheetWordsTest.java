package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;

/** Sentences of a sheet that no kept walk has. */
class SheetWordsTest {
  private static final Bench EMPTY =
      new Bench("Nothing", List.of(), List.of(), OptionalDouble.empty(), List.of(), List.of(), 0.9);

  private static List<String> lines(Walks walk) {
    Sheet sheet = Sheet.of(walk.state(), SheetOptions.DEFAULT, StockRules.RULES);
    return Sheets.lines(sheet, 200, false);
  }

  private static void assertTold(String line, Walks walk) {
    List<String> lines = lines(walk);
    assertTrue(lines.contains(line), line + " is no line of\n" + String.join("\n", lines));
  }

  @Test
  void benchOfNothing_saysSo() {
    Walks walk = Walks.opened("stereo-only", Walks.halvorsen(), EMPTY, OptionalLong.empty());
    assertTold("Supplies            not given", walk);
    assertTold("Leads               not given", walk);
    assertTold("Fuse at the source  not given", walk);
  }

  @Test
  void pausedWalk_isNeitherAtAStepNorStopped() {
    Walks walk = Walks.practicing(1, "stereo-only");
    walk.begin();
    walk.hear(new Intent.Pause());
    assertTold("WARNING: This walk is not finished: it is paused at warm-up.", walk);
  }

  /** Typed twice within a moment: the second corrects the first. */
  @Test
  void temperatureTypedTwiceAtOneMoment_countsOnce() {
    Walks walk = Walks.practicing(1, "stereo-only");
    walk.begin();
    walk.pass(100);
    walk.enter("warm-up", ReadingId.SINK_CELSIUS, "32.5 degC");
    walk.enter("warm-up", ReadingId.SINK_CELSIUS, "23.5 degC");
    String told =
        " of 15 min. One temperature: 23.5 °C. Too few of them to tell how steady it was at the"
            + " end.";
    assertTrue(
        lines(walk).stream().anyMatch(l -> l.endsWith(told)), String.join("\n", lines(walk)));
  }

  @Test
  void csv_holdsTheSerialNumberOnlyWhenAsked() {
    for (boolean asked : new boolean[] {false, true}) {
      String csv =
          SheetCsv.text(
              Sheet.of(FrozenWalks.eventful(), new SheetOptions(asked), StockRules.RULES));
      assertEquals(asked, csv.contains("\r\namplifier,,serial,,,,HP-000417\r\n"), csv);
    }
  }
}
