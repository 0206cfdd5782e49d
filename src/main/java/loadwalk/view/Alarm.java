package loadwalk.view;

/**
 * What must be told at once of supply current or terminal volts.
 *
 * @param kind what is wrong; the bell rings when it becomes another
 * @param sentence it in words, with the number as it is now
 */
public record Alarm(Kind kind, String sentence) {
  /** What can be wrong. */
  public enum Kind {
    AMPS_BEYOND_THE_METER,
    AMPS_ABOVE_A_LIMIT,
    AMPS_ABOVE_THE_BRIEF,
    VOLTS_BELOW_THE_BRIEF,
    VOLTS_ABOVE_THE_BRIEF
  }
}
