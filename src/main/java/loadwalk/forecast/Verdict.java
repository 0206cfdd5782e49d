package loadwalk.forecast;

import java.util.Locale;

/** What a brief says of its step. */
public enum Verdict {
  /** Nothing special is known against the step. */
  CLEAR("clear"),
  /** Read the cautions and arm the step. */
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

  /** Returns the word in capitals, as it stands before a caution. */
  public String capitals() {
    return word.toUpperCase(Locale.ROOT);
  }

  /** Returns the graver of two verdicts. */
  public Verdict graver(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
