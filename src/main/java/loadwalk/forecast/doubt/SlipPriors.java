package loadwalk.forecast.doubt;

import java.util.EnumMap;
import java.util.Map;
import loadwalk.forecast.Slip;

/**
 * How often each slip is made, per entry.
 *
 * <p>Common practice, no source: their sum says that about one entry in fifty is wrong. Only the
 * order of size matters, for a doubt needs the entry to fit a slip far better than no slip.
 */
final class SlipPriors {
  /**
   * The density of ln of an entry that is wrong in some way nobody can name: anywhere within three
   * orders. Chosen by hand.
   */
  static final double UNNAMED_LOG_DENSITY = Math.log(0.15);

  private static final Map<Slip, Double> PRIORS = new EnumMap<>(Slip.class);

  /** Most slips, per entry: one in three hundred. Common practice, no source. */
  private static final double USUAL = 3e-3;

  /** Four digits have three swaps, one of which often fits by chance. Set on the experiment. */
  private static final double SWAPPED = 1.5e-3;

  /**
   * A copy leaves all its digits as evidence; by chance a stiff amplifier shows the same volts. Set
   * on the experiment.
   */
  private static final double COPIED = 1e-3;

  /** A slip nobody can name. Set on the experiment. */
  private static final double NAMELESS = 7.5e-4;

  /** Any that is not in the table. Chosen by hand. */
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
    PRIORS.put(Slip.UNNAMED, NAMELESS);
  }

  private SlipPriors() {}

  /** Returns ln of the probability that an entry carries a slip. */
  static double log(Slip slip) {
    return Math.log(PRIORS.getOrDefault(slip, OTHER));
  }
}
