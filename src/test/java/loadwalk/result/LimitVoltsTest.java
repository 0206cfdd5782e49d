package loadwalk.result;

import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.says;
import static loadwalk.result.Readings.step;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import org.junit.jupiter.api.Test;

class LimitVoltsTest {
  // THD grows tenfold from 20 V to 21 V on a straight line of its logarithm.
  private static final List<LimitPair> PAIRS =
      List.of(new LimitPair(21, 3), new LimitPair(20, 0.3));

  @Test
  void limit_isInterpolatedInLogThd() {
    StepResult result = step(usual(), Readings.withPairs(below(), PAIRS));
    double expected = 20 + Math.log(1 / 0.3) / Math.log(10);
    assertEquals(expected, result.outputVolts().orElseThrow().value(), 1e-12);
    assertEquals(Criterion.THD_LIMIT, result.criterion());
    assertTrue(says(result.remarks(), "limit-interpolated"));
    assertEquals(expected * expected / 4, result.watts().orElseThrow().value(), 1e-9);
  }

  @Test
  void distortionMeter_movesTheVoltsAlongTheCurve() {
    // dV/dlnTHD = 1 V / ln 10; a half-width of 5 % of the reading, rectangular.
    Quantity volts = step(usual(), Readings.withPairs(below(), PAIRS)).outputVolts().orElseThrow();
    assertEquals(
        0.05 / Math.sqrt(3) / Math.log(10),
        volts.contributions().get("DMM THD at the limit"),
        1e-5);
    assertTrue(volts.contributions().get("stereo-4 limit interpolation") > 0);
    assertTrue(volts.contributions().containsKey("DMM output volts gain"));
  }

  @Test
  void distortionMeterNotNamed_isAssumedAndSaid() {
    StepResult result = step(Bench.unknown(), Readings.withPairs(below(), PAIRS));
    assertTrue(says(result.remarks(), "thd-meter-assumed"));
    // ±10 % of reading, rectangular, along a slope of 1 V / ln 10.
    assertEquals(
        0.1 / Math.sqrt(3) / Math.log(10),
        result.outputVolts().orElseThrow().contributions().get("assumed meter THD at the limit"),
        1e-5);
  }

  @Test
  void interpolation_isSaidWithItsPoints() {
    assertTrue(
        step(usual(), Readings.withPairs(below(), PAIRS))
            .remarks()
            .contains(
                new Remark(
                    "limit-interpolated",
                    "the volts at 1 % THD are interpolated from 2 points near it")));
  }

  /** At another limit the meter's ±(5 % + 0) is the same part of it, and the slope as well. */
  @Test
  void distortionMeter_countsAsAPartOfTheLimit() {
    StepResult result =
        ResultComputation.walk(
                Readings.plain(),
                usual(),
                0.5,
                14.4,
                40,
                Readings.WIRE,
                Readings.EXACTLY_SET,
                List.of(Readings.withPairs(below(), PAIRS)))
            .steps()
            .get(0);
    assertEquals(
        0.05 / Math.sqrt(3) / Math.log(10),
        result.outputVolts().orElseThrow().contributions().get("DMM THD at the limit"),
        1e-5);
  }

  @Test
  void limitAtTheHighestPoint_takesTheSlopeBelowIt() {
    List<LimitPair> upToIt = List.of(new LimitPair(20, 0.1), new LimitPair(21, 1));
    Quantity volts = step(usual(), Readings.withPairs(below(), upToIt)).outputVolts().orElseThrow();
    assertEquals(21, volts.value(), 1e-12);
    assertEquals(
        0.05 / Math.sqrt(3) / Math.log(10),
        volts.contributions().get("DMM THD at the limit"),
        1e-5);
  }

  @Test
  void digitsOfTheVolts_areThoseOfTheMeter() {
    Quantity volts =
        step(Bench.unknown(), Readings.withPairs(below(), PAIRS)).outputVolts().orElseThrow();
    // No meter: 2 of the last digit typed, 0.01 V, rectangular.
    assertEquals(
        0.02 / Math.sqrt(3),
        volts.contributions().get("assumed meter output volts stereo-4 digit"),
        1e-12);
  }

  @Test
  void noBracket_fallsBackToTheReadingAndSaysSo() {
    StepResult result =
        step(
            usual(),
            Readings.withPairs(below(), List.of(new LimitPair(19, 0.1), new LimitPair(20, 0.3))));
    assertEquals(19.5, result.outputVolts().orElseThrow().value(), 1e-12);
    assertEquals(Criterion.BELOW_LIMIT, result.criterion());
    assertTrue(says(result.remarks(), "limit-not-interpolated"));
  }

  @Test
  void otherChannel_isLeftOutOfAnInterpolatedTotal() {
    MeasuredStep both =
        loaded(
            Mode.STEREO,
            4,
            Criterion.BELOW_LIMIT,
            volts(19.5),
            of(ReadingId.OTHER_OUTPUT_VOLTS, 19));
    StepResult result = step(usual(), Readings.withPairs(both, PAIRS));
    assertEquals(Optional.empty(), result.otherWatts());
    assertTrue(says(result.remarks(), "other-channel-left-out"));
    assertTrue(says(result.remarks(), "total-is-twice-one"));
  }

  private static MeasuredStep below() {
    return loaded(Mode.STEREO, 4, Criterion.BELOW_LIMIT, volts(19.5));
  }
}
