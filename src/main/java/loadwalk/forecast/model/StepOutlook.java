package loadwalk.forecast.model;

import loadwalk.bench.Mode;
import loadwalk.bench.Target;

/**
 * The predictive densities of one loaded step, at the limit or at a part of the power.
 *
 * @param channelOhms the load that each channel sees, ohms
 * @param supplyVolts the supply volts reckoned with
 * @param logVolts the density of ln of one channel's volts
 * @param efficiency what is told of the efficiency at this load
 * @param asked what the amplifier asks of the supply
 */
public record StepOutlook(
    double channelOhms,
    double supplyVolts,
    Mixture logVolts,
    EfficiencyAtLoad efficiency,
    Asked asked) {
  /**
   * Standard deviation of ln volts where the operator only aims at a part of the power. Common
   * practice, no source.
   */
  private static final double AIM_SPREAD = 0.15;

  /**
   * The exponent of the current over the volts below the limit: 1 in class B, 2 in class D. Chosen
   * by hand.
   */
  private static final double PARTIAL_EXPONENT = 1.3;

  /**
   * How well the current below the limit is known, standard deviation of its ln. Chosen by hand.
   */
  private static final double PARTIAL_SPREAD = 0.2;

  /**
   * The chance that supplies asked for more than their rating give way; many bear more. Set on the
   * experiment.
   */
  private static final double GIVES_WAY = 0.3;

  /**
   * ln of the current asked over that delivered at which a supply has switched off. Chosen by hand.
   */
  private static final double MOST_EXCESS = 0.6;

  /** The chance below which giving way is left out. Chosen by hand. */
  private static final double LEAST_OVERLOAD = 0.005;

  /** Standard deviations beyond which less than LEAST_OVERLOAD / GIVES_WAY of any density lies. */
  private static final double FAR_OFF = 7.7;

  /**
   * ln of the supply volts over those expected below which a supply is seen to give way. Set on the
   * experiment.
   */
  private static final double SEEN_SAG = -0.04;

  /**
   * The share of the supplies giving way at which their volts do not show it. Set on the
   * experiment.
   */
  private static final double UNSEEN_OVERLOAD = 0.4;

  /** How many normals the fall of an overload is spread over. Chosen by hand. */
  private static final int STRATA = 4;

  /** The least excess reckoned with, ln of amperes. Chosen by hand. */
  private static final double LEAST_EXCESS = 0.03;

  /**
   * Standard deviations above the mean at which the current stands where it is too much: the mean
   * of the upper half of a normal.
   */
  private static final double EXCESS_DEVIATIONS = 0.8;

  /** The most that volts fall over the excess. Chosen by hand. */
  private static final double MOST_FALL = 1.1;

  /** Standard deviation of each stratum, of the excess. Chosen by hand. */
  private static final double FALL_SPREAD = 0.1;

  /** The least that supplies deliver above idle, amperes: keeps the logarithm finite. */
  private static final double LEAST_ROOM = 0.1;

  /** The least entry reckoned with, amperes: keeps the logarithm finite. */
  private static final double LEAST_AMPS = 1e-6;

  /** Standard deviation of ln of volts that were entered. */
  private static final double KNOWN = 1e-3;

  /**
   * Tells a step.
   *
   * @param model what is known of the walk
   * @param target the step
   * @param loadOhms the load to reckon with, ohms
   * @param entered the supply volts entered, NaN where they are to be told too
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

  /** Tells whether supplies with a limit may be asked for more than at any load so far. */
  private static boolean mayOverload(WalkModel model, double channelOhms) {
    return model.deliverableAmps() < Double.POSITIVE_INFINITY
        && !model.output().reaches(channelOhms);
  }

  /**
   * Tells whether the current above idle may come near a room at all: by Cantelli's inequality 1.7
   * % of no density lie more than 7.7 standard deviations above its mean, and less than that gives
   * no overload of note.
   */
  private static boolean isNear(
      double room, EfficiencyAtLoad efficiency, Mixture volts, double ohms, double supply) {
    double mean = volts.mean();
    double above = EfficiencyModel.logOutput(mean, ohms) - efficiency.mean(mean) - Math.log(supply);
    double deviation = Math.hypot(2 * volts.deviation(), efficiency.deviation(mean));
    return above + FAR_OFF * deviation > Math.log(room);
  }

  /** Returns what the supplies deliver above the idle current, amperes. */
  private static double room(WalkModel model) {
    return Math.max(LEAST_ROOM, model.deliverableAmps() - model.idle().amps());
  }

  /**
   * What the amplifier asks of the supply.
   *
   * @param logAbove the density of ln of the current above idle
   * @param overload the probability that the supplies give way
   */
  public record Asked(Mixture logAbove, double overload) {}

  /** Returns ln of the density of an amperes entry where the channel's volts are known. */
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

  /** Returns ln of the density of an amperes entry where the volts are not known. */
  public static double logAmpsDensity(WalkModel model, Mixture logAbove, double amps) {
    double entered = Math.max(amps, LEAST_AMPS);
    return logAbove.logDensity(model.idle().logAbove(entered))
        + Math.log(model.idle().steepness(entered));
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
    return limit.affine(1, -PARTIAL_EXPONENT * rise, PARTIAL_SPREAD);
  }

  /** Takes the volts down where the supplies give way: by the excess current, or less. */
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
