package loadwalk.walk;

/** What may be overridden when a step starts or ends. */
public enum StartOverride {
  /** Nothing: for a walk with an amplifier on the bench. */
  NOTHING,
  /**
   * An open doubt on another step, and the warm-up clock: for a rehearsal, which drives no
   * amplifier. The doubt stays open, so that no later forecast trusts the doubted reading.
   */
  REHEARSED
}
