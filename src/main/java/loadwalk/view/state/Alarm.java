package loadwalk.view.state;

import loadwalk.bench.ReadingId;

/**
 * An alarm on supply current or terminal volts.
 *
 * @param kind what is wrong; the bell rings when it becomes another
 * @param what what is wrong, with the number as it is now: a sentence
 * @param remedy what to do about it: a sentence, or nothing
 */
public record Alarm(Kind kind, String what, String remedy) {
  /** What can be wrong. */
  public enum Kind {
    AMPS_BEYOND_THE_METER(ReadingId.SUPPLY_AMPS),
    AMPS_ABOVE_A_LIMIT(ReadingId.SUPPLY_AMPS),
    AMPS_ABOVE_THE_BRIEF(ReadingId.SUPPLY_AMPS),
    VOLTS_BELOW_THE_BRIEF(ReadingId.SUPPLY_VOLTS),
    VOLTS_ABOVE_THE_BRIEF(ReadingId.SUPPLY_VOLTS),
    /** The meter gives no number: shown, but without the bell. */
    AMPS_NOT_WATCHED(ReadingId.SUPPLY_AMPS),
    VOLTS_NOT_WATCHED(ReadingId.SUPPLY_VOLTS);

    private final ReadingId of;

    Kind(ReadingId of) {
      this.of = of;
    }

    ReadingId of() {
      return of;
    }

    /** Tells whether the bell rings for it. */
    public boolean rings() {
      return this != AMPS_NOT_WATCHED && this != VOLTS_NOT_WATCHED;
    }
  }

  /** Returns both sentences. */
  public String sentence() {
    return remedy.isEmpty() ? what : what + " " + remedy;
  }
}
