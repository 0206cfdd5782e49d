package loadwalk.result;

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
 * @param note why the two are not like for like; empty if they are
 */
public record RatingComparison(
    double ratingWatts,
    Quantity measured,
    Quantity ratio,
    double decibels,
    Verdict verdict,
    Optional<String> note) {

  /** What a measurement shows about a rating, at 95 % (JCGM 106:2012, guard band). */
  public enum Verdict {
    MEETS("meets", "met"),
    MISSES("misses", "missed"),
    TOO_CLOSE("too-close", "too close to call");

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
    Objects.requireNonNull(note, "note");
    if (Double.isNaN(decibels)) {
      throw new IllegalArgumentException("decibels must be a number");
    }
  }
}
