package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * The measured power compared with its rating.
 *
 * @param ratingWatts the rated power, watts: per channel in stereo, of the one load when bridged
 * @param measured the measured power in the same load, watts; the lower channel if both were
 *     measured
 * @param ratio measured over rated, with the uncertainty of the measured power
 * @param decibels ten times the decimal logarithm of the ratio; negative infinity at 0 W
 * @param verdict what the measurement shows
 * @param differs what the rating's conditions and those of the measurement differ in; the verdict
 *     is {@link Verdict#OTHER_CONDITIONS} if there is anything
 * @param notes what the rating leaves open
 * @param estimate the power at the rating's supply volts, where those differ and it is known how
 *     the rails follow; never a verdict
 */
public record RatingComparison(
    double ratingWatts,
    Quantity measured,
    Quantity ratio,
    double decibels,
    Verdict verdict,
    List<String> differs,
    List<String> notes,
    Optional<PowerAtSupply> estimate) {

  /** What a measurement shows about a rating, at 95 % (JCGM 106:2012, guard band). */
  public enum Verdict {
    MEETS("meets", "met"),
    MISSES("misses", "missed"),
    TOO_CLOSE("too-close", "too close to call"),
    /** Rated and read under other conditions, so that nothing is shown. */
    OTHER_CONDITIONS("other-conditions", "other conditions");

    private final String word;
    private final String text;

    Verdict(String word, String text) {
      this.word = word;
      this.text = text;
    }

    /** Returns the name used in JSON output. */
    public String word() {
      return word;
    }

    /** Returns the phrase used on screens and sheets. */
    public String text() {
      return text;
    }
  }

  /** Rejects missing parts. */
  public RatingComparison {
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(ratio, "ratio");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(estimate, "estimate");
    differs = List.copyOf(differs);
    notes = List.copyOf(notes);
    if (Double.isNaN(decibels)) {
      throw new IllegalArgumentException("decibels must be a number");
    }
  }
}
