package loadwalk.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a step ended. */
public enum Outcome {
  /** Its readings are in. */
  MEASURED("measured", "measured", "was measured"),
  /** The amplifier shut itself off. */
  PROTECTED("protected", "protected", "the amplifier shut itself off"),
  /** A fuse opened, the amplifier's or the bench's. */
  FUSE_OPENED("fuse-opened", "fuse opened", "a fuse opened"),
  /** The amplifier gave out. */
  GAVE_OUT("gave-out", "gave out", "the amplifier gave out"),
  /** The supply or the signal source ended before the amplifier did. */
  NOT_REACHED("not-reached", "not reached", "the supply or the source ended first"),
  /** Nobody did it. */
  SKIPPED("skipped", "skipped", "was skipped");

  private static final int LETTERS = 3;

  private final String word;
  private final String text;
  private final String clause;

  Outcome(String word, String text, String clause) {
    this.word = word;
    this.text = text;
    this.clause = clause;
  }

  /** Returns the name used in files, in JSON output and by who types. */
  public String word() {
    return word;
  }

  /** Returns the word or two that stand in a table. */
  public String text() {
    return text;
  }

  /** Returns what happened, as a clause without a full stop. */
  public String clause() {
    return clause;
  }

  /** Returns the outcomes that an operator can say of a step that runs. */
  public static List<Outcome> sayable() {
    return List.of(PROTECTED, FUSE_OPENED, GAVE_OUT, NOT_REACHED);
  }

  /**
   * Finds an outcome that an operator can say by its number from 1, or by the first letters of its
   * word, three at least.
   */
  public static Optional<Outcome> typed(String text) {
    String start = text.toLowerCase(Locale.ROOT);
    return sayable().stream()
        .filter(
            outcome ->
                start.equals(String.valueOf(sayable().indexOf(outcome) + 1))
                    || start.length() >= LETTERS && outcome.word.startsWith(start))
        .findFirst();
  }

  /** Finds an outcome that an operator can say by its word. */
  public static Optional<Outcome> said(String word) {
    return sayable().stream().filter(outcome -> outcome.word.equals(word)).findFirst();
  }
}
