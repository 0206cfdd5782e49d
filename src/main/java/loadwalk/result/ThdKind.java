package loadwalk.result;

import java.util.Locale;
import java.util.Optional;

/** What a figure of distortion counts; figures of different kinds differ for the same wave. */
public enum ThdKind {
  /** Harmonics over the fundamental. */
  THD_F("thd-f"),
  /** Harmonics over the whole signal. */
  THD_R("thd-r"),
  /** Harmonics and noise over the whole signal. */
  THD_N("thd+n");

  private final String word;

  ThdKind(String word) {
    this.word = word;
  }

  /** Returns the name used in files and JSON output. */
  public String word() {
    return word;
  }

  /** Returns the name used on screens and sheets. */
  public String label() {
    return word.toUpperCase(Locale.ROOT);
  }

  /** Finds a kind by its name in files. */
  public static Optional<ThdKind> ofWord(String word) {
    for (ThdKind kind : values()) {
      if (kind.word.equals(word)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
