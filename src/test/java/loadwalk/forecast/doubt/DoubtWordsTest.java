package loadwalk.forecast.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import org.junit.jupiter.api.Test;

class DoubtWordsTest {
  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;
  private static final ReadingId LOAD = ReadingId.LOAD_OHMS;
  private static final Band BAND = new Band(13, 14, 15);

  @Test
  void doubt_saysHowFarOff_whatSlip_andByWhatItWasDecided() {
    Doubt doubt = volts(19.8, BAND, Slip.PEAK_FOR_RMS, 14.0);
    assertEquals(VOLTS, doubt.reading());
    assertEquals(Slip.PEAK_FOR_RMS, doubt.slip());
    assertEquals(
        "19.8 V is 41 % above the middle of the forecast, 13.0 to 15.0 V. It looks like peak volts"
            + " instead of rms: 14.0 V would fit. Judged by the forecast.",
        doubt.text());
    assertEquals("Check that the meter or scope shows rms, not peak.", doubt.lookAt());
  }

  @Test
  void doubt_farOff_isToldInTimes_nearInPercent() {
    assertOff("140 V is 10 times the middle of the forecast", 140);
    assertOff("1.40 V is one tenth of the middle of the forecast", 1.4);
    assertOff("28.1 V is 2.0 times the middle of the forecast", 28.1);
    assertOff("28.0 V is 100 % above the middle of the forecast", 28);
    assertOff("7.00 V is 50 % below the middle of the forecast", 7);
    assertOff("6.90 V is 51 % below the middle of the forecast", 6.9);
    assertOff("12.0 V is 14 % below the middle of the forecast", 12);
    assertOff("2.80 V is 80 % below the middle of the forecast", 2.8001);
    assertOff("2.70 V is one fifth of the middle of the forecast", 2.7);
    assertOff("1.00 V is one fourteenth of the middle of the forecast", 1);
    assertOff("0.500 V is 1/28 of the middle of the forecast", 0.5);
    assertOff("14.5 V is inside the forecast, 13.0 to 15.0 V.", 14.5);
  }

  @Test
  void doubt_againstABandAroundNothing_saysOutside() {
    Doubt doubt = volts(5, new Band(-1, 0, 1), Slip.UNNAMED, Double.NaN);
    assertTrue(doubt.text().startsWith("5.00 V is outside the forecast"), doubt.text());
  }

  @Test
  void doubt_withoutABand_orAName_saysNoMore() {
    Doubt doubt = volts(5, null, Slip.UNNAMED, Double.NaN);
    assertEquals("5.00 V was entered. No named slip fits. Judged by the forecast.", doubt.text());
    Doubt named = volts(5, null, Slip.DIGITS_SWAPPED, Double.NaN);
    assertEquals(
        "5.00 V was entered. It looks like two digits swapped. Judged by the forecast.",
        named.text());
  }

  @Test
  void witness_isNamed() {
    Hypotheses.Finding finding = new Hypotheses.Finding(Set.of(VOLTS), Slip.UNNAMED, Double.NaN, 9);
    String amps =
        DoubtWords.of(VOLTS, 5, null, finding, DoubtWords.Witness.SUPPLY_AMPS, Amplifiers.STEREO_4)
            .text();
    assertTrue(amps.endsWith("Judged by the forecast and the supply amps together."), amps);
    String other =
        DoubtWords.of(VOLTS, 5, null, finding, DoubtWords.Witness.OTHER_ENTRY, Amplifiers.STEREO_4)
            .text();
    assertTrue(other.endsWith("Judged by the other entry of this step."), other);
  }

  @Test
  void coldLoad_isToldAgainstItsTolerance() {
    Band band = new Band(3.8, 4, 4.2);
    Doubt half = DoubtWords.load(LOAD, 2, band, Slip.LOAD_HALF);
    assertEquals(
        "2.00 Ω is 50 % below the middle of the forecast, 3.80 to 4.20 Ω. It looks like a load"
            + " wired at half its value. Judged by the load's tolerance.",
        half.text());
    assertEquals(ReadingId.LOAD_OHMS, half.reading());
    assertEquals(Slip.LOAD_HALF, half.slip());
    assertTrue(half.lookAt().contains("before you switch anything on"), half.lookAt());
    assertTrue(
        DoubtWords.load(LOAD, 3.1, band, Slip.UNNAMED)
            .text()
            .contains(". No named slip fits. Judged"));
  }

  @Test
  void ratioFarOff_isWordedWithoutAnExponent() {
    Band band = new Band(0.5, 1.5, 2.5);
    assertTrue(
        DoubtWords.load(LOAD, 1200, band, Slip.UNNAMED).text().contains(" is 800 times the mid"));
    assertTrue(
        DoubtWords.load(LOAD, 15.2, band, Slip.UNNAMED).text().contains(" is 10 times the mid"));
    assertTrue(
        DoubtWords.load(LOAD, 0.1, band, Slip.UNNAMED)
            .text()
            .contains(" is one fifteenth of the m"));
    assertTrue(
        DoubtWords.load(LOAD, 0, band, Slip.UNNAMED)
            .text()
            .contains(" is less than a thousandth of the"));
  }

  @Test
  void question_isAskedOnlyWhereThereIsAGuess() {
    assertEquals("a slipped decimal point? ", asked(Slip.DECIMAL_POINT, Optional.empty()));
    assertEquals(
        "a slipped decimal point, in stereo-4? ",
        asked(Slip.DECIMAL_POINT, Optional.of("stereo-4")));
    assertEquals("", asked(Slip.UNNAMED, Optional.empty()));
    assertEquals("something off in stereo-4? ", asked(Slip.UNNAMED, Optional.of("stereo-4")));
  }

  private static String asked(Slip slip, Optional<String> earlier) {
    return new Doubt(VOLTS, slip, "13 V is odd.", "Look.", earlier).question();
  }

  @Test
  void outputAboveInput_isSaidBesideTheSlip() {
    String named = loaded(Slip.PEAK_FOR_RMS, Optional.empty(), true, true).text();
    assertTrue(named.contains(" More comes out than goes in. It looks like peak volts"), named);
    String itself = loaded(Slip.OUTPUT_ABOVE_INPUT, Optional.empty(), true, true).text();
    assertTrue(itself.contains(" V. More comes out than goes in. Judged"), itself);
    String honest = loaded(Slip.PEAK_FOR_RMS, Optional.empty(), false, true).text();
    assertFalse(honest.contains("More comes out"), honest);
  }

  @Test
  void whatNoSlipExplains_mayBeOfAnEarlierStep_whereThereIsOne() {
    assertTrue(
        loaded(Slip.UNNAMED, Optional.empty(), false, true).text().contains("here or earlier"));
    String first = loaded(Slip.UNNAMED, Optional.empty(), false, false).text();
    assertTrue(first.contains(" No named slip fits. Judged"), first);
  }

  @Test
  void earlierStep_isSaidToBeMeasuredAgain() {
    Doubt reading = earlier(Slip.PEAK_FOR_RMS, 14.9);
    assertTrue(
        reading
            .text()
            .contains(
                " It fits if stereo-4 has a slip in its output volts: peak volts instead of rms."
                    + " There, 14.9 V would fit. Judged"),
        reading.text());
    assertEquals(Optional.of("stereo-4"), reading.earlierStep());
    for (Slip load : List.of(Slip.LOAD_DOUBLE, Slip.LOAD_HALF)) {
      String text = earlier(load, Double.NaN).text();
      assertTrue(text.contains(" It fits if stereo-4 had a load wired at"), text);
      assertFalse(text.contains("would fit"), text);
    }
    String unnamed = earlier(Slip.UNNAMED, Double.NaN).text();
    assertTrue(
        unnamed.contains(
            "It fits if something is off in the output volts of stereo-4; no named slip explains"),
        unnamed);
  }

  private static Doubt earlier(Slip slip, double meant) {
    EarlierSlips.Found found = new EarlierSlips.Found(Amplifiers.STEREO_4, VOLTS, slip, meant, 3);
    return loaded(slip, Optional.of(found), false, true);
  }

  private static Doubt loaded(
      Slip slip, Optional<EarlierSlips.Found> earlier, boolean above, boolean follows) {
    Hypotheses.Finding finding = new Hypotheses.Finding(Set.of(VOLTS), slip, Double.NaN, 9);
    LoadedSearch.Found found = new LoadedSearch.Found(finding, earlier, above, follows);
    return DoubtWords.loaded(
        VOLTS, 19.8, BAND, found, DoubtWords.Witness.FORECAST, Amplifiers.STEREO_2);
  }

  /** What to look at is told for every slip, the two wrong loads alone share theirs. */
  @Test
  void everySlip_saysWhatToLookAt() {
    Map<String, Slip> told = new HashMap<>();
    for (Slip slip : Slip.values()) {
      String lookAt = volts(5, BAND, slip, Double.NaN).lookAt();
      assertTrue(lookAt.endsWith("."), slip + ": " + lookAt);
      Slip other = told.put(lookAt, slip);
      if (slip == Slip.LOAD_HALF) {
        assertEquals(Slip.LOAD_DOUBLE, other);
        assertTrue(lookAt.contains("the step asks for 4 Ω."), lookAt);
      } else {
        assertNull(other, lookAt);
      }
    }
  }

  private static void assertOff(String words, double entered) {
    String text = volts(entered, BAND, Slip.UNNAMED, Double.NaN).text();
    assertTrue(text.startsWith(words), text);
  }

  private static Doubt volts(double entered, Band band, Slip slip, double meant) {
    Hypotheses.Finding finding = new Hypotheses.Finding(Set.of(VOLTS), slip, meant, 9);
    return DoubtWords.of(
        VOLTS, entered, band, finding, DoubtWords.Witness.FORECAST, Amplifiers.STEREO_4);
  }
}
