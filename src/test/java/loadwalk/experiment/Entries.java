package loadwalk.experiment;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.random.RandomGenerator;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * What the operator reads off the meters, in the order it is typed: output, the other channel,
 * supply volts, amps.
 *
 * @param specimen who is on the bench
 * @param arrangement which meters are read
 */
record Entries(Specimen specimen, Arrangement arrangement) {
  private static final double LEAST_SUPPLY_VOLTS = 10;

  /**
   * Tells whether a step yields readings at all: a supply that gives way below 10 V switches the
   * amplifier off, and a fuse opens within seconds above twice its rating.
   */
  boolean canRun(int step) {
    Target target = Ladder.at(step);
    if (target.kind() == Target.Kind.IDLE) {
      return true;
    }
    Truth truth = truth(step, target.ohms());
    double fuses =
        Math.min(
            specimen.bench().fuseAmps().orElse(Double.POSITIVE_INFINITY),
            specimen.amplifier().fuseAmps().orElse(Double.POSITIVE_INFINITY));
    return truth.supplyVolts() >= LEAST_SUPPLY_VOLTS && truth.supplyAmps() <= 2 * fuses;
  }

  /** Returns the honest entries of a step; without supply amps the idle step has none. */
  Map<ReadingId, Double> honest(int step) {
    Target target = Ladder.at(step);
    return target.kind() == Target.Kind.IDLE
        ? idle(step)
        : loaded(step, target.ohms(), specimen.meters().showsWatts());
  }

  /**
   * Returns the entries of a loaded step.
   *
   * @param step the index of the step
   * @param connectedOhms the load really connected
   * @param asWatts whether watts, worked out with the load the step asks for, are typed
   */
  Map<ReadingId, Double> loaded(int step, double connectedOhms, boolean asWatts) {
    Target target = Ladder.at(step);
    Truth truth = truth(step, connectedOhms);
    Map<ReadingId, Double> entries = new LinkedHashMap<>();
    double volts = outputVolts(truth.outputVolts(), "output", step);
    if (asWatts) {
      entries.put(ReadingId.OUTPUT_WATTS, rounded(volts * volts / target.ohms(), 0.1));
    } else {
      entries.put(ReadingId.OUTPUT_VOLTS, volts);
    }
    if (arrangement.allChannels && target.mode() == Mode.STEREO) {
      entries.put(ReadingId.OTHER_OUTPUT_VOLTS, outputVolts(truth.otherVolts(), "other", step));
    }
    supply(entries, truth, step);
    return entries;
  }

  /** Returns what is true at a step with a load that may be the wrong one. */
  Truth truth(int step, double connectedOhms) {
    Target target = Ladder.at(step);
    return specimen.device().at(target.mode(), connectedOhms, specimen.celsius(step));
  }

  /** Returns the rms volts that the meter shows across one channel, in a bridged step too. */
  double oneChannelVolts(int step) {
    Target target = Ladder.at(step);
    Truth truth = truth(step, target.ohms());
    boolean bridged = target.mode() == Mode.BRIDGED;
    return outputVolts(bridged ? truth.outputVolts() / 2 : truth.outputVolts(), "output", step);
  }

  /** Returns the sum of both channels' volts as the meter shows them. */
  double bothChannelsVolts(int step) {
    Truth truth = truth(step, Ladder.at(step).ohms());
    return outputVolts(truth.outputVolts() + truth.otherVolts(), "output", step);
  }

  private Map<ReadingId, Double> idle(int step) {
    Map<ReadingId, Double> entries = new LinkedHashMap<>();
    supply(entries, specimen.device().idle(), step);
    return entries;
  }

  private void supply(Map<ReadingId, Double> entries, Truth truth, int step) {
    if (!arrangement.withAmps) {
      return;
    }
    Specimen.Meters meters = specimen.meters();
    RandomGenerator random = specimen.random("supply", step);
    double volts = truth.supplyVolts() * meters.supplyGain();
    volts *= 1 + meters.supplyScatter() * random.nextGaussian();
    double amps = truth.supplyAmps() * meters.ampsGain();
    amps *= 1 + meters.ampsScatter() * random.nextGaussian();
    entries.put(ReadingId.SUPPLY_VOLTS, rounded(volts, 0.01));
    entries.put(ReadingId.SUPPLY_AMPS, rounded(amps, meters.ampsResolution()));
  }

  private double outputVolts(double volts, String channel, int step) {
    Specimen.Meters meters = specimen.meters();
    double scatter = meters.outputScatter() * specimen.random(channel, step).nextGaussian();
    return rounded(volts * meters.outputGain() * (1 + scatter), 0.01);
  }

  static double rounded(double value, double resolution) {
    double digits = Math.rint(value / resolution);
    return resolution < 1 ? digits / Math.rint(1 / resolution) : digits * resolution;
  }

  /** Returns the entries up to each one in the order typed. */
  static Map<ReadingId, Map<ReadingId, Double>> asTyped(Map<ReadingId, Double> entries) {
    Map<ReadingId, Map<ReadingId, Double>> prefixes = new LinkedHashMap<>();
    Map<ReadingId, Double> soFar = new EnumMap<>(ReadingId.class);
    entries.forEach(
        (id, value) -> {
          soFar.put(id, value);
          prefixes.put(id, new EnumMap<>(soFar));
        });
    return prefixes;
  }
}
