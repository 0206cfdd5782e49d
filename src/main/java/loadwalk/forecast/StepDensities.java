package loadwalk.forecast;

/** The predictive densities of a loaded step, at the limit or at a part of the power. */
final class StepDensities {
  /** Standard deviation of ln of watts lost per watt put out. */
  static final double LOSS_SPREAD = 0.15;

  /** Standard deviation of ln volts where the operator only aims at a part of the power. */
  private static final double AIM_SPREAD = 0.15;

  private StepDensities() {}

  /** Returns the density of ln of one channel's volts. */
  static Mixture logChannelVolts(
      WalkModel model, Target target, double channelOhms, double supplyVolts) {
    boolean bridged = target.mode() == loadwalk.bench.Mode.BRIDGED;
    Mixture limit = model.logChannelVolts(channelOhms, bridged, supplyVolts);
    return partial(target)
        ? limit.affine(1, 0.5 * Math.log(target.powerFraction()), AIM_SPREAD)
        : limit;
  }

  /** Returns the density of ln of the current above idle from a density of the volts. */
  static Mixture logAmpsAbove(
      WalkModel model, Target target, Mixture volts, double channelOhms, double supplyVolts) {
    if (!partial(target)) {
      return model.logAmpsAbove(volts, channelOhms, supplyVolts);
    }
    double rise = -0.5 * Math.log(target.powerFraction());
    Mixture limit = model.logAmpsAbove(volts.affine(1, rise, 0), channelOhms, supplyVolts);
    return limit.affine(1, -1.3 * rise, 0.15 + 0.3 * rise);
  }

  /** Returns the density of ln of the current above idle where the volts are known. */
  static Mixture logAmpsAbove(
      WalkModel model, Target target, double logVolts, double channelOhms, double supplyVolts) {
    return logAmpsAbove(model, target, Mixture.normal(logVolts, 1e-4), channelOhms, supplyVolts);
  }

  /** Tells whether the step runs below the limit. */
  static boolean partial(Target target) {
    return target.powerFraction() > 0 && target.powerFraction() < 1;
  }
}
