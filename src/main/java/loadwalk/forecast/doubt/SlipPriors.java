package loadwalk.forecast.doubt;

import java.util.EnumMap;
import java.util.Map;
import loadwalk.forecast.Slip;

/**
 * The probability of each slip, per entry.
 *
 * <p>Common practice, no source: together they say that about one entry in fifty is wrong. Only the
 * order of magnitude matters, because a doubt needs an entry that fits a slip far better than no
 * slip.
 */
final class SlipPriors {
  /**
   * Density of ln of an entry that is wrong in an unknown way: anywhere within three orders of
   * magnitude. Chosen by hand.
   */
  static final double UNNAMED_LOG_DENSITY = Math.log(0.15);

  private static final Map<Slip, Double> PRIORS = new EnumMap<>(Slip.class);

  /** Most slips, per entry: one in three hundred. Common practice, no source. */
  private static final double USUAL = 3e-3;

  /**
   * Swapped digits: four digits have three swaps, one of which often fits by chance. Set on the
   * experiment.
   */
  private static final double SWAPPED = 1.5e-3;

  /**
   * A copied reading: all its digits are evidence, but a stiff amplifier may show the same volts by
   * chance. Set on the experiment.
   */
  private static final double COPIED = 1e-3;

  /** A slip of an unknown kind. Set on the experiment. */
  private static final double NAMELESS = 7.5e-4;

  /** Any slip not in the table. Chosen by hand. */
  private static final double OTHER = 1e-4;

  static {
    PRIORS.put(Slip.DECIMAL_POINT, USUAL);
    PRIORS.put(Slip.PEAK_FOR_RMS, USUAL);
    PRIORS.put(Slip.PEAK_TO_PEAK_FOR_RMS, USUAL);
    PRIORS.put(Slip.BOTH_CHANNELS_FOR_ONE, USUAL);
    PRIORS.put(Slip.ONE_CHANNEL_FOR_BOTH, USUAL);
    PRIORS.put(Slip.STEREO_READING_IN_BRIDGED, USUAL);
    PRIORS.put(Slip.LOAD_DOUBLE, USUAL);
    PRIORS.put(Slip.LOAD_HALF, USUAL);
    PRIORS.put(Slip.SUPPLY_AMPS_TEN_TIMES, USUAL);
    PRIORS.put(Slip.DIGITS_SWAPPED, SWAPPED);
    PRIORS.put(Slip.COPIED_FROM_BEFORE, COPIED);
    PRIORS.put(Slip.OUTPUT_ABOVE_INPUT, USUAL);
    PRIORS.put(Slip.FAHRENHEIT_FOR_CELSIUS, USUAL);
    PRIORS.put(Slip.UNNAMED, NAMELESS);
  }

  private SlipPriors() {}

  /** Returns ln of the probability that an entry carries a slip. */
  static double log(Slip slip) {
    return Math.log(PRIORS.getOrDefault(slip, OTHER));
  }
}
