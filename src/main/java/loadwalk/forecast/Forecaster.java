package loadwalk.forecast;

import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * Predicts the readings of a step and judges entries; pure, so every caller gets the same answer.
 */
public interface Forecaster {

  /** Returns the forecast of a step from everything known before it. */
  Forecast forecast(Evidence evidence, Target target);

  /**
   * Checks the entries of a step against its forecast and against each other.
   *
   * @param evidence everything known before the step
   * @param target the step
   * @param entries the step's entries in SI units; no more are expected
   * @return the doubts, each with its likeliest slip; empty if nothing is contradicted
   */
  List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries);

  /**
   * Checks entries as {@link #judge} does while others of the step are still to come; a doubt that
   * one of those may settle is not raised yet.
   */
  default List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return judge(evidence, target, entries);
  }
}
