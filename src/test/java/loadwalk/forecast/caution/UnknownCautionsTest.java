package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_1;
import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.Target;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/** What nobody entered is said. */
class UnknownCautionsTest {
  private final BriefedBench bench = new BriefedBench().amps(2, 3);

  private Caution told(String code, Target target) {
    return bench.find(code, target).orElseThrow(() -> new AssertionError(code + " is missing"));
  }

  @Test
  void supply_notEntered_isSaid_withTheCurrentWhereItIsTold() {
    bench.supplies = List.of();
    assertEquals(
        "The step draws about 2 A, at worst 3 A. No supply is entered: check its rating yourself.",
        told("supply-amps", STEREO_4).text());
    assertEquals(Verdict.HEED, told("supply-amps", STEREO_4).gravity());
    bench.readings.clear();
    assertEquals(
        "No supply is entered: check its rating yourself.", told("supply-amps", STEREO_4).text());
    assertTrue(bench.find("supply-amps", IDLE).isEmpty());
  }

  @Test
  void fuses_ofWhichNoneIsEntered_areTold_unlessNothingIsDriven() {
    bench.ownFuses = List.of();
    bench.fuse = OptionalDouble.empty();
    Caution none = told("bench-fuse", BRIDGED_1);
    assertTrue(none.text().contains("neither the amplifier's nor one at the source"));
    assertEquals(Verdict.HEED, none.gravity());
    assertTrue(bench.find("bench-fuse", IDLE).isEmpty());
    assertTrue(bench.find("not-entered", STEREO_4).isEmpty(), "said by that caution");
  }

  @Test
  void partsNotEntered_areNamedInOneSentence_andHoldNothing() {
    bench.ownFuses = List.of();
    bench.leads = List.of();
    bench.loads = List.of();
    Caution missing = told("not-entered", STEREO_4);
    assertEquals(
        "Not entered, so not checked: supply leads, load resistors, the amplifier's own fuses.",
        missing.text());
    assertEquals(Verdict.CLEAR, missing.gravity());
    bench.ownFuses = List.of(60.0);
    bench.fuse = OptionalDouble.empty();
    assertTrue(
        told("not-entered", STEREO_4).text().endsWith("load resistors, a fuse at the source."));
    assertTrue(bench.find("not-entered", IDLE).isEmpty());
  }

  @Test
  void current_thatCannotBeForecast_isSaidAtEveryLoad() {
    bench.readings.clear();
    assertEquals(Verdict.HEED, told("unknown-forecast", STEREO_4).gravity());
    assertTrue(told("unknown-forecast", STEREO_4).number().isEmpty());
  }
}
