package loadwalk.forecast;

import java.util.Locale;

/** The verdict of a brief on its step. */
public enum Verdict {
  /** Nothing speaks against the step. */
  CLEAR("clear"),
  /** Read the cautions, then arm the step. */
  HEED("heed"),
  /** Do not connect this. */
  HALT("halt");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** Returns the word shown and written. */
  public String word() {
    return word;
  }

  /** Returns the word in capitals, as printed before a caution. */
  public String capitals() {
    return word.toUpperCase(Locale.ROOT);
  }

  /** Returns the graver of two verdicts. */
  public Verdict graver(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
