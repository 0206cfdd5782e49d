package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Verdict;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;

/** Every intent where it means nothing: it is refused in words and leaves no fact. */
class IntentsRefusedTest {
  private static final String NOT_ON_DISK =
      "The last entry is not on disk yet. The disk is full. The walk waits until it is.";

  private final Floor floor = new Floor();

  private void refused(Intent intent, String sentence) {
    int before = floor.facts.size();
    WalkState state = floor.model.state();
    floor.hear(intent);
    assertEquals(sentence, floor.said(), intent.toString());
    assertEquals(before, floor.facts.size(), intent.toString());
    assertEquals(state, floor.model.state(), intent.toString());
  }

  private void kept(Intent intent, Fact... facts) {
    int before = floor.facts.size();
    floor.hear(intent);
    assertEquals("", floor.said(), intent.toString());
    assertEquals(
        List.of(facts), floor.facts.subList(before, before + facts.length), intent.toString());
  }

  @Test
  void resumingAWalkThatRuns_andExplainingNoStop_areRefused() {
    refused(new Intent.Resume(), "Nothing is paused or stopped.");
    refused(new Intent.ExplainStop("smoke"), "Nothing is paused or stopped.");
    assertTrue(floor.hear(new Intent.Retry()).effects.size() >= 1);
    int effects = floor.effects.size();
    floor.hear(new Intent.Retry());
    assertEquals(effects, floor.effects.size(), "nothing waits, so nothing is written again");
  }

  @Test
  void pausedWalk_takesNotesAndGoingOnAlone() {
    floor.hear(new Intent.Begin());
    kept(new Intent.Pause(), new Fact.Warmed("warm-up", 0), new Fact.Paused());
    for (Intent intent :
        List.of(new Intent.Begin(), new Intent.Finish(), new Intent.Skip("late"))) {
      refused(intent, "The walk is paused: go on first.");
    }
    kept(new Intent.Note(" the lead is warm "), new Fact.Noted("warm-up", "the lead is warm"));
    kept(new Intent.Resume(), new Fact.Resumed());
    assertEquals(Hold.RUNNING, floor.model.state().hold());
    assertEquals(Status.RUNNING, floor.step("warm-up").status());
  }

  @Test
  void stoppedWalk_wantsItsReasonFirst_thenIsPaused() {
    floor.at("stereo-4").hear(new Intent.Begin());
    kept(new Intent.Stop(), new Fact.Stopped("stereo-4"));
    int facts = floor.facts.size();
    floor.hear(new Intent.Stop());
    assertEquals(facts, floor.facts.size(), "a stopped walk is not stopped again");
    refused(new Intent.Resume(), "The walk was stopped: say why first.");
    refused(new Intent.ExplainStop("  "), "Say in a few words why it was stopped.");
    kept(new Intent.ExplainStop(" a smell "), new Fact.StopExplained("a smell"));
    assertEquals(Hold.PAUSED, floor.model.state().hold());
    assertEquals(Optional.of("a smell"), floor.model.state().stops().get(0).reason());
    assertEquals(Status.AHEAD, floor.step("stereo-4").status());
  }

  @Test
  void whileTheDiskTakesNothing_onlyTheStopKeyIsTaken() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.disk = false;
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4"));
    refused(new Intent.Finish(), NOT_ON_DISK);
    refused(new Intent.Note("a note"), NOT_ON_DISK);
    floor.hear(new Intent.Stop());
    assertTrue(floor.model.isStopped());
    assertEquals(Hold.RUNNING, floor.model.state().hold());
    assertEquals(2, floor.model.waiting().size());
    int effects = floor.effects.size();
    floor.hear(new Intent.Retry());
    assertEquals(effects + 1, floor.effects.size());
    assertEquals(Optional.of("The disk is full."), floor.model.keepProblem());
    floor.disk = true;
    floor.hear(new Intent.Retry());
    assertEquals(Optional.empty(), floor.model.keepProblem());
    assertFalse(floor.model.isWriting());
    assertFalse(floor.model.stopping());
    assertEquals(Hold.STOPPED, floor.model.state().hold());
    assertEquals("13.4", floor.last(Fact.Entered.class).text());
  }

  @Test
  void liftingNoHalt_andAnsweringNoDoubt_areRefused() {
    floor.at("stereo-4", Verdict.HEED);
    refused(new Intent.LiftHalt("because I say so"), "There is no halt to lift.");
    refused(
        new Intent.StandBy("stereo-4", ReadingId.OUTPUT_VOLTS, "it is so"),
        "There is no open doubt on that reading.");
    refused(new Intent.Finish(), "stereo-4 is not running.");
    floor.verdict = Verdict.CLEAR;
    floor.at("bridged-4").hear(new Intent.Begin());
    refused(new Intent.LiftHalt("because I say so"), "There is no halt to lift.");
    refused(new Intent.Arm("4"), "bridged-4 is not waiting to be armed.");
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.hear(new Intent.Enter("bridged-4", ReadingId.OUTPUT_VOLTS, "1"));
    refused(
        new Intent.StandBy("bridged-4", ReadingId.OUTPUT_VOLTS, "ok"),
        "Say in words why you stand by the reading.");
  }

  @Test
  void warmUp_endsEarlyOnlyWhereOneRuns_andInWords() {
    refused(new Intent.EndEarly("warm enough"), "No warm-up is running.");
    refused(new Intent.Finish(), "warm-up is not running.");
    floor.hear(new Intent.Begin());
    floor.letPass(5);
    refused(new Intent.EndEarly("1 2"), "Give a reason in words to end a warm-up early.");
    refused(new Intent.Finish(), "The warm-up time is not up. Wait, or end early with a reason.");
    kept(
        new Intent.EndEarly(" warm enough "),
        new Fact.Warmed("warm-up", 5),
        new Fact.EndedEarly("warm-up", "warm enough"),
        new Fact.Done("warm-up"));
    floor.hear(new Intent.Begin());
    refused(new Intent.EndEarly("idle is no warm-up"), "No warm-up is running.");
  }

  @Test
  void finishedWarmUp_keepsItsClock_andARequiredReadingIsAskedFor() {
    floor.hear(new Intent.Begin()).letPass(600);
    kept(new Intent.Finish(), new Fact.Warmed("warm-up", 600), new Fact.Done("warm-up"));
    floor.hear(new Intent.Begin());
    refused(new Intent.Finish(), "Enter the supply amps first, or skip the step with a reason.");
    floor.hear(new Intent.Enter("idle", ReadingId.SUPPLY_AMPS, "1.9"));
    kept(new Intent.Finish(), new Fact.Done("idle"));
    floor.hear(new Intent.Begin());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_WATTS, "45"));
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.THD_LIMIT));
    kept(new Intent.Finish(), new Fact.Done("stereo-4"));
  }

  @Test
  void step_isSkippedOnlyInWords() {
    refused(new Intent.Skip("no"), "Give a reason in words to skip this step.");
    refused(new Intent.Skip(" "), "Give a reason in words to skip this step.");
    kept(new Intent.Skip(" not today "), new Fact.Skipped("warm-up", "not today"));
    kept(new Intent.Skip("hot"), new Fact.Skipped("idle", "hot"));
  }

  @Test
  void armingAClearStep_startsIt() {
    floor.at("stereo-4");
    kept(new Intent.Arm(""), new Fact.Begun("stereo-4"));
    assertFalse(floor.holds(Fact.Armed.class));
  }

  @Test
  void armingAClearStep_withAnotherLoad_isRefused() {
    floor.at("stereo-4");
    refused(
        new Intent.Arm("2"),
        "The step needs stereo 4 Ω, but you typed 2 Ω. Check the wiring before you switch on.");
    refused(new Intent.Arm("two"), "«two» is not a number; type ohms such as 4, 1/2 or 0R5.");
    kept(new Intent.Arm("4"), new Fact.Armed("stereo-4", "4", 4), new Fact.Begun("stereo-4"));
  }

  @Test
  void pair_isRefusedBelowZero_andInWrongUnits() {
    floor.at("stereo-4").hear(new Intent.Begin());
    String zero = "Both the volts and the THD of a pair must be above zero.";
    refused(new Intent.AddPair("stereo-4", "0", "0.8 %"), zero);
    refused(new Intent.AddPair("stereo-4", "13", "0 %"), zero);
    floor.hear(new Intent.AddPair("stereo-4", "13 A", "0.8 %"));
    String amperes = floor.said();
    floor.hear(new Intent.AddPair("stereo-4", "13 V", "much"));
    assertFalse(amperes.isEmpty() || floor.said().isEmpty());
    assertFalse(amperes.equals(floor.said()), amperes);
    assertFalse(floor.holds(Fact.PairAdded.class));
    floor.hear(new Intent.AddPair("stereo-4", "13.2 V", "0.8"));
    Fact.PairAdded pair = floor.last(Fact.PairAdded.class);
    assertEquals(13.2, pair.pair().volts());
    assertEquals(0.8, pair.pair().thdPercent());
  }

  @Test
  void emptyNote_isNoNote_andAPhotoNeedsAPathAndWords() {
    int facts = floor.facts.size();
    floor.hear(new Intent.Note("  "));
    assertEquals(facts, floor.facts.size());
    refused(
        new Intent.Attach(" ", "the bench"), "Type the path of a PNG or JPEG, then what it shows.");
    refused(new Intent.Attach("a.png", "1"), "After the path, say in words what the photo shows.");
    floor.hear(new Intent.Attach("a.png", "the bench"));
    assertTrue(floor.effects.contains(new Effect.KeepPhoto("walk", "a.png", "the bench")));
    floor.hear(new Event.PhotoRefused("There is no file at that path."));
    assertEquals("There is no file at that path.", floor.said());
  }

  @Test
  void finishedWalk_takesNothingButNotes() {
    floor.at("recheck").hear(new Intent.Skip("not today"));
    assertTrue(floor.model.state().isFinished());
    refused(new Intent.Begin(), "Every step is done.");
    refused(new Intent.Finish(), "Every step is done.");
    refused(new Intent.WarmAgain(), "Every step is done.");
    assertEquals("recheck", floor.model.state().currentId());
    kept(new Intent.Note("all done"), new Fact.Noted("recheck", "all done"));
  }

  @Test
  void warmingAgain_takesTheLastWarmUpBeforeTheStep() {
    floor.hear(new Intent.Begin()).letPass(600);
    floor.hear(new Intent.Finish());
    floor.at("stereo-4");
    kept(new Intent.WarmAgain(), new Fact.WarmAgain("warm-up"));
    assertEquals("warm-up", floor.model.state().currentId());
    List<String> plan = floor.model.state().plan().stream().map(PlannedStep::id).toList();
    assertTrue(plan.contains("warm-up") && plan.contains("recheck"), plan.toString());
  }

  @Test
  void readings_areRefusedInWords_wherever() {
    floor.at("stereo-4");
    refused(
        new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13"),
        "output volts: start the step first");
    refused(
        new Intent.EnterAll("nowhere", Map.of(ReadingId.OUTPUT_VOLTS, "13")),
        "nowhere takes no readings.");
    floor.hear(new Intent.Enter("stereo-4", ReadingId.SINK_CELSIUS, "-3"));
    assertEquals(-3, floor.last(Fact.Entered.class).value(), "a heatsink may be below zero");
    refused(
        new Intent.Enter("stereo-4", ReadingId.SINK_CELSIUS, "-273.2"),
        "heatsink: nothing is colder than -273.15 °C; check the thermometer's leads and unit");
    floor.hear(new Intent.Begin());
    refused(
        new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "-13"),
        "output volts: a reading cannot be below zero; check the meter's leads");
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "0"));
    assertEquals(0, floor.last(Fact.Entered.class).value());
  }
}
