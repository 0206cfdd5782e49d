package loadwalk.walk.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.practice.PracticeRig;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.sequence.SequenceReader;
import loadwalk.walk.Floor;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** What the practice bench's meters show for the step at hand. */
class PracticeAnswersTest {
  private static final PracticeAnswers BENCH =
      PracticeAnswers.in(opened(OptionalLong.of(1)).opened()).orElseThrow();

  private static WalkState opened(OptionalLong seed) {
    PracticeRig rig = PracticeRig.ofSeed(1);
    byte[] bytes = Floor.SEQUENCE.getBytes(StandardCharsets.UTF_8);
    Fact.Opened opened =
        new Fact.Opened(
            "walk",
            "test",
            SequenceReader.read(bytes, "short").found().orElseThrow(),
            Floor.SEQUENCE,
            rig.amplifier().printed(),
            rig.bench().described(),
            seed);
    return WalkState.begin(opened, 0);
  }

  private static WalkState at(String step) {
    WalkState state = opened(OptionalLong.of(1));
    while (!state.currentId().equals(step)) {
      state = new Fact.Skipped(state.currentId(), "not for this test").applyTo(state, 0);
    }
    return new Fact.Begun(step).applyTo(state, 0);
  }

  private static double value(Map<ReadingId, String> answers, ReadingId id) {
    Typed typed = EntryParser.parse(answers.get(id), id.unit());
    return ((Typed.Number) typed).value();
  }

  @Test
  void realBench_hasNoPracticeMeters() {
    assertEquals(Optional.empty(), PracticeAnswers.in(opened(OptionalLong.empty()).opened()));
  }

  @Test
  void everyStep_showsWhatItAsksFor_andNothingElse() {
    for (String step : List.of("warm-up", "idle", "stereo-4", "bridged-2", "open-load")) {
      WalkState state = at(step);
      Map<ReadingId, String> answers = BENCH.of(state, 0);
      List<ReadingId> asks =
          state.planned(step).map(p -> p.readings(state.context(p))).orElseThrow();
      assertFalse(answers.isEmpty(), step);
      assertTrue(asks.containsAll(answers.keySet()), step + " shows " + answers);
      assertEquals(
          asks.stream().filter(answers::containsKey).toList(), List.copyOf(answers.keySet()));
    }
  }

  @Test
  void sameMoment_showsTheSame_andTheHeatsinkFollowsTheClock() {
    WalkState state = at("warm-up");
    assertEquals(BENCH.of(state, 300), BENCH.of(state, 300));
    double cold = value(BENCH.of(state, 0), ReadingId.SINK_CELSIUS);
    double warm = value(BENCH.of(state, 900), ReadingId.SINK_CELSIUS);
    assertTrue(cold > 15 && cold < 27 && warm > cold + 10, cold + " to " + warm);
  }

  @Test
  void warmthOfAnEarlierWarmUp_isStillThereInTheNextStep() {
    WalkState warmed = opened(OptionalLong.of(1));
    warmed = new Fact.Begun("warm-up").applyTo(warmed, 0);
    warmed = new Fact.Warmed("warm-up", 900).applyTo(warmed, 0);
    warmed = new Fact.Done("warm-up").applyTo(warmed, 0);
    WalkState running = new Fact.Begun("idle").applyTo(warmed, 0);
    double warm = value(BENCH.of(running, 0), ReadingId.SINK_CELSIUS);
    double cold = value(BENCH.of(at("idle"), 0), ReadingId.SINK_CELSIUS);
    assertTrue(warm > cold + 10, cold + " to " + warm);
  }

  @Test
  void missing_leavesOutWhatIsEntered() {
    WalkState state = at("idle");
    Map<ReadingId, String> answers = BENCH.of(state, 0);
    Fact entered =
        new Fact.Entered(
            "idle",
            ReadingId.SUPPLY_AMPS,
            "1.6 A",
            1.6,
            0.1,
            List.of(),
            0,
            Optional.empty(),
            OptionalDouble.empty());
    StepState step = entered.applyTo(state, 0).step("idle");
    Map<ReadingId, String> left = PracticeAnswers.missing(answers, step);
    assertNotEquals(answers, left);
    assertFalse(left.containsKey(ReadingId.SUPPLY_AMPS));
    assertEquals(answers.size() - 1, left.size());
  }

  @Test
  void statesTakenForTheSame_showTheSame_andAReadingMakesNoOther() {
    WalkState state = opened(OptionalLong.of(1));
    int same = 0;
    for (Fact fact : shortWalk()) {
      WalkState next = fact.applyTo(state, 0);
      boolean taken = PracticeAnswers.areTheSame(state, next);
      assertTrue(!taken || BENCH.of(state, 60).equals(BENCH.of(next, 60)), fact.toString());
      assertEquals(fact instanceof Fact.Entered, taken, fact.toString());
      same += taken ? 1 : 0;
      state = next;
    }
    assertEquals(2, same);
    assertFalse(PracticeAnswers.areTheSame(state, opened(OptionalLong.of(2))));
  }

  /** A tone is turned up into a load, or past one taken off, and nowhere else. */
  @Test
  void tone_isOfStepsWithAnOutput() {
    for (String step : List.of("stereo-4", "bridged-2", "open-load")) {
      assertTrue(BENCH.tone(at(step), 0).isPresent(), step);
    }
    for (String step : List.of("warm-up", "idle", "recheck")) {
      assertTrue(BENCH.tone(at(step), 0).isEmpty(), step);
    }
  }

  /** Idle draws what it draws, whatever number stands for a load that is not there. */
  @Test
  void idle_showsACurrent() {
    double amps = value(BENCH.of(at("idle"), 0), ReadingId.SUPPLY_AMPS);
    assertTrue(amps > 0.1 && amps < 10, amps + " A");
  }

  /** A loaded step warms the heatsink that the next one reads; a skipped one does not. */
  @Test
  void stepsDone_warmTheHeatsink() {
    WalkState done = new Fact.Done("stereo-4").applyTo(at("stereo-4"), 0);
    double warm = value(BENCH.of(begun(done), 0), ReadingId.SINK_CELSIUS);
    double cold = value(BENCH.of(at("bridged-4"), 0), ReadingId.SINK_CELSIUS);
    assertTrue(warm > cold, cold + " to " + warm);
    WalkState idle = new Fact.Done("idle").applyTo(at("idle"), 0);
    double after = value(BENCH.of(begun(idle), 0), ReadingId.SINK_CELSIUS);
    assertEquals(value(BENCH.of(at("stereo-4"), 0), ReadingId.SINK_CELSIUS), after);
  }

  private static WalkState begun(WalkState state) {
    return new Fact.Begun(state.currentId()).applyTo(state, 0);
  }

  private static List<Fact> shortWalk() {
    return List.of(
        new Fact.Begun("warm-up"),
        entered("warm-up", ReadingId.SINK_CELSIUS, 40),
        new Fact.Warmed("warm-up", 900),
        new Fact.Done("warm-up"),
        new Fact.Skipped("idle", "not for this test"),
        new Fact.Begun("stereo-4"),
        entered("stereo-4", ReadingId.OUTPUT_VOLTS, 17),
        new Fact.Done("stereo-4"));
  }

  private static Fact entered(String step, ReadingId id, double value) {
    return new Fact.Entered(
        step,
        id,
        String.valueOf(value),
        value,
        0.1,
        List.of(),
        0,
        Optional.empty(),
        OptionalDouble.empty());
  }
}
