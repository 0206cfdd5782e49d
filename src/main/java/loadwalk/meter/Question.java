package loadwalk.meter;

import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.quantity.Unit;

/**
 * What a meter is asked, and what its reply is worth.
 *
 * @param query the question
 * @param unit the unit of the reading
 * @param scale the reading for one unit of the reply
 * @param answerMillis the time to answer, ms
 */
public record Question(String query, Unit unit, double scale, int answerMillis) {

  /**
   * Returns the question of a meter that has a connection.
   *
   * @throws java.util.NoSuchElementException if it has none
   */
  public static Question of(Meter meter) {
    Connection by = meter.connection().orElseThrow();
    return new Question(by.query(), meter.reads().unit(), by.scale(), by.answerMillis());
  }
}
