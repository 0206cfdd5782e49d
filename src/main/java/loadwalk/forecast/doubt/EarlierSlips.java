package loadwalk.forecast.doubt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.model.WalkReadings;

/**
 * Looks for a slip at an earlier step that only the current entries can reveal.
 *
 * <p>A first reading taken as peak is within the range that the ratings allow, but the next load
 * then does not fit. So each earlier output, current and load is replaced by the value that a slip
 * implies, and all readings from that step on, the current entries last, are predicted again, each
 * from those before it. The odds of the slip are its prior times the product of these densities,
 * over the product for the readings as entered. They are on the same scale as the odds of a slip in
 * the current entries ({@link Hypotheses}), so the two can be compared.
 */
final class EarlierSlips {
  /** Largest rise of ln of the peak density when a slip is corrected. Set on the experiment. */
  private static final double SHARPER = 1.5;

  /** Number of earlier steps searched: a ladder has no more. Chosen by hand. */
  private static final int MOST_STEPS = 8;

  /**
   * Number of slips followed to the end, likeliest at their own step first; the limit keeps an
   * entry quick. Chosen by hand.
   */
  private static final int MOST_COURSES = 8;

  private final Evidence evidence;
  private final List<Observation> walk;
  private final int last;
  private final double[] standing;
  private final WalkModel[] models;
  private final LoadedJudge[] judges;

  /**
   * A slip found at an earlier step.
   *
   * @param target the earlier step
   * @param reading the reading that is off there; the output if the load is off
   * @param slip the slip
   * @param meant the value that would fit, NaN if unknown
   * @param logOdds ln of the odds of this slip against no slip at any step
   */
  record Found(Target target, ReadingId reading, Slip slip, double meant, double logOdds) {}

  /** One way in which an earlier step may differ from its entries. */
  private record Other(
      ReadingId reading, Slip slip, double meant, double logWeight, Observation instead) {}

  /** One slip at one step, with ln of its odds from the readings up to that step. */
  private record Course(int step, Other other, double odds) {}

  /**
   * Creates a search.
   *
   * @param before what was known before the current step
   * @param entered the entries of the current step
   */
  EarlierSlips(WalkModel before, Observation entered) {
    evidence = before.evidence();
    walk = new ArrayList<>(evidence.observations());
    walk.add(entered);
    last = walk.size() - 1;
    standing = new double[walk.size()];
    Arrays.fill(standing, Double.NaN);
    models = new WalkModel[walk.size()];
    models[last] = before;
    judges = new LoadedJudge[walk.size()];
  }

  /**
   * Returns the likeliest slip at an earlier step.
   *
   * @param needed ln of the odds below which a slip is ignored
   * @param surprise how far ln of the density of the current entries is below its peak
   */
  Optional<Found> likeliest(double needed, double surprise) {
    double gain = Math.max(0, surprise) + SHARPER;
    List<Course> courses = new ArrayList<>();
    for (int step = Math.max(0, last - MOST_STEPS); step < last; step++) {
      if (WalkReadings.atLimit(walk.get(step).target())) {
        for (Other other : others(walk.get(step))) {
          double odds = oddsThere(step, other);
          if (odds + gain > needed) {
            courses.add(new Course(step, other, odds));
          }
        }
      }
    }
    courses.sort(Comparator.comparingDouble(Course::odds).reversed());
    Found best = null;
    for (Course course : courses.subList(0, Math.min(MOST_COURSES, courses.size()))) {
      double floor = best == null ? needed : best.logOdds();
      double odds = oddsSince(course, floor, gain);
      if (odds > floor) {
        Other other = course.other();
        Target target = walk.get(course.step()).target();
        best = new Found(target, other.reading(), other.slip(), other.meant(), odds);
      }
    }
    return Optional.ofNullable(best);
  }

  /** Returns ln of the odds of a slip from the readings up to its own step. */
  private double oddsThere(int step, Other other) {
    boolean sameLoad = other.instead().target().equals(walk.get(step).target());
    LoadedJudge judge = sameLoad ? judge(step) : judge(standingModel(step), other.instead());
    return other.logWeight() - standing(step) + density(judge, other.instead());
  }

  /**
   * Returns ln of the odds of a slip from all readings, or a value below the floor as soon as the
   * floor is out of reach. The current entries come first, because they say most.
   */
  private double oddsSince(Course course, double floor, double gain) {
    List<Observation> changed = new ArrayList<>(walk);
    changed.set(course.step(), course.other().instead());
    double odds = course.odds();
    for (int k = last; k > course.step() && odds + (k == last ? gain : SHARPER) > floor; k--) {
      if (WalkReadings.atLimit(walk.get(k).target())) {
        LoadedJudge judge = judge(model(changed, k), walk.get(k));
        odds += density(judge, walk.get(k)) - standing(k);
      }
    }
    return odds;
  }

  /** Returns ln of the density of a step's readings in the walk as entered. */
  private double standing(int step) {
    if (Double.isNaN(standing[step])) {
      standing[step] = density(judge(step), walk.get(step));
    }
    return standing[step];
  }

  private LoadedJudge judge(int step) {
    if (judges[step] == null) {
      judges[step] = judge(standingModel(step), walk.get(step));
    }
    return judges[step];
  }

  private LoadedJudge judge(WalkModel before, Observation observation) {
    Target target = observation.target();
    double ohms = WalkReadings.loadOhms(evidence.bench(), target, observation.readings());
    double supply = observation.reading(ReadingId.SUPPLY_VOLTS).orElse(Double.NaN);
    return new LoadedJudge(before, target, ohms, supply > 0 ? supply : Double.NaN);
  }

  /** Returns what was known before a step in the walk as entered. */
  private WalkModel standingModel(int step) {
    if (models[step] == null) {
      models[step] = model(walk, step);
    }
    return models[step];
  }

  /** Returns what would be known before a step in the given course of the walk. */
  private WalkModel model(List<Observation> course, int step) {
    return new WalkModel(evidence.withOnly(course.subList(0, step)));
  }

  private static double density(LoadedJudge judge, Observation observation) {
    Map<ReadingId, Double> readings = observation.readings();
    ReadingId output = WalkReadings.output(readings);
    return judge.honest(output, readings.get(output), readings.get(ReadingId.SUPPLY_AMPS));
  }

  private List<Other> others(Observation observation) {
    List<Other> found = new ArrayList<>();
    ReadingId outputId = WalkReadings.output(observation.readings());
    OptionalDouble output = observation.reading(outputId);
    OptionalDouble amps = observation.reading(ReadingId.SUPPLY_AMPS);
    if (output.isPresent()) {
      double value = output.getAsDouble();
      int decimals = EnteredDecimals.of(evidence, outputId, value);
      replaced(
          found,
          observation,
          outputId,
          SlipCandidate.output(observation.target(), outputId, value, null, decimals));
      if (observation.reading(ReadingId.LOAD_OHMS).isEmpty()) {
        rewired(found, observation, Slip.LOAD_DOUBLE, 2);
        rewired(found, observation, Slip.LOAD_HALF, 0.5);
      }
    }
    if (amps.isPresent()) {
      double value = amps.getAsDouble();
      int decimals = EnteredDecimals.of(evidence, ReadingId.SUPPLY_AMPS, value);
      replaced(
          found,
          observation,
          ReadingId.SUPPLY_AMPS,
          SlipCandidate.supplyAmps(value, null, decimals));
    }
    return found;
  }

  /**
   * Adds the step with the reading as meant, or without the reading if the meant value is unknown.
   */
  private static void replaced(
      List<Other> found, Observation observation, ReadingId id, List<SlipCandidate> candidates) {
    for (SlipCandidate candidate : candidates) {
      Map<ReadingId, Double> readings = new HashMap<>(observation.readings());
      if (Double.isNaN(candidate.meant())) {
        readings.remove(id);
      } else {
        readings.put(id, candidate.meant());
      }
      Observation instead = new Observation(observation.target(), readings);
      found.add(new Other(id, candidate.slip(), candidate.meant(), candidate.logWeight(), instead));
    }
  }

  /** Adds the step as if measured into a different load from the one planned. */
  private static void rewired(List<Other> found, Observation observation, Slip slip, double by) {
    Target target = observation.target();
    Map<ReadingId, Double> readings = new HashMap<>(observation.readings());
    ReadingId outputId = WalkReadings.output(readings);
    double volts = WalkReadings.volts(readings, target.ohms());
    if (!(volts > 0)) {
      return;
    }
    readings.put(ReadingId.OUTPUT_VOLTS, volts);
    readings.remove(ReadingId.OUTPUT_WATTS);
    Observation instead = new Observation(target.into(by * target.ohms()), readings);
    found.add(new Other(outputId, slip, Double.NaN, SlipPriors.log(slip), instead));
  }
}
