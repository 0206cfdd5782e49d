package loadwalk.walk;

import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/** Lists the readings a step asks for, in the order an operator takes them. */
public final class Asks {
  private Asks() {}

  /** Returns the readings of a step, the ones it cannot do without among them. */
  public static List<ReadingId> readings(Target target) {
    switch (target.kind()) {
      case WARM_UP:
        return List.of(ReadingId.SINK_CELSIUS);
      case IDLE:
        return List.of(ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS, ReadingId.SINK_CELSIUS);
      case OPEN_LOAD:
        return List.of(ReadingId.OUTPUT_VOLTS, ReadingId.OPEN_VOLTS);
      default:
        return target.mode() == Mode.STEREO ? STEREO : BRIDGED;
    }
  }

  /** Returns the reading a step cannot be finished without; empty for a warm-up. */
  public static List<ReadingId> required(Target target) {
    switch (target.kind()) {
      case WARM_UP:
        return List.of();
      case IDLE:
        return List.of(ReadingId.SUPPLY_AMPS);
      case OPEN_LOAD:
        return List.of(ReadingId.OPEN_VOLTS);
      default:
        return List.of(ReadingId.OUTPUT_VOLTS);
    }
  }

  private static final List<ReadingId> BRIDGED =
      List.of(
          ReadingId.LOAD_OHMS,
          ReadingId.OUTPUT_VOLTS,
          ReadingId.SUPPLY_VOLTS,
          ReadingId.SUPPLY_AMPS,
          ReadingId.THD_PERCENT,
          ReadingId.SINK_CELSIUS,
          ReadingId.FREQUENCY_HERTZ);

  private static final List<ReadingId> STEREO =
      List.of(
          ReadingId.LOAD_OHMS,
          ReadingId.OUTPUT_VOLTS,
          ReadingId.OTHER_OUTPUT_VOLTS,
          ReadingId.SUPPLY_VOLTS,
          ReadingId.SUPPLY_AMPS,
          ReadingId.THD_PERCENT,
          ReadingId.SINK_CELSIUS,
          ReadingId.FREQUENCY_HERTZ);
}
