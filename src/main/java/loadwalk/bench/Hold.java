package loadwalk.bench;

/**
 * How long a step holds its power; supplies, fuses, leads and resistors are judged over it alike.
 *
 * @param seconds the time, seconds; infinite where it has no end
 */
public record Hold(double seconds) {
  /** A warm-up: longer than anything on the bench takes to get hot. */
  public static final Hold CONTINUOUS = new Hold(Double.POSITIVE_INFINITY);

  /** Checks the time. */
  public Hold {
    if (!(seconds > 0)) {
      throw new IllegalArgumentException("a hold must be above 0 s, got " + seconds);
    }
  }

  /** Returns how long a step of a kind holds its power: a warm-up without end, others a reading. */
  public static Hold of(Target.Kind kind, Tables tables) {
    return kind == Target.Kind.WARM_UP || kind == Target.Kind.IDLE
        ? CONTINUOUS
        : new Hold(tables.limit("reading-seconds"));
  }

  /** Tells whether the hold has no end. */
  public boolean isContinuous() {
    return Double.isInfinite(seconds);
  }
}
