package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.StepState;
import org.junit.jupiter.api.Test;

/** The distortion read against the point that was said, at a limit of 1 %. */
class PointOfReadingTest {
  private final Floor floor = new Floor();

  private PointOfReadingTest() {
    floor.at("stereo-4").hear(new Intent.Begin());
    enter(ReadingId.OUTPUT_VOLTS, "13.4 V");
  }

  private void enter(ReadingId id, String text) {
    floor.hear(new Intent.Enter("stereo-4", id, text));
  }

  private void say(Criterion point) {
    floor.hear(new Intent.SetCriterion("stereo-4", point));
  }

  private StepState step() {
    return floor.step("stereo-4");
  }

  private List<Doubt> doubts() {
    return step().latest(ReadingId.THD_PERCENT).orElseThrow().doubts();
  }

  @Test
  void thdMoreThanAThirdAboveTheLimit_isDoubted() {
    enter(ReadingId.THD_PERCENT, "1.33");
    assertEquals(List.of(), doubts());
    enter(ReadingId.THD_PERCENT, "1.34");
    assertEquals(Slip.THD_OFF_LIMIT, doubts().get(0).slip());
    assertEquals(
        "1.34 % THD is above the limit of 1 %: turn the tone down and read again, or say that this"
            + " is read above the limit.",
        doubts().get(0).text());
  }

  @Test
  void lowThd_isDoubtedWhereTheLimitWasSaid_andNowhereElse() {
    enter(ReadingId.THD_PERCENT, "0.2");
    assertEquals(List.of(), doubts());
    enter(ReadingId.THD_PERCENT, "1");
    say(Criterion.THD_LIMIT);
    enter(ReadingId.THD_PERCENT, "0.67");
    assertEquals(List.of(), doubts());
    enter(ReadingId.THD_PERCENT, "0.66");
    assertTrue(doubts().get(0).text().startsWith("0.66 % THD is below the limit of 1 %: raise"));
  }

  @Test
  void onsetOfClipping_isSeenAndNotRead_soALowThdFitsIt() {
    say(Criterion.CLIPPING_ONSET);
    enter(ReadingId.THD_PERCENT, "0.2");
    assertEquals(List.of(), doubts());
    assertEquals(Criterion.BELOW_LIMIT, step().criterion(1));
    enter(ReadingId.THD_PERCENT, "5.3");
    assertEquals(1, doubts().size());
  }

  @Test
  void pointTickedAgainstAThd_isRefusedWithTheSameSentence() {
    enter(ReadingId.THD_PERCENT, "5.3");
    String sentence = doubts().get(0).text();
    for (Criterion point :
        List.of(Criterion.THD_LIMIT, Criterion.CLIPPING_ONSET, Criterion.BELOW_LIMIT)) {
      say(point);
      assertEquals(sentence, floor.said());
      assertEquals(Optional.empty(), step().said());
      assertEquals(List.of(ReadingId.THD_PERCENT), step().openDoubts());
    }
    say(Criterion.ABOVE_LIMIT);
    assertEquals(Optional.of(Criterion.ABOVE_LIMIT), step().said());
    assertEquals(List.of(), step().openDoubts());
    assertEquals(1, doubts().size(), "what was doubted stays on the record");
    assertEquals(
        Optional.of(Criterion.ABOVE_LIMIT),
        step().latest(ReadingId.THD_PERCENT).orElseThrow().point());
  }

  @Test
  void pairsNearTheLimit_sayThePoint_soASingleThdIsNotDoubted() {
    floor.hear(new Intent.AddPair("stereo-4", "13.2", "0.8"));
    enter(ReadingId.THD_PERCENT, "5.3");
    assertEquals(List.of(), doubts());
  }

  @Test
  void standingBy_keepsThePointReadAboveTheLimit() {
    enter(ReadingId.THD_PERCENT, "5.3");
    floor.hear(new Intent.StandBy("stereo-4", ReadingId.THD_PERCENT, "the meter shows it"));
    assertEquals(List.of(), step().openDoubts());
    assertEquals(Criterion.ABOVE_LIMIT, step().criterion(1));
  }

  @Test
  void pointOfAStepThatHasNone_isRefused() {
    floor.hear(new Intent.SetCriterion("bridged-4", Criterion.THD_LIMIT));
    assertEquals("The point is not kept: start the step first.", floor.said());
    floor.hear(new Intent.SetCriterion("idle", Criterion.THD_LIMIT));
    assertFalse(floor.said().isEmpty());
    assertEquals(Optional.empty(), floor.step("idle").said());
  }

  @Test
  void clippedRecorder_bringsNoThd_andItsVoltsAreDoubted() {
    Capture clean = CapturesTest.capture(5.3, false, OptionalDouble.empty());
    floor.hear(new Intent.TakeCapture("stereo-4", CapturesTest.clipped(clean), 0));
    assertTrue(step().latest(ReadingId.THD_PERCENT).isEmpty());
    assertEquals(Criterion.NOT_KNOWN, step().criterion(1));
    List<Doubt> volts = step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().doubts();
    assertEquals(List.of(Slip.RECORDER_CLIPPED), volts.stream().map(Doubt::slip).toList());
    assertTrue(
        floor.said().endsWith("The input of the recorder clipped, so its THD is not taken."));
    floor.hear(new Intent.TakeCapture("stereo-4", clean, 0));
    assertEquals(List.of(ReadingId.THD_PERCENT), step().openDoubts());
  }

  @Test
  void doubtedPoint_feedsNoLaterForecast() {
    enter(ReadingId.THD_PERCENT, "5.3");
    assertTrue(Targets.evidenceBefore(floor.model.state(), "bridged-4").observations().isEmpty());
    enter(ReadingId.THD_PERCENT, "1.1");
    assertEquals(1, Targets.evidenceBefore(floor.model.state(), "bridged-4").observations().size());
  }

  @Test
  void readingsTypedTogether_areHeldAgainstEachOther() {
    floor.hear(
        new Intent.EnterAll(
            "stereo-4", Map.of(ReadingId.OUTPUT_VOLTS, "13.5 V", ReadingId.THD_PERCENT, "9 %")));
    assertEquals(List.of(ReadingId.THD_PERCENT), step().openDoubts());
  }
}
