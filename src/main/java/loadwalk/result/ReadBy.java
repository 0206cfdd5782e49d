package loadwalk.result;

/** How the output of a step came into the record. */
public enum ReadBy {
  /** Read off a meter by eye and typed. */
  HAND("hand", "typed by hand"),
  /** Taken from a connected meter. */
  METER("meter", "taken from a meter"),
  /** Taken from a captured wave. */
  CAPTURE("capture", "taken from a captured wave"),
  /** Read on the simulated bench. */
  PRACTICE("practice", "simulated");

  private final String word;
  private final String text;

  ReadBy(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns the name used in files and JSON output. */
  public String word() {
    return word;
  }

  /** Returns the phrase used on sheets. */
  public String text() {
    return text;
  }
}
