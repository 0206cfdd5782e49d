package loadwalk.result;

import java.util.Optional;

/** At what point the output was read; different ones are never compared silently. */
public enum Criterion {
  /** The stated total harmonic distortion was reached. */
  THD_LIMIT("thd-limit", "at the THD limit"),
  /** The tops of the wave just began to flatten, judged by eye or by a light. */
  CLIPPING_ONSET("clipping-onset", "at the onset of clipping"),
  /** The output was held below both. */
  BELOW_LIMIT("below-limit", "below the limit");

  private final String word;
  private final String text;

  Criterion(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns the word used in files and JSON output. */
  public String word() {
    return word;
  }

  /** Returns the words used on screens and sheets. */
  public String text() {
    return text;
  }

  /** Finds the criterion with the given word. */
  public static Optional<Criterion> ofWord(String word) {
    for (Criterion criterion : values()) {
      if (criterion.word.equals(word)) {
        return Optional.of(criterion);
      }
    }
    return Optional.empty();
  }
}
