package loadwalk.wave;

/**
 * The sides of a wave that are cut flat, and whether the sound input did it.
 *
 * @param top whether the positive side is cut flat
 * @param bottom whether the negative side is cut flat
 * @param topFraction the part of a period for which the positive side stays flat, or 0
 * @param bottomFraction the part of a period for which the negative side stays flat, or 0
 * @param capture whether the input itself was overdriven
 */
public record Clipping(
    boolean top, boolean bottom, double topFraction, double bottomFraction, Overdriven capture) {
  /** Whether the capturing input was driven to full scale. */
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
