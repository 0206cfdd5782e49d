package loadwalk.bench;

import java.util.Locale;

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
}
