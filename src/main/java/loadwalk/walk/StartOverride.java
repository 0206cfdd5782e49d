package loadwalk.walk;

/** What may be passed on the way into a step. */
public enum StartOverride {
  /** Nothing: a walk with an amplifier on the bench. */
  NOTHING,
  /**
   * A doubt without an answer on another step: a rehearsal, which drives no amplifier. The doubt
   * stays open, so that the doubted reading is not trusted by any later forecast.
   */
  OPEN_DOUBTS
}
