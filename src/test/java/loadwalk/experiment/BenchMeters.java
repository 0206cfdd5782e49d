package loadwalk.experiment;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;

/** The meters of every bench in the experiment, as their leaflets state them. */
final class BenchMeters {
  static final List<Meter> ALL =
      List.of(
          meter("AC volts", ReadingId.OUTPUT_VOLTS, 0.01),
          meter("DC volts", ReadingId.SUPPLY_VOLTS, 0.01),
          meter("clamp", ReadingId.SUPPLY_AMPS, 0.1));

  private BenchMeters() {}

  /** A half-width of 0.5 % is 0.3 % standard deviation: the gain error really drawn. */
  private static Meter meter(String label, ReadingId reads, double resolution) {
    return new Meter(label, reads, 0.5, 1, resolution, Optional.empty());
  }
}
