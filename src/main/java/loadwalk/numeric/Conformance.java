package loadwalk.numeric;

/** What a measured value shows about a requirement, at a stated level. */
public enum Conformance {
  SHOWN_TO_MEET("shown to meet it"),
  SHOWN_TO_MISS("shown to miss it"),
  TOO_CLOSE("too close to call");

  private final String words;

  Conformance(String words) {
    this.words = words;
  }

  /** Returns the verdict as printed. */
  public String words() {
    return words;
  }
}
