package loadwalk.experiment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.result.Circumstances;
import loadwalk.result.Criterion;
import loadwalk.result.MeasuredStep;
import loadwalk.result.Repeatability;
import loadwalk.result.ResultComputation;
import loadwalk.result.TakenReading;
import loadwalk.result.WalkResult;

/**
 * A bench whose true values are drawn, one walk at a time, from the distributions that its
 * description states, and what an operator reads of them. It knows nothing of how uncertainties are
 * reckoned.
 *
 * @param meter accuracy of the AC voltmeter
 * @param stock the load resistors
 * @param ohms the nominal load
 * @param mode how it is connected
 */
record TrueBench(Meter meter, LoadResistor stock, double ohms, Mode mode) {
  /** A usual meter: ±(0.5 % + 3 digits of 0.01 V). */
  static final Meter USUAL =
      new Meter("DMM", ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01, Optional.empty());

  /** An ohmmeter: ±(0.5 % + 1 digit of 0.01 Ω). */
  private static final Meter OHMMETER =
      new Meter("ohmmeter", ReadingId.LOAD_OHMS, 0.5, 1, 0.01, Optional.empty());

  private static final Wire WIRE = new Wire(Tables.stock());
  private static final Amplifier AMPLIFIER = Amplifier.named("Halvorsen & Pike", "HP 250");

  /** Draws a number anywhere from −1 to 1. */
  static double within(SplittableRandom random) {
    return 2 * random.nextDouble() - 1;
  }

  static LoadResistor stock(double ohms, double tolerance, OptionalDouble ppm) {
    return new LoadResistor("bank", ohms, tolerance, 300, 8, ppm);
  }

  WalkResult walk(List<MeasuredStep> steps, Repeatability repeatability) {
    Bench bench =
        new Bench(
            "North bench",
            List.of(),
            List.of(),
            OptionalDouble.empty(),
            List.of(stock),
            List.of(meter, OHMMETER),
            0.9);
    return ResultComputation.walk(AMPLIFIER, bench, 1, 14.4, 40, WIRE, repeatability, steps);
  }

  MeasuredStep step(String id, Optional<String> recheckOf, List<TakenReading> readings) {
    Map<ReadingId, TakenReading> byId = new EnumMap<>(ReadingId.class);
    readings.forEach(reading -> byId.put(reading.id(), reading));
    return new MeasuredStep(
        id,
        Target.Kind.LOADED,
        mode,
        ohms,
        byId,
        new ArrayList<>(),
        recheckOf,
        Circumstances.UNKNOWN.saying(Criterion.THD_LIMIT));
  }

  /** What does not change during one walk. */
  final class Day {
    private final SplittableRandom random;
    private final double gain;
    private final double ohmGain;
    private final double lead;
    private final double risePart;
    private final double unknownPpm;

    Day(SplittableRandom random) {
      this.random = random;
      this.gain = meter.percent() / 100 * within(random);
      this.ohmGain = OHMMETER.percent() / 100 * within(random);
      this.lead = 0.02 * random.nextDouble();
      this.risePart = random.nextDouble();
      this.unknownPpm = 100 * within(random);
    }

    /** Draws the cold ohms of a load at the end of its lead. */
    double coldOhms() {
      return stock.ohms() * (1 + stock.tolerancePercent() / 100 * within(random)) + lead;
    }

    /** Returns the ohms while power is held: 225 K at the rated watts, for part of the way. */
    double hotOhms(double cold, double watts) {
      double rise = 225 * Math.min(1, watts / stock.watts()) * risePart;
      return cold * (1 + stock.ppmPerKelvin().orElse(unknownPpm) * 1e-6 * rise);
    }

    /** Returns what is read of volts: in steps of the meter where it has any, else as typed. */
    TakenReading read(ReadingId id, double volts, double typed) {
      double shown = volts * (1 + gain) + meter.digits() * meter.resolution() * within(random);
      double written = meter.digits() > 0 ? shown : Math.rint(shown / typed) * typed;
      return new TakenReading(id, written, typed);
    }

    TakenReading readOhms(ReadingId id, double cold) {
      double shown = cold + 0.002 * within(random);
      double read = shown * (1 + ohmGain) + 0.01 * within(random);
      return new TakenReading(id, read, 0.01);
    }

    /** Returns the volts at which a hand stops that is to stop at the limit. */
    double set(double limitVolts, double scatter) {
      return limitVolts * (1 + scatter * random.nextGaussian());
    }
  }
}
