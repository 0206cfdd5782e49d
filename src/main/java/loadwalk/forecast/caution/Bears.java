package loadwalk.forecast.caution;

/**
 * What a part of the bench bears at a step, each in the unit of its demand.
 *
 * @param counted what it can be counted on for, above 0
 * @param most the most it bears for as long as the step holds its power
 * @param stop the reading at which to stop
 */
public record Bears(double counted, double most, double stop) {
  /** Checks the numbers. */
  public Bears {
    if (!(counted > 0) || !(most > 0) || !(stop > 0)) {
      throw new IllegalArgumentException(
          "what a part bears must be above 0, got " + counted + ", " + most + ", " + stop);
    }
  }

  /** Returns a part that bears one amount, however long. */
  public static Bears always(double amount) {
    return new Bears(amount, amount, amount);
  }
}
