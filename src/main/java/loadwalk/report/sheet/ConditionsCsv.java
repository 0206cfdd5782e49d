package loadwalk.report.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ThdKind;
import loadwalk.quantity.Unit;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.ReadBy;

/** The conditions of a result as cells of a CSV, with the keys that JSON has. */
final class ConditionsCsv {
  private ConditionsCsv() {}

  /**
   * One condition; both value and text are empty where nobody read it.
   *
   * @param key its key in JSON
   * @param value its number
   * @param unit the unit of the number
   * @param text its word
   */
  record Cell(String key, OptionalDouble value, Unit unit, Optional<String> text) {}

  static List<Cell> cells(Conditions c) {
    Circumstances around = c.around();
    return List.of(
        word("section", Optional.empty()),
        word("mode", Optional.of(c.mode().word())),
        number("ohms", OptionalDouble.of(c.ohms()), Unit.OHM),
        number("ohmsRead", c.ohmsRead(), Unit.OHM),
        word("driven", Optional.of(Conditions.ALL_DRIVEN)),
        number("channelsRead", OptionalDouble.of(c.channelsRead()), Unit.ONE),
        number("hertz", c.hertz(), Unit.HERTZ),
        word("criterion", Optional.of(c.criterion().word())),
        word("criterionSaid", Optional.of(yes(c.said()))),
        number("thdPercent", c.thdPercent(), Unit.PERCENT),
        word("thdKind", around.thdKind().map(ThdKind::word)),
        number("thdBandwidthHertz", around.thdBandwidthHertz(), Unit.HERTZ),
        number("supplyVolts", c.supplyVolts(), Unit.VOLT),
        word("warm", around.warm().map(ConditionsCsv::yes)),
        number("heldSeconds", around.heldSeconds(), Unit.SECOND),
        number("ambientCelsius", around.ambientCelsius(), Unit.CELSIUS),
        word("readBy", around.readBy().map(ReadBy::word)));
  }

  private static String yes(boolean holds) {
    return holds ? "yes" : "no";
  }

  private static Cell number(String key, OptionalDouble value, Unit unit) {
    boolean known = value.isPresent() && Double.isFinite(value.getAsDouble());
    return new Cell(key, known ? value : OptionalDouble.empty(), unit, Optional.empty());
  }

  private static Cell word(String key, Optional<String> word) {
    return new Cell(key, OptionalDouble.empty(), Unit.ONE, word);
  }
}
