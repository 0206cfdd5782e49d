package loadwalk.forecast.model;

import loadwalk.bench.Mode;
import loadwalk.bench.Target;

/**
 * The predictive densities of one loaded step, at the limit or at a part of the power.
 *
 * @param channelOhms the load that each channel drives, ohms
 * @param supplyVolts the supply volts used in calculations
 * @param logVolts the density of ln of one channel's volts
 * @param efficiency the predicted efficiency at this load
 * @param asked the current that the amplifier demands of the supply
 */
public record StepOutlook(
    double channelOhms,
    double supplyVolts,
    Mixture logVolts,
    EfficiencyAtLoad efficiency,
    Asked asked) {
  /**
   * Standard deviation of ln volts if the operator only aims at a part of the power. Common
   * practice, no source.
   */
  private static final double AIM_SPREAD = 0.15;

  /** Standard deviation of ln of the current below the limit. Chosen by hand. */
  private static final double PARTIAL_SPREAD = 0.2;

  /**
   * Chance that supplies loaded beyond their rating give way; many can take more. Set on the
   * experiment.
   */
  private static final double GIVES_WAY = 0.3;

  /**
   * ln of the ratio of current demanded to current delivered at which a supply has switched off.
   * Chosen by hand.
   */
  private static final double MOST_EXCESS = 0.6;

  /** Chance of giving way below which it is left out. Chosen by hand. */
  private static final double LEAST_OVERLOAD = 0.005;

  /**
   * Standard deviations above the mean beyond which any density has less than LEAST_OVERLOAD /
   * GIVES_WAY.
   */
  private static final double FAR_OFF = 7.7;

  /**
   * ln of the ratio of supply volts to those expected below which a supply is seen to give way. Set
   * on the experiment.
   */
  private static final double SEEN_SAG = -0.04;

  /** Share of supplies giving way whose volts do not show it. Set on the experiment. */
  private static final double UNSEEN_OVERLOAD = 0.4;

  /** Number of normals over which the fall in an overload is spread. Chosen by hand. */
  private static final int STRATA = 4;

  /** Smallest excess used in calculations, ln of amperes. Chosen by hand. */
  private static final double LEAST_EXCESS = 0.03;

  /**
   * Standard deviations above the mean assumed for a current that is too high: the mean of the
   * upper half of a normal.
   */
  private static final double EXCESS_DEVIATIONS = 0.8;

  /** Largest fall of the volts, as a multiple of the excess. Chosen by hand. */
  private static final double MOST_FALL = 1.1;

  /** Standard deviation of each stratum, as a fraction of the excess. Chosen by hand. */
  private static final double FALL_SPREAD = 0.1;

  /** Smallest current above idle that supplies deliver, amperes: keeps the logarithm finite. */
  private static final double LEAST_ROOM = 0.1;

  /** Smallest entry used in calculations, amperes: keeps the logarithm finite. */
  private static final double LEAST_AMPS = 1e-6;

  /** Standard deviation of ln of volts that were entered. */
  private static final double KNOWN = 1e-3;

  /**
   * Returns the outlook of a step.
   *
   * @param model what is known of the walk
   * @param target the step
   * @param loadOhms the load to calculate with, ohms
   * @param entered the supply volts entered, NaN if they are to be predicted too
   */
  public static StepOutlook of(WalkModel model, Target target, double loadOhms, double entered) {
    boolean bridged = target.mode() == Mode.BRIDGED;
    double ohms = target.mode().channelOhms(loadOhms);
    EfficiencyAtLoad efficiency = model.efficiency().at(ohms);
    double set = model.evidence().conditions().supplyVolts();
    double supply = Double.isNaN(entered) ? model.sag().volts(model.idle().amps()) : entered;
    Mixture volts = model.output().predict(ohms, bridged, Math.log(supply / set));
    if (Double.isNaN(entered)) {
      double first = volts.mean();
      double output = EfficiencyModel.logOutput(first, ohms) - efficiency.mean(first);
      double asked = model.idle().amps() + Math.exp(output) / supply;
      supply = model.sag().volts(asked);
      volts = model.output().predict(ohms, bridged, Math.log(supply / set));
    } else {
      double off = Math.log(entered / model.outlook(target).supplyVolts());
      volts = model.output().following(volts, off);
      if (mayOverload(model, ohms) && isNear(room(model), efficiency, volts, ohms, supply)) {
        Asked asked = model.outlook(target.into(loadOhms)).asked();
        double overload = asked.overload() * (off > SEEN_SAG ? UNSEEN_OVERLOAD : 1);
        if (overload > LEAST_OVERLOAD) {
          volts = overloaded(volts, asked.logAbove(), overload, Math.log(room(model)));
        }
      }
    }
    if (partial(target)) {
      volts = volts.affine(1, 0.5 * Math.log(target.powerFraction()), AIM_SPREAD);
    }
    if (!Double.isNaN(entered)) {
      return new StepOutlook(ohms, supply, volts, efficiency, null);
    }
    Mixture above = above(model, target, volts.compressed(), ohms, supply, efficiency);
    double room = room(model);
    double overload =
        mayOverload(model, ohms) ? GIVES_WAY * (1 - above.cumulative(Math.log(room))) : 0;
    if (overload > LEAST_OVERLOAD) {
      volts = overloaded(volts, above, overload, Math.log(room));
    }
    return new StepOutlook(ohms, supply, volts, efficiency, new Asked(above, overload));
  }

  /** Returns whether supplies with a limit may be loaded more heavily than at any load so far. */
  private static boolean mayOverload(WalkModel model, double channelOhms) {
    return model.deliverableAmps() < Double.POSITIVE_INFINITY
        && !model.output().reaches(channelOhms);
  }

  /**
   * Returns whether the current above idle can come near the given room. By Cantelli's inequality,
   * at most 1.7 % of any density is more than 7.7 standard deviations above its mean, too little
   * for a noticeable overload.
   */
  private static boolean isNear(
      double room, EfficiencyAtLoad efficiency, Mixture volts, double ohms, double supply) {
    double mean = volts.mean();
    double above = EfficiencyModel.logOutput(mean, ohms) - efficiency.mean(mean) - Math.log(supply);
    double deviation = Math.hypot(2 * volts.deviation(), efficiency.deviation(mean));
    return above + FAR_OFF * deviation > Math.log(room);
  }

  /** Returns the current that the supplies deliver above idle, amperes. */
  private static double room(WalkModel model) {
    return Math.max(LEAST_ROOM, model.deliverableAmps() - model.idle().amps());
  }

  /**
   * The current that the amplifier demands of the supply.
   *
   * @param logAbove the density of ln of the current above idle
   * @param overload the probability that the supplies give way
   */
  public record Asked(Mixture logAbove, double overload) {}

  /** Returns ln of the density of an amperes entry for known channel volts. */
  public double logAmpsDensity(WalkModel model, Target target, double logVolts, double amps) {
    double entered = Math.max(amps, LEAST_AMPS);
    double logAbove = model.idle().logAbove(entered);
    double steepness = Math.log(model.idle().steepness(entered));
    if (partial(target)) {
      Mixture known = Mixture.normal(logVolts, KNOWN);
      return above(model, target, known, channelOhms, supplyVolts, efficiency).logDensity(logAbove)
          + steepness;
    }
    return efficiency.logDensity(logAbove, logVolts, channelOhms, supplyVolts, model.idle())
        + steepness;
  }

  /** Returns the density of ln of the current above idle. */
  public Mixture logAbove(WalkModel model, Target target) {
    return asked != null
        ? asked.logAbove()
        : above(model, target, logVolts.compressed(), channelOhms, supplyVolts, efficiency);
  }

  /** Returns ln of the density of an amperes entry for unknown volts. */
  public static double logAmpsDensity(WalkModel model, Mixture logAbove, double amps) {
    double entered = Math.max(amps, LEAST_AMPS);
    return logAbove.logDensity(model.idle().logAbove(entered))
        + Math.log(model.idle().steepness(entered));
  }

  /** Returns the efficiency in the middle of the forecast: below the limit by the class's law. */
  double middleEfficiency(WalkModel model, Target target) {
    double middle = Math.exp(efficiency.mean(logVolts.mean()));
    if (!partial(target)) {
      return middle;
    }
    double part = target.powerFraction();
    return middle * part / PartialDraw.mean(model.classPrior(), Math.sqrt(part));
  }

  private static boolean partial(Target target) {
    return target.powerFraction() > 0 && target.powerFraction() < 1;
  }

  private static Mixture above(
      WalkModel model,
      Target target,
      Mixture volts,
      double ohms,
      double supply,
      EfficiencyAtLoad efficiency) {
    if (!partial(target)) {
      return efficiency.logAmpsAbove(volts, ohms, supply, model.idle()).compressed();
    }
    double rise = -0.5 * Math.log(target.powerFraction());
    Mixture limit = efficiency.logAmpsAbove(volts.affine(1, rise, 0), ohms, supply, model.idle());
    Mixture.Builder builder = new Mixture.Builder();
    for (PartialDraw.Law law : PartialDraw.at(model.classPrior(), Math.exp(-rise))) {
      limit.addMoved(builder, law.weight(), 1, Math.log(law.share()), PARTIAL_SPREAD);
    }
    return builder.build();
  }

  /**
   * Returns the volts lowered by up to about the excess current, for the chance that the supplies
   * give way.
   */
  private static Mixture overloaded(Mixture volts, Mixture above, double overload, double logRoom) {
    double excess = above.mean() + EXCESS_DEVIATIONS * above.deviation() - logRoom;
    excess = Math.min(MOST_EXCESS, Math.max(LEAST_EXCESS, excess));
    Mixture.Builder builder = new Mixture.Builder();
    volts.addTo(builder, 1 - overload);
    for (int i = 0; i < STRATA; i++) {
      double share = MOST_FALL * (i + 0.5) / STRATA;
      volts.addMoved(builder, overload / STRATA, 1, -share * excess, FALL_SPREAD * excess);
    }
    return builder.build();
  }
}
