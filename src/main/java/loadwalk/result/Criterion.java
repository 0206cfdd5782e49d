package loadwalk.result;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The point at which the output was read; results at different points are never compared silently.
 */
public enum Criterion {
  /** The output reached the stated total harmonic distortion. */
  THD_LIMIT("thd-limit", "at the THD limit"),
  /** The peaks of the wave just began to flatten, judged by eye or by an indicator light. */
  CLIPPING_ONSET("clipping-onset", "at the onset of clipping"),
  /** Nobody read the distortion or said at what point the output was read. */
  NOT_KNOWN("not-known", "at an unknown distortion"),
  /** The output stayed below the limit. */
  BELOW_LIMIT("below-limit", "below the limit"),
  /** The output was driven beyond the limit. */
  ABOVE_LIMIT("above-limit", "above the limit");

  /** How far the distortion read may lie from the limit and still be at it, a fraction of it. */
  private static final double AT_LIMIT = 1 / 3.0;

  private static final double ROUNDING = 1e-9;

  private final String word;
  private final String text;

  Criterion(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns the name used in files and JSON output. */
  public String word() {
    return word;
  }

  /** Returns the phrase used on screens and sheets. */
  public String text() {
    return text;
  }

  /**
   * Decides the point at which an output really was read: by the distortion read there, if one was,
   * whatever was said; else by the operator's word.
   *
   * @param thdPercent the distortion read at the output, percent
   * @param limitPercent the limit, percent, above 0
   * @param said the point that the operator named
   */
  public static Criterion reached(
      OptionalDouble thdPercent, double limitPercent, Optional<Criterion> said) {
    if (thdPercent.isEmpty()) {
      return said.orElse(NOT_KNOWN);
    }
    double off = thdPercent.getAsDouble() / limitPercent - 1;
    if (Math.abs(off) <= AT_LIMIT + ROUNDING) {
      return THD_LIMIT;
    }
    return off < 0 ? BELOW_LIMIT : ABOVE_LIMIT;
  }

  /** Tells whether outputs read at this point can be compared: it is a stated point. */
  public boolean isStated() {
    return this == THD_LIMIT || this == CLIPPING_ONSET;
  }

  /** Returns the points that an operator can name. */
  public static List<Criterion> sayable() {
    return List.of(THD_LIMIT, CLIPPING_ONSET, BELOW_LIMIT, ABOVE_LIMIT);
  }

  /** Finds a criterion by its name in files. */
  public static Optional<Criterion> ofWord(String word) {
    for (Criterion criterion : values()) {
      if (criterion.word.equals(word)) {
        return Optional.of(criterion);
      }
    }
    return Optional.empty();
  }
}
