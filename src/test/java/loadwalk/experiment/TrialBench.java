package loadwalk.experiment;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;

/**
 * A bench with an amplifier on it: what is entered, and what is true.
 *
 * @param name how to draw it again
 * @param amplifier what is entered of it
 * @param bench what is entered of it
 * @param device the amplifier on the supplies as they are
 * @param limits what the parts bear
 * @param specimen its meters and temperatures
 * @param habits what the operator does
 */
record TrialBench(
    String name,
    Amplifier amplifier,
    Bench bench,
    Device device,
    TrueLimits limits,
    Specimen specimen,
    Habits habits) {
  private static final double OFF_AT_VOLTS = 10;
  private static final double FUSE_OPENS_AT = 2;

  /**
   * What the operator does.
   *
   * @param ammeter reads supply amps
   * @param thermometer reads the heatsink
   * @param bothChannels reads the other channel too
   * @param aim how far the volts of a warm-up are off, a factor
   * @param openPart the part of the power at which the load is taken off
   */
  record Habits(
      boolean ammeter, boolean thermometer, boolean bothChannels, double aim, double openPart) {}

  /**
   * What a step truly is.
   *
   * @param truth what flows
   * @param demandedAmps what would flow from supplies without a limit
   */
  record StepTruth(Truth truth, double demandedAmps) {
    /** Returns the watts in the load that takes more. */
    double loadWatts(double ohms) {
      double volts = Math.max(truth.outputVolts(), truth.otherVolts());
      return volts * volts / ohms;
    }
  }

  /** Solves a step that drives a load. */
  StepTruth truth(Target target, int step) {
    double celsius = specimen.celsius(step);
    return new StepTruth(
        solve(device, target, celsius), solve(device.unlimited(), target, celsius).supplyAmps());
  }

  private Truth solve(Device on, Target target, double celsius) {
    double part =
        switch (target.kind()) {
          case WARM_UP -> target.powerFraction() * habits.aim * habits.aim;
          case OPEN_LOAD -> habits.openPart;
          default -> 1;
        };
    return part < 1
        ? on.atPart(target.mode(), target.ohms(), celsius, part)
        : on.at(target.mode(), target.ohms(), celsius);
  }

  /** Tells whether a step yields readings: nothing shuts off, and no fuse opens within seconds. */
  boolean yields(StepTruth step, Target target) {
    double fuse = Math.min(limits.ownFuseAmps(), limits.benchFuseAmps());
    double channelOhms = target.mode() == Mode.STEREO ? target.ohms() : target.ohms() / 2;
    return step.truth.supplyVolts() >= OFF_AT_VOLTS
        && step.truth.supplyAmps() <= FUSE_OPENS_AT * fuse
        && channelOhms >= limits.protectsBelowOhms();
  }

  /** Returns what a step asks of every part of the bench. */
  List<Exceeded> shares(StepTruth step, Target target, Optional<HotResistor> hottest) {
    return limits.by(
        new TrueLimits.Asked(
            target.kind() == Target.Kind.WARM_UP,
            target.mode(),
            target.ohms(),
            step.demandedAmps,
            step.truth.supplyAmps(),
            hottest));
  }
}
