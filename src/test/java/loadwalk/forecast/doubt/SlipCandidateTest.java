package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Slip;
import org.junit.jupiter.api.Test;

/** What may have been meant: the arithmetic of each slip, and what makes a value suspicious. */
class SlipCandidateTest {
  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;
  private static final ReadingId WATTS = ReadingId.OUTPUT_WATTS;

  private static List<Double> meant(List<SlipCandidate> all, Slip slip) {
    List<Double> meant = new ArrayList<>();
    all.stream().filter(c -> c.slip() == slip).forEach(c -> meant.add(c.meant()));
    return meant;
  }

  private static double weight(List<SlipCandidate> all, Slip slip) {
    return all.stream()
        .filter(c -> c.slip() == slip)
        .mapToDouble(c -> Math.exp(c.logWeight()))
        .sum();
  }

  /** A peak is √2 of the rms of a sine, peak-to-peak 2√2; in watts these are squared. */
  @Test
  void peaks_areOfASine() {
    List<SlipCandidate> volts = SlipCandidate.output(STEREO_4, VOLTS, 20, null, 1);
    assertNear(20 / Math.sqrt(2), meant(volts, Slip.PEAK_FOR_RMS));
    assertNear(20 / (2 * Math.sqrt(2)), meant(volts, Slip.PEAK_TO_PEAK_FOR_RMS));
    List<SlipCandidate> watts = SlipCandidate.output(STEREO_4, WATTS, 200, null, 0);
    assertNear(100, meant(watts, Slip.PEAK_FOR_RMS));
    assertNear(25, meant(watts, Slip.PEAK_TO_PEAK_FOR_RMS));
  }

  @Test
  void channels_areTwoForOne_orOneForTwo() {
    for (ReadingId id : List.of(VOLTS, WATTS)) {
      List<SlipCandidate> stereo = SlipCandidate.output(STEREO_4, id, 20, null, 1);
      assertNear(10, meant(stereo, Slip.BOTH_CHANNELS_FOR_ONE));
      assertNear(40, meant(stereo, Slip.ONE_CHANNEL_FOR_BOTH));
      assertEquals(List.of(), meant(stereo, Slip.STEREO_READING_IN_BRIDGED));
    }
    List<SlipCandidate> volts = SlipCandidate.output(BRIDGED_4, VOLTS, 20, null, 1);
    assertNear(40, meant(volts, Slip.STEREO_READING_IN_BRIDGED));
    assertNear(
        80,
        meant(SlipCandidate.output(BRIDGED_4, WATTS, 20, null, 1), Slip.STEREO_READING_IN_BRIDGED));
  }

  /** In a bridged step a reading of one channel is the likelier way to be off by two. */
  @Test
  void slips_areAsLikelyAsTheStepMakesThem() {
    List<SlipCandidate> stereo = SlipCandidate.output(STEREO_4, VOLTS, 20, null, 1);
    List<SlipCandidate> bridged = SlipCandidate.output(BRIDGED_4, VOLTS, 20, null, 1);
    assertLess(bridged, Slip.ONE_CHANNEL_FOR_BOTH, stereo, Slip.ONE_CHANNEL_FOR_BOTH);
    assertLess(bridged, Slip.ONE_CHANNEL_FOR_BOTH, bridged, Slip.STEREO_READING_IN_BRIDGED);
    assertLess(bridged, Slip.BOTH_CHANNELS_FOR_ONE, stereo, Slip.BOTH_CHANNELS_FOR_ONE);
    List<SlipCandidate> watts = SlipCandidate.output(STEREO_4, WATTS, 20, null, 1);
    assertLess(watts, Slip.PEAK_FOR_RMS, stereo, Slip.PEAK_FOR_RMS);
    assertLess(stereo, Slip.BOTH_CHANNELS_FOR_ONE, watts, Slip.BOTH_CHANNELS_FOR_ONE);
    assertLess(stereo, Slip.ONE_CHANNEL_FOR_BOTH, watts, Slip.ONE_CHANNEL_FOR_BOTH);
    List<SlipCandidate> both = SlipCandidate.output(BRIDGED_4, WATTS, 20, null, 1);
    assertLess(both, Slip.BOTH_CHANNELS_FOR_ONE, watts, Slip.BOTH_CHANNELS_FOR_ONE);
    assertLess(both, Slip.STEREO_READING_IN_BRIDGED, bridged, Slip.STEREO_READING_IN_BRIDGED);
  }

  private static void assertLess(
      List<SlipCandidate> ones, Slip one, List<SlipCandidate> others, Slip other) {
    double less = weight(ones, one);
    assertTrue(less > 0 && less < weight(others, other), one + " " + less + ", " + other);
  }

  /** Watts where volts were typed before come from another sheet, which may sum the channels. */
  @Test
  void unitTypedForTheFirstTime_makesMistakenChannelsLikelier() {
    List<SlipCandidate> usual = SlipCandidate.output(STEREO_4, WATTS, 20, null, 1);
    List<SlipCandidate> first = SlipCandidate.output(STEREO_4, WATTS, 20, null, 1, true);
    assertLess(usual, Slip.BOTH_CHANNELS_FOR_ONE, first, Slip.BOTH_CHANNELS_FOR_ONE);
    assertLess(usual, Slip.ONE_CHANNEL_FOR_BOTH, first, Slip.ONE_CHANNEL_FOR_BOTH);
    assertEquals(
        SlipCandidate.output(STEREO_4, VOLTS, 20, null, 1),
        SlipCandidate.output(STEREO_4, VOLTS, 20, null, 1, true));
  }

  @Test
  void decimalPoint_isOffByOnePlace_seldomByMore() {
    List<SlipCandidate> plain = SlipCandidate.plain(20, 1);
    List<Double> meant = meant(plain, Slip.DECIMAL_POINT);
    assertEquals(List.of(2.0, 200.0, 0.2, 2000.0, 20_000.0), meant);
    List<SlipCandidate> decimals =
        plain.stream().filter(c -> c.slip() == Slip.DECIMAL_POINT).toList();
    assertEquals(decimals.get(0).logWeight(), decimals.get(1).logWeight(), "either way");
    for (SlipCandidate far : decimals.subList(2, 5)) {
      assertTrue(far.logWeight() < decimals.get(0).logWeight() - 1, far.toString());
    }
    List<Double> amps = meant(SlipCandidate.supplyAmps(20, null, 1), Slip.SUPPLY_AMPS_TEN_TIMES);
    assertEquals(meant, amps);
  }

  /**
   * One of the swaps was made, each as likely; one that changes little harms nobody. 103.4 typed as
   * 013.4 is one swap of three.
   */
  @Test
  void digitsSwapped_shareTheirWeight() {
    List<SlipCandidate> plain = SlipCandidate.plain(13.4, 1);
    assertEquals(List.of(31.4, 14.3, 103.4), meant(plain, Slip.DIGITS_SWAPPED));
    List<SlipCandidate> swaps =
        plain.stream().filter(c -> c.slip() == Slip.DIGITS_SWAPPED).toList();
    assertEquals(swaps.get(0).logWeight(), swaps.get(1).logWeight());
    double third = swaps.get(0).logWeight() + Math.log(2.0 / 3);
    assertEquals(third, swaps.get(2).logWeight(), 1e-12);
    List<SlipCandidate> amps = SlipCandidate.supplyAmps(13.4, null, 1);
    assertEquals(List.of(31.4, 14.3, 103.4), meant(amps, Slip.DIGITS_SWAPPED));
    List<SlipCandidate> fine = SlipCandidate.plain(13.42, 2);
    assertEquals(
        List.of(31.42, 14.32, 103.42), meant(fine, Slip.DIGITS_SWAPPED), "13.24 is near enough");
  }

  /** By chance a value comes again in one of so many cells; a copy gives just this one. */
  @Test
  void valueOfTheStepBefore_isTheMoreSuspicious_theFinerItIsTyped() {
    List<SlipCandidate> coarse = SlipCandidate.output(STEREO_4, VOLTS, 13.4, 13.4, 1);
    List<SlipCandidate> fine = SlipCandidate.output(STEREO_4, VOLTS, 13.4, 13.4, 2);
    double weight = weight(coarse, Slip.COPIED_FROM_BEFORE);
    assertTrue(weight > 0);
    assertEquals(10 * weight, weight(fine, Slip.COPIED_FROM_BEFORE), 1e-9 * weight);
    assertEquals(2 * weight, copied(26.8, 26.8), 1e-9 * weight, "twice as many cells");
    assertTrue(Double.isNaN(meant(fine, Slip.COPIED_FROM_BEFORE).get(0)));
    assertEquals(0, copied(13.4, 13.5));
    assertEquals(0, copied(13.4, null));
    assertEquals(0, copied(0, 0.0));
    List<SlipCandidate> amps = SlipCandidate.supplyAmps(13.4, 13.4, 1);
    assertLess(amps, Slip.COPIED_FROM_BEFORE, coarse, Slip.COPIED_FROM_BEFORE);
  }

  private static double copied(double entered, Double before) {
    return weight(
        SlipCandidate.output(STEREO_4, VOLTS, entered, before, 1), Slip.COPIED_FROM_BEFORE);
  }

  @Test
  void unnamedSlip_isAlwaysPossible_andSaysNothingOfWhatWasMeant() {
    for (List<SlipCandidate> all :
        List.of(
            SlipCandidate.plain(20, 1),
            SlipCandidate.supplyAmps(20, null, 1),
            SlipCandidate.output(STEREO_4, VOLTS, 20, null, 1))) {
      assertEquals(1, meant(all, Slip.UNNAMED).size());
      assertLess(all, Slip.UNNAMED, all, Slip.DIGITS_SWAPPED);
    }
  }

  @Test
  void loadMeasuredWrong_isDouble_half_orADecimalPoint() {
    Band band = new Band(3.8, 4, 4.2);
    assertEquals(Slip.LOAD_DOUBLE, LoadSlip.of(8.1, band));
    assertEquals(Slip.LOAD_HALF, LoadSlip.of(2, band));
    for (double ohms : new double[] {0.4, 40, 4000, 0.004}) {
      assertEquals(Slip.DECIMAL_POINT, LoadSlip.of(ohms, band), ohms + " ohms");
    }
    assertEquals(Slip.UNNAMED, LoadSlip.of(3, band));
  }

  private static void assertNear(double expected, List<Double> meant) {
    assertEquals(1, meant.size(), meant.toString());
    assertEquals(expected, meant.get(0), 1e-9);
  }
}
