package loadwalk.forecast.doubt;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;

/**
 * A value that may have been meant where another was entered.
 *
 * @param slip the slip that turns the one into the other
 * @param meant the value meant, in the unit entered; NaN where the slip says nothing of it
 * @param logWeight ln of the probability that the slip is made and gives just the entry; for a slip
 *     that gives the entry from any value, ln of the density of ln of the entry
 */
record SlipCandidate(Slip slip, double meant, double logWeight) {
  /** The change of ln of an entry below which a swap of digits harms nobody. Chosen by hand. */
  private static final double LEAST_SEEN = 0.04;

  /** ln of the share of decimal points that are off by two places or more. Chosen by hand. */
  private static final double LOG_FAR_DECIMAL = Math.log(0.05);

  /**
   * The share of a slip of the channels that is left bridged, where watts are typed. Chosen by
   * hand.
   */
  private static final double HALF_OF_BRIDGE_IN_WATTS = 0.3;

  /** The share of stereo readings in a bridged step where watts are typed. Chosen by hand. */
  private static final double STEREO_IN_BRIDGED_IN_WATTS = 0.3;

  /** The share of "both for one" that is left bridged, in volts. Chosen by hand. */
  private static final double BOTH_IN_BRIDGED = 0.6;

  /**
   * The share of "one for both" that is left bridged, in volts: the stereo reading takes the rest.
   * Chosen by hand.
   */
  private static final double ONE_IN_BRIDGED = 0.3;

  /**
   * The share of copied readings that are amperes alone. Whoever copies copies the output or the
   * whole line, while the amperes of a supply at its limit come again by themselves.
   */
  private static final double AMPS_ALONE_COPIED = 0.03;

  /** The share of peak readings among those who type watts: a wattmeter seldom shows peaks. */
  private static final double PEAK_IN_WATTS = 0.25;

  /**
   * How much oftener than in volts the channels are mistaken in watts: amplifiers are rated by the
   * channel or by all of them, volts are read at one.
   */
  private static final double CHANNELS_IN_WATTS = 2.5;

  /** The same once more where volts were typed before: watts then come from another sheet. */
  private static final double CHANNELS_IN_NEW_UNIT = 3;

  /** Returns what may have been meant by output volts or watts, typed as ever in the walk. */
  static List<SlipCandidate> output(
      Target target, ReadingId id, double entered, Double before, int decimals) {
    return output(target, id, entered, before, decimals, false);
  }

  /**
   * Returns what may have been meant by output volts or watts.
   *
   * @param newUnit whether the outputs before were all typed in the other unit
   */
  static List<SlipCandidate> output(
      Target target, ReadingId id, double entered, Double before, int decimals, boolean newUnit) {
    boolean watts = id == ReadingId.OUTPUT_WATTS;
    boolean bridged = target.mode() == Mode.BRIDGED;
    double power = watts ? 2 : 1;
    List<SlipCandidate> found = new ArrayList<>();
    decimals(found, Slip.DECIMAL_POINT, entered);
    if (watts) {
      double channels = CHANNELS_IN_WATTS * (newUnit ? CHANNELS_IN_NEW_UNIT : 1);
      add(
          found,
          Slip.BOTH_CHANNELS_FOR_ONE,
          entered / 2,
          bridged ? HALF_OF_BRIDGE_IN_WATTS * channels : channels);
      add(found, Slip.ONE_CHANNEL_FOR_BOTH, entered * 2, channels);
      add(found, Slip.PEAK_FOR_RMS, entered / 2, PEAK_IN_WATTS);
      add(
          found,
          Slip.STEREO_READING_IN_BRIDGED,
          entered * 4,
          bridged ? STEREO_IN_BRIDGED_IN_WATTS : 0);
    } else {
      add(found, Slip.BOTH_CHANNELS_FOR_ONE, entered / 2, bridged ? BOTH_IN_BRIDGED : 1);
      add(found, Slip.PEAK_FOR_RMS, entered / Math.sqrt(2), 1);
      add(found, Slip.STEREO_READING_IN_BRIDGED, entered * 2, bridged ? 1 : 0);
      add(found, Slip.ONE_CHANNEL_FOR_BOTH, entered * 2, bridged ? ONE_IN_BRIDGED : 1);
    }
    add(found, Slip.PEAK_TO_PEAK_FOR_RMS, entered / Math.pow(2 * Math.sqrt(2), power), 1);
    swapped(found, entered, decimals);
    copied(found, entered, before, decimals, 1);
    found.add(unnamed());
    return found;
  }

  /** Returns what may have been meant by supply amps. */
  static List<SlipCandidate> supplyAmps(double entered, Double before, int decimals) {
    List<SlipCandidate> found = new ArrayList<>();
    decimals(found, Slip.SUPPLY_AMPS_TEN_TIMES, entered);
    swapped(found, entered, decimals);
    copied(found, entered, before, decimals, AMPS_ALONE_COPIED);
    found.add(unnamed());
    return found;
  }

  /** Returns what may have been meant by a reading that only slips of the pen befall. */
  static List<SlipCandidate> plain(double entered, int decimals) {
    List<SlipCandidate> found = new ArrayList<>();
    decimals(found, Slip.DECIMAL_POINT, entered);
    swapped(found, entered, decimals);
    found.add(unnamed());
    return found;
  }

  private static void decimals(List<SlipCandidate> found, Slip slip, double entered) {
    double log = SlipPriors.log(slip) - Math.log(2);
    found.add(new SlipCandidate(slip, entered / 10, log));
    found.add(new SlipCandidate(slip, entered * 10, log));
    found.add(new SlipCandidate(slip, entered / 100, log + LOG_FAR_DECIMAL));
    found.add(new SlipCandidate(slip, entered * 100, log + LOG_FAR_DECIMAL));
    found.add(new SlipCandidate(slip, entered * 1000, log + LOG_FAR_DECIMAL));
  }

  private static void add(List<SlipCandidate> found, Slip slip, double meant, double share) {
    if (share > 0) {
      found.add(new SlipCandidate(slip, meant, SlipPriors.log(slip) + Math.log(share)));
    }
  }

  private static void swapped(List<SlipCandidate> found, double entered, int decimals) {
    List<Double> numbers =
        TypedDigits.swapped(entered, decimals).stream()
            .filter(number -> Math.abs(Math.log(number / entered)) > LEAST_SEEN)
            .toList();
    for (double number : numbers) {
      addSwap(found, number, numbers.size());
    }
    // A number with a digit more has a pair more that may be swapped.
    TypedDigits.behindZero(entered, decimals)
        .ifPresent(number -> addSwap(found, number, numbers.size() + 1));
  }

  private static void addSwap(List<SlipCandidate> found, double meant, int pairs) {
    double log = SlipPriors.log(Slip.DIGITS_SWAPPED) - Math.log(pairs);
    found.add(new SlipCandidate(Slip.DIGITS_SWAPPED, meant, log));
  }

  private static void copied(
      List<SlipCandidate> found, double entered, Double before, int decimals, double share) {
    if (before != null && before > 0) {
      double resolution = Math.pow(10, -decimals);
      if (Math.abs(entered - before) < 0.5 * resolution) {
        double density = entered / resolution;
        found.add(
            new SlipCandidate(
                Slip.COPIED_FROM_BEFORE,
                Double.NaN,
                SlipPriors.log(Slip.COPIED_FROM_BEFORE) + Math.log(share * density)));
      }
    }
  }

  private static SlipCandidate unnamed() {
    return new SlipCandidate(
        Slip.UNNAMED, Double.NaN, SlipPriors.log(Slip.UNNAMED) + SlipPriors.UNNAMED_LOG_DENSITY);
  }
}
