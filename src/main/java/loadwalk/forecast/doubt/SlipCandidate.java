package loadwalk.forecast.doubt;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;

/**
 * A value that the operator may have meant instead of the one entered.
 *
 * @param slip the slip that turns the value meant into the one entered
 * @param meant the value meant, in the unit entered; NaN if the slip does not reveal it
 * @param logWeight ln of the probability that the slip is made and gives exactly this entry; for a
 *     slip that gives the entry from any value, ln of the density of ln of the entry
 */
record SlipCandidate(Slip slip, double meant, double logWeight) {
  /** Change of ln of an entry below which swapped digits do no harm. Chosen by hand. */
  private static final double LEAST_SEEN = 0.04;

  /**
   * ln of the share of misplaced decimal points that are off by two places or more. Chosen by hand.
   */
  private static final double LOG_FAR_DECIMAL = Math.log(0.05);

  /**
   * Share of the channel slips that remains in a bridged step if watts are typed. Chosen by hand.
   */
  private static final double HALF_OF_BRIDGE_IN_WATTS = 0.3;

  /** Share of stereo readings in a bridged step if watts are typed. Chosen by hand. */
  private static final double STEREO_IN_BRIDGED_IN_WATTS = 0.3;

  /** Share of "both for one" that remains in a bridged step, in volts. Chosen by hand. */
  private static final double BOTH_IN_BRIDGED = 0.6;

  /**
   * Share of "one for both" that remains in a bridged step, in volts: the stereo reading takes the
   * rest. Chosen by hand.
   */
  private static final double ONE_IN_BRIDGED = 0.3;

  /**
   * Share of copied readings that are amperes alone. People copy the output or the whole line,
   * while the amperes of a supply at its limit repeat by themselves.
   */
  private static final double AMPS_ALONE_COPIED = 0.03;

  /** Share of peak readings if watts are typed: a wattmeter seldom shows peaks. */
  private static final double PEAK_IN_WATTS = 0.25;

  /**
   * How much more often the channels are confused in watts than in volts: amplifiers are rated per
   * channel or for all channels, while volts are read at one.
   */
  private static final double CHANNELS_IN_WATTS = 2.5;

  /** Further factor if volts were typed before: the watts then come from another sheet. */
  private static final double CHANNELS_IN_NEW_UNIT = 3;

  /**
   * Returns the values that may have been meant by output volts or watts, typed in the unit of the
   * walk so far.
   */
  static List<SlipCandidate> output(
      Target target, ReadingId id, double entered, Double before, int decimals) {
    return output(target, id, entered, before, decimals, false);
  }

  /**
   * Returns the values that may have been meant by output volts or watts.
   *
   * @param newUnit whether all earlier outputs were typed in the other unit
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

  /** Returns the values that may have been meant by supply amps. */
  static List<SlipCandidate> supplyAmps(double entered, Double before, int decimals) {
    List<SlipCandidate> found = new ArrayList<>();
    decimals(found, Slip.SUPPLY_AMPS_TEN_TIMES, entered);
    swapped(found, entered, decimals);
    copied(found, entered, before, decimals, AMPS_ALONE_COPIED);
    found.add(unnamed());
    return found;
  }

  /** Returns the values that may have been meant by a reading that only typing slips affect. */
  static List<SlipCandidate> plain(double entered, int decimals) {
    List<SlipCandidate> found = new ArrayList<>();
    decimals(found, Slip.DECIMAL_POINT, entered);
    swapped(found, entered, decimals);
    found.add(unnamed());
    return found;
  }

  /** Returns the values that may have been meant by a temperature. */
  static List<SlipCandidate> temperature(double entered, int decimals) {
    List<SlipCandidate> found = plain(entered, decimals);
    add(found, Slip.FAHRENHEIT_FOR_CELSIUS, TemperatureSlip.celsius(entered), 1);
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
    // A number with one more digit has one more pair that can be swapped.
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
