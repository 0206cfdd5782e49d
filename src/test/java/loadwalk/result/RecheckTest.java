package loadwalk.result;

import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

class RecheckTest {
  private static final String AGAIN = "bridged-0.5#2";

  @Test
  void limit_countsDigitsButNotGainNorLoad() {
    RecheckAgreement agreement = compare(20, 20.02);
    // u(P) of a digit half-width of 0.03 V into 0.5 ohm; the second order is far smaller.
    double first = 2 * 20 / 0.5 * 0.03 / Math.sqrt(3);
    double again = 2 * 20.02 / 0.5 * 0.03 / Math.sqrt(3);
    // Two rectangular parts, nearly equal, make a triangle: k = √6·(1 − √0.0455) = 1.927.
    // The factor is told by one number of the shape, to 1.3 %.
    double limit = 1.927 * Math.hypot(first, again);
    assertEquals(limit, agreement.limitWatts(), 0.013 * limit);
    assertEquals(RecheckAgreement.Outcome.AGREES, agreement.outcome());
    double apart = (20.02 * 20.02 - 400) / 0.5;
    assertEquals(apart, agreement.difference().orElseThrow().value(), 1e-9);
  }

  @Test
  void difference_ofEqualRuns_holdsNoGainAndNoLoad() {
    var parts = compare(20, 20).difference().orElseThrow().contributions();
    assertEquals(0, parts.get("DMM output volts gain"), 1e-12);
    assertEquals(0, parts.get("load 0.5 ohm"), 1e-12);
  }

  @Test
  void runsThatAgree_publishTheirMean() {
    PublishedPower published = publish(20, 20.02);
    assertEquals(List.of("bridged-0.5", AGAIN), published.runs());
    assertEquals((400 + 20.02 * 20.02) / 0.5 / 2, published.totalWatts().value(), 1e-9);
    assertEquals(Optional.empty(), published.spread());
    assertEquals("the mean of 2 runs that agree", published.why());
  }

  @Test
  void runsThatDisagree_publishTheLowerAndTheirSpread() {
    PublishedPower published = publish(20, 19.5);
    assertEquals(List.of(AGAIN), published.runs());
    assertEquals(760.5, published.spread().orElseThrow().low().value(), 1e-9);
    assertEquals(800, published.spread().orElseThrow().high().value(), 1e-9);
    assertEquals("bridged-0.5", publish(20, 20.5).fromStepId());
    assertEquals(RecheckAgreement.Outcome.DISAGREES, compare(20, 19.5).outcome());
  }

  @Test
  void differentCriteria_areNeverMixed() {
    // Onset of clipping at 20 V; 1 % THD of a hard clipper lies 2.3 % higher in volts.
    MeasuredStep onset = loaded(Mode.BRIDGED, 0.5, Criterion.CLIPPING_ONSET, volts(20));
    MeasuredStep limit = again(bridged(0.5, volts(20 * 1.023)));
    WalkResult result = walk(usual(), onset, limit);
    RecheckAgreement agreement = result.rechecks().get(0);
    assertEquals(RecheckAgreement.Outcome.NOT_COMPARABLE, agreement.outcome());
    assertTrue(agreement.text().contains("at the onset of clipping"), agreement.text());
    PublishedPower published = result.published().get("bridged-0.5");
    assertEquals(AGAIN, published.fromStepId());
    assertEquals(Criterion.THD_LIMIT, published.criterion());
    assertEquals(1.0465, published.totalWatts().value() / 800, 1e-4);
  }

  @Test
  void runsBelowTheLimit_areNotCompared() {
    MeasuredStep below = loaded(Mode.BRIDGED, 0.5, Criterion.BELOW_LIMIT, volts(20));
    WalkResult result = walk(usual(), below, again(below));
    assertEquals(RecheckAgreement.Outcome.NOT_COMPARABLE, result.rechecks().get(0).outcome());
    assertEquals("bridged-0.5", result.published().get("bridged-0.5").fromStepId());
  }

  @Test
  void recheckWithoutAReading_isNotComparable() {
    WalkResult result =
        walk(usual(), bridged(0.5, volts(20)), again(bridged(0.5, of(ReadingId.SUPPLY_VOLTS, 14))));
    RecheckAgreement agreement = result.rechecks().get(0);
    assertEquals(RecheckAgreement.Outcome.NOT_COMPARABLE, agreement.outcome());
    assertTrue(agreement.text().contains("no output reading"), agreement.text());
  }

  @Test
  void outcome_isToldInFull() {
    assertEquals(
        "bridged-0.5#2 and bridged-0.5 agree: 1.60 W apart, up to 3.74 W is within the uncertainty",
        compare(20, 20.02).text());
    assertEquals(
        "bridged-0.5#2 and bridged-0.5 disagree: 39.5 W apart, up to 3.69 W is within the"
            + " uncertainty",
        compare(20, 19.5).text());
    assertEquals(
        "bridged-0.5#2 and bridged-0.5 are not compared: both were read below the limit, which"
            + " is no stated point",
        walk(
                usual(),
                loaded(Mode.BRIDGED, 0.5, Criterion.BELOW_LIMIT, volts(20)),
                again(loaded(Mode.BRIDGED, 0.5, Criterion.BELOW_LIMIT, volts(20))))
            .rechecks()
            .get(0)
            .text());
  }

  @Test
  void notComparable_hasNoDifferenceAndNoLimit() {
    RecheckAgreement other =
        walk(usual(), bridged(0.5, volts(20)), again(bridged(1, volts(20)))).rechecks().get(0);
    assertEquals(
        "bridged-0.5#2 and bridged-0.5 are not compared: their loads differ", other.text());
    assertEquals(0, other.limitWatts());
    assertEquals(Optional.empty(), other.difference());
    MeasuredStep stereo = again(Readings.stereo(0.5, volts(20)));
    assertEquals(
        RecheckAgreement.Outcome.NOT_COMPARABLE,
        walk(usual(), bridged(0.5, volts(20)), stereo).rechecks().get(0).outcome());
  }

  @Test
  void firstRunWithoutAReading_isNotComparable() {
    RecheckAgreement agreement =
        walk(usual(), bridged(0.5, of(ReadingId.SUPPLY_VOLTS, 14)), again(bridged(0.5, volts(20))))
            .rechecks()
            .get(0);
    assertEquals(
        "bridged-0.5#2 and bridged-0.5 are not compared: one has no output reading",
        agreement.text());
  }

  @Test
  void loadMeasuredTwice_countsItsDigits() {
    MeasuredStep first = bridged(0.5, volts(20), new TakenReading(ReadingId.LOAD_OHMS, 0.5, 0.01));
    WalkResult measured = walk(usual(), first, again(first));
    assertTrue(
        measured.rechecks().get(0).limitWatts() > 5 * compare(20, 20).limitWatts(),
        "each load measurement has its own digits");
  }

  @Test
  void published_keepsTheOrderOfTheSteps() {
    WalkResult result =
        walk(usual(), bridged(4, volts(30)), bridged(2, volts(28)), bridged(1, volts(25)));
    assertEquals(
        List.of("bridged-4", "bridged-2", "bridged-1"), List.copyOf(result.published().keySet()));
  }

  private static MeasuredStep again(MeasuredStep step) {
    return Readings.rechecking(named(step, AGAIN), "bridged-0.5");
  }

  private static WalkResult runs(double first, double second) {
    return walk(usual(), bridged(0.5, volts(first)), again(bridged(0.5, volts(second))));
  }

  private static RecheckAgreement compare(double first, double second) {
    return runs(first, second).rechecks().get(0);
  }

  private static PublishedPower publish(double first, double second) {
    return runs(first, second).published().get("bridged-0.5");
  }
}
