package loadwalk.result;

import java.util.Optional;

/**
 * The point at which the output was read; results at different points are never compared silently.
 */
public enum Criterion {
  /** The output reached the stated total harmonic distortion. */
  THD_LIMIT("thd-limit", "at the THD limit"),
  /** The peaks of the wave just began to flatten, judged by eye or by an indicator light. */
  CLIPPING_ONSET("clipping-onset", "at the onset of clipping"),
  /** The output stayed below both. */
  BELOW_LIMIT("below-limit", "below the limit");

  private final String word;
  private final String text;

  Criterion(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns the name used in files and JSON output. */
  public String word() {
    return word;
  }

  /** Returns the phrase used on screens and sheets. */
  public String text() {
    return text;
  }

  /** Finds a criterion by its name in files. */
  public static Optional<Criterion> ofWord(String word) {
    for (Criterion criterion : values()) {
      if (criterion.word.equals(word)) {
        return Optional.of(criterion);
      }
    }
    return Optional.empty();
  }
}
