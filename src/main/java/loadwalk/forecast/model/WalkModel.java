package loadwalk.forecast.model;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

/** The models fitted to the evidence of one walk, which predict the steps still to come. */
public final class WalkModel {
  /**
   * Ratio of amperes to the rating of the supplies from which they have shown that they can deliver
   * more. Chosen by hand.
   */
  private static final double BEYOND_RATING = 1.1;

  /** Load per channel for which supplies are chosen, ohms. Common practice, no source. */
  private static final double USUAL_OHMS = 4;

  /** Source resistance of a channel assumed at that load, ohms. Common practice, no source. */
  private static final double USUAL_SOURCE_OHMS = 0.12;

  /** Efficiency assumed at that load. Common practice, no source. */
  private static final double USUAL_EFFICIENCY = 0.6;

  /** Smallest current assumed at that load, amperes. Chosen by hand. */
  private static final double LEAST_USUAL_AMPS = 3;

  /** Standard deviation of ln of a volts reading. Set on the experiment. */
  private static final double VOLTS_SCATTER = 0.006;

  /** Probability that the stated kind of rails is right. Chosen by hand. */
  private static final double STATED = 0.97;

  /** Probability that it is wrong. */
  private static final double STATED_NOT = 0.03;

  /** Probability that rails are regulated if nothing is stated. Common practice, no source. */
  private static final double REGULATED = 0.35;

  /**
   * Least load of a channel if neither a minimum nor a rating is known, ohms. Common practice, no
   * source.
   */
  private static final double LEAST_OHMS = 2;

  private final Evidence evidence;
  private final RatingPrior prior;
  private final OutputModel output;
  private final EfficiencyModel efficiency;
  private final ClassPrior classPrior;
  private final IdleModel idle;
  private final SagModel sag;
  private final double deliverableAmps;
  private final Map<Target, StepOutlook> outlooks = new ConcurrentHashMap<>();
  private final Map<Target, StepBands> bands = new ConcurrentHashMap<>();

  /** Fits all models to the evidence of a walk. */
  public WalkModel(Evidence evidence) {
    this.evidence = evidence;
    Amplifier amplifier = evidence.amplifier();
    double supply = evidence.conditions().supplyVolts();
    List<WalkReadings.Point> points = WalkReadings.points(evidence);
    double regulated = amplifier.regulated().map(r -> r ? STATED : STATED_NOT).orElse(REGULATED);
    prior = new RatingPrior(amplifier, supply, regulated);
    double usual = usualAmps(supply);
    classPrior = ClassPrior.of(amplifier.amplifierClass());
    OptionalDouble idleRead = WalkReadings.idleAmps(evidence);
    idle =
        classPrior.idlesAtHalf()
            ? IdleModel.ofClassA(idleRead, usual)
            : IdleModel.of(idleRead, amplifier.fuseAmps());
    output =
        new OutputModel(
            prior,
            new LimitOnset(leastOhms(amplifier, prior)),
            points,
            new OutputModel.Setup(supply, regulated, VOLTS_SCATTER));
    SagModel asRead = new SagModel(evidence, usual, this::standingAmps);
    efficiency = new EfficiencyModel(classPrior, idle, points, asRead::volts);
    sag = new SagModel(evidence, usual, this::drawnAmps);
    double sum = evidence.bench().supplies().stream().mapToDouble(Supply::amps).sum();
    deliverableAmps = sum > 0 && !exceeded(points, sum) ? sum : Double.POSITIVE_INFINITY;
  }

  /** Returns the evidence behind the models. */
  public Evidence evidence() {
    return evidence;
  }

  RatingPrior prior() {
    return prior;
  }

  /** Returns the model of one channel's volts. */
  public OutputModel output() {
    return output;
  }

  /** Returns the model of the idle current. */
  public IdleModel idle() {
    return idle;
  }

  /** Returns what the class of the amplifier suggests. */
  ClassPrior classPrior() {
    return classPrior;
  }

  SagModel sag() {
    return sag;
  }

  EfficiencyModel efficiency() {
    return efficiency;
  }

  /**
   * Returns the most the supplies deliver, amperes; infinite if they are not described or have
   * delivered more.
   */
  double deliverableAmps() {
    return deliverableAmps;
  }

  /** Returns the prediction of a loaded step before anything is entered. */
  public StepOutlook outlook(Target target) {
    return outlooks.computeIfAbsent(
        target, step -> StepOutlook.of(this, step, step.ohms(), Double.NaN));
  }

  /** Returns the bands of a step. */
  public StepBands bands(Target target) {
    StepBands known = bands.get(target);
    if (known == null) {
      known = StepBands.of(this, target);
      bands.put(target, known);
    }
    return known;
  }

  /**
   * Returns the supply current of a step as read, or otherwise the idle current at an idle step and
   * NaN elsewhere.
   */
  private double standingAmps(Observation observation) {
    boolean idling = observation.target().kind() == Target.Kind.IDLE;
    return observation.reading(ReadingId.SUPPLY_AMPS).orElse(idling ? idle.amps() : Double.NaN);
  }

  /**
   * Returns the supply current of a step as read, or estimated from its output, or NaN if neither
   * is known.
   */
  private double drawnAmps(Observation observation) {
    Target target = observation.target();
    double standing = standingAmps(observation);
    if (!Double.isNaN(standing) || !WalkReadings.atLimit(target)) {
      return standing;
    }
    double load = WalkReadings.loadOhms(evidence.bench(), target, observation.readings());
    double volts = WalkReadings.volts(observation.readings(), load);
    double supply = observation.reading(ReadingId.SUPPLY_VOLTS).orElse(Double.NaN);
    double ohms = target.mode().channelOhms(load);
    double logVolts = Math.log(WalkReadings.channelVolts(target, volts));
    double logWatts =
        EfficiencyModel.logOutput(logVolts, ohms) - efficiency.at(ohms).mean(logVolts);
    return idle.amps() + Math.exp(logWatts) / supply;
  }

  /** Returns the supply current into 4 Ω expected from ratings or fuses, amperes. */
  private double usualAmps(double supply) {
    double volts = prior.logVolts(USUAL_OHMS, USUAL_SOURCE_OHMS);
    double watts = Math.exp(EfficiencyModel.logOutput(volts, USUAL_OHMS));
    return Math.max(LEAST_USUAL_AMPS, watts / (USUAL_EFFICIENCY * supply));
  }

  /** Returns whether the supplies have already delivered more than their rating. */
  private static boolean exceeded(List<WalkReadings.Point> points, double amps) {
    return points.stream().anyMatch(p -> p.supplyAmps() > BEYOND_RATING * amps);
  }

  private static double leastOhms(Amplifier amplifier, RatingPrior prior) {
    double stated =
        Math.min(
            amplifier.minimumOhms(Mode.STEREO).orElse(Double.POSITIVE_INFINITY),
            amplifier.minimumOhms(Mode.BRIDGED).orElse(Double.POSITIVE_INFINITY) / 2);
    if (!Double.isInfinite(stated)) {
      return stated;
    }
    double rated = prior.leastChannelOhms();
    return Double.isNaN(rated) ? LEAST_OHMS : rated;
  }
}
