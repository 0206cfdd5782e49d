package loadwalk.meter;

import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.quantity.Unit;

/**
 * A question to a meter, and how to convert its reply.
 *
 * @param query the question
 * @param unit the unit of the reading
 * @param scale the factor from the reply to the reading
 * @param answerMillis the time allowed for the answer, ms
 */
public record Question(String query, Unit unit, double scale, int answerMillis) {

  /**
   * Returns the question for a connected meter.
   *
   * @throws java.util.NoSuchElementException if it has none
   */
  public static Question of(Meter meter) {
    Connection by = meter.connection().orElseThrow();
    return new Question(by.query(), meter.reads().unit(), by.scale(), by.answerMillis());
  }
}
