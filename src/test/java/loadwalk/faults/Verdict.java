package loadwalk.faults;

/**
 * What came of a fault.
 *
 * @param kind whether it was caught
 * @param text the rest of the line about it
 */
record Verdict(Kind kind, String text) {
  /** Whether a fault was caught, by whom, or why it was not. */
  enum Kind {
    AS_NAMED("caught by the test named"),
    BY_ANOTHER("caught by another test"),
    NOT_CAUGHT("not caught"),
    HUNG("left a test hanging"),
    BAD("could not be tried");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    boolean isGood() {
      return this == AS_NAMED || this == BY_ANOTHER;
    }
  }
}
