package loadwalk.forecast;

import java.util.EnumMap;
import java.util.Map;

/**
 * How often each slip is made, per entry.
 *
 * <p>Common practice, no source: their sum says that about one entry in fifty is wrong. Only the
 * order of size matters, for a doubt needs the entry to fit a slip far better than no slip.
 */
final class SlipPriors {
  /** The density of ln of an entry that is wrong in some way nobody can name. */
  static final double UNNAMED_LOG_DENSITY = Math.log(0.15);

  private static final Map<Slip, Double> PRIORS = new EnumMap<>(Slip.class);

  static {
    PRIORS.put(Slip.DECIMAL_POINT, 3e-3);
    PRIORS.put(Slip.PEAK_FOR_RMS, 3e-3);
    PRIORS.put(Slip.PEAK_TO_PEAK_FOR_RMS, 3e-3);
    PRIORS.put(Slip.BOTH_CHANNELS_FOR_ONE, 3e-3);
    PRIORS.put(Slip.ONE_CHANNEL_FOR_BOTH, 3e-3);
    PRIORS.put(Slip.STEREO_READING_IN_BRIDGED, 3e-3);
    PRIORS.put(Slip.LOAD_DOUBLE, 3e-3);
    PRIORS.put(Slip.LOAD_HALF, 3e-3);
    PRIORS.put(Slip.SUPPLY_AMPS_TEN_TIMES, 3e-3);
    // Four digits have three swaps, one of which often fits by chance.
    PRIORS.put(Slip.DIGITS_SWAPPED, 1.5e-3);
    // A copy leaves all its digits as evidence; by chance a stiff amplifier shows the same volts.
    PRIORS.put(Slip.COPIED_FROM_BEFORE, 1e-3);
    PRIORS.put(Slip.OUTPUT_ABOVE_INPUT, 3e-3);
    PRIORS.put(Slip.UNNAMED, 7.5e-4);
  }

  private SlipPriors() {}

  /** Returns ln of the probability that an entry carries a slip. */
  static double log(Slip slip) {
    return Math.log(PRIORS.getOrDefault(slip, 1e-4));
  }
}
