package loadwalk.forecast;

import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/** Predicts steps and judges entries; pure, so every part of Loadwalk gets the same answer. */
public interface Forecaster {

  /** Returns the forecast of a step from all that is known before it. */
  Forecast forecast(Evidence evidence, Target target);

  /**
   * Judges the entries of a step against its forecast and against each other.
   *
   * @param evidence all that is known before the step
   * @param target the step
   * @param entries the step's entries in SI units; more are not expected
   * @return the doubts, likeliest slip first in each; empty where nothing is contradicted
   */
  List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries);

  /**
   * Judges entries as {@link #judge} does while others of the step are still to come: what one of
   * those may settle is not doubted yet.
   */
  default List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return judge(evidence, target, entries);
  }
}
