package loadwalk.wave;

/**
 * Says which sides of a wave are cut flat, and whether the capture did it.
 *
 * @param top whether the positive side is cut flat
 * @param bottom whether the negative side is cut flat
 * @param topFraction the part of a period the positive side stays flat, 0 where it does not
 * @param bottomFraction the part of a period the negative side stays flat, 0 where it does not
 * @param capture whether the input itself was overdriven
 */
public record Clipping(
    boolean top, boolean bottom, double topFraction, double bottomFraction, Overdriven capture) {
  /** Whether the input that captured was driven to its end. */
  public enum Overdriven {
    NO("no"),
    YES("yes"),
    CANNOT_TELL("cannot tell");

    private final String words;

    Overdriven(String words) {
      this.words = words;
    }

    /** Returns the answer as printed. */
    public String words() {
      return words;
    }
  }
}
