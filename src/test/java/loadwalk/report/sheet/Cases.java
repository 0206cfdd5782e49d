package loadwalk.report.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.WalkState;

/** Makes short walks of one load, 4 Ω stereo at 14.4 V and 1 kHz asked for, and reads sheets. */
final class Cases {
  /** What is typed where all is well: 14.14² / 4 = 50 W in each load, of 201.6 W in. */
  static final Map<ReadingId, String> FINE =
      Map.of(
          ReadingId.OUTPUT_VOLTS, "14.14 V",
          ReadingId.OTHER_OUTPUT_VOLTS, "14.14 V",
          ReadingId.SUPPLY_VOLTS, "14.40 V",
          ReadingId.SUPPLY_AMPS, "12.0 A",
          ReadingId.FREQUENCY_HERTZ, "1000 Hz",
          ReadingId.THD_PERCENT, "0.98 %");

  private Cases() {}

  /** A walk that is warm and at its first load. */
  static Walks warm() {
    Walks walk =
        Walks.opened("rated-conditions", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    walk.begin();
    walk.pass(960);
    walk.hear(new Intent.Finish());
    walk.hear(new Intent.Skip("no clamp for so little current"));
    return walk;
  }

  /** A walk that was not warmed up, at its first load. */
  static Walks cold() {
    Walks walk =
        Walks.opened("rated-conditions", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    walk.begin();
    walk.hear(new Intent.EndEarly("no time"));
    walk.hear(new Intent.Skip("no clamp for so little current"));
    return walk;
  }

  /** Enters readings, stands by what is doubted, and goes to the end. */
  static Walks read(Walks walk, Map<ReadingId, String> readings) {
    return read(walk, "stereo-4", readings);
  }

  static Walks read(Walks walk, String step, Map<ReadingId, String> readings) {
    walk.begin();
    for (ReadingId id : ReadingId.values()) {
      if (readings.containsKey(id)) {
        walk.enter(step, id, readings.get(id));
      }
    }
    walk.standByAll(step, "read twice");
    walk.hear(new Intent.Finish());
    return walk;
  }

  static Walks ended(Walks walk) {
    while (!walk.state().isFinished()) {
      walk.hear(new Intent.Skip("one load is enough"));
    }
    return walk;
  }

  /** The readings of {@link #FINE} with some typed otherwise; an empty text is not typed. */
  static Map<ReadingId, String> but(Map<ReadingId, String> others) {
    return Arrays.stream(ReadingId.values())
        .filter(id -> !typed(id, others).isEmpty())
        .collect(Collectors.toMap(id -> id, id -> typed(id, others)));
  }

  private static String typed(ReadingId id, Map<ReadingId, String> others) {
    return others.getOrDefault(id, FINE.getOrDefault(id, ""));
  }

  static Sheet sheet(WalkState state) {
    return Sheet.of(state, SheetOptions.DEFAULT, StockRules.RULES);
  }

  static Sheet sheet(Walks walk) {
    return sheet(walk.state());
  }

  /** Returns the text of a sheet without its line breaks. */
  static String text(Sheet sheet) {
    return String.join(" ", lines(sheet)).replaceAll("\\s+", " ");
  }

  static List<String> lines(Sheet sheet) {
    return Sheets.lines(sheet, 80, false);
  }
}
