package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Observation;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** What the forecast is shown of a walk, and how volts and watts stand for each other. */
class TargetsTest {
  private final Floor floor = new Floor();

  private Floor measured(String volts) {
    floor.at("stereo-4").hear(new Intent.Begin());
    return floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, volts));
  }

  private Map<ReadingId, Double> evidence() {
    return Targets.evidenceBefore(floor.model.state(), "bridged-4").observations().stream()
        .filter(o -> o.target().stepId().equals("stereo-4"))
        .map(Observation::readings)
        .findFirst()
        .orElse(Map.of());
  }

  @Test
  void evidence_holdsReadingsAsTyped() {
    measured("13,4 V");
    assertEquals(Map.of(ReadingId.OUTPUT_VOLTS, 13.4), evidence());
  }

  @Test
  void evidence_leavesDoubtedReadingsOut_untilTheyAreStoodBy() {
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    measured("134");
    assertEquals(Map.of(), evidence());
    floor.hear(new Intent.StandBy("stereo-4", ReadingId.OUTPUT_VOLTS, "it really is"));
    assertEquals(Map.of(ReadingId.OUTPUT_VOLTS, 134.0), evidence());
  }

  @Test
  void evidence_leavesOutAStep_thatAnOpenDoubtPointsTo_exceptForTheStepDoubted() {
    measured("134");
    floor.hear(new Intent.Finish()).at("bridged-4").hear(new Intent.Arm("4"));
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.blamed = Optional.of("stereo-4");
    floor.hear(new Intent.Enter("bridged-4", ReadingId.OUTPUT_VOLTS, "26.8"));
    assertEquals(Map.of(ReadingId.OUTPUT_VOLTS, 134.0), evidence());
    assertEquals(List.of(), observationsBefore("bridged-2"));
    floor.hear(new Intent.StandBy("bridged-4", ReadingId.OUTPUT_VOLTS, "it really is"));
    assertEquals(List.of("stereo-4", "bridged-4"), observationsBefore("bridged-2"));
  }

  private List<String> observationsBefore(String step) {
    return Targets.evidenceBefore(floor.model.state(), step).observations().stream()
        .map(o -> o.target().stepId())
        .toList();
  }

  @Test
  void evidence_atClippingOnset_isScaledToOnePercent() {
    measured("10").hear(new Intent.Enter("stereo-4", ReadingId.SUPPLY_AMPS, "17"));
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.CLIPPING_ONSET));
    // A sine clipped hard to 1 % THD has 0.723708 of the clip level rms, at the onset 0.707107.
    assertEquals(10 * 0.723708 / 0.707107, evidence().get(ReadingId.OUTPUT_VOLTS), 1e-4);
    assertEquals(17, evidence().get(ReadingId.SUPPLY_AMPS));
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "25 W"));
    double squared = Math.pow(0.723708 / 0.707107, 2);
    assertEquals(25 * squared, evidence().get(ReadingId.OUTPUT_WATTS), 1e-3);
  }

  @Test
  void evidence_belowTheLimit_andOfSkippedSteps_isLeftOut() {
    measured("10").hear(new Intent.SetCriterion("stereo-4", Criterion.BELOW_LIMIT));
    assertEquals(Map.of(), evidence());
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.THD_LIMIT));
    assertFalse(evidence().isEmpty());
    floor.hear(new Intent.Skip("spoilt"));
    assertEquals(Map.of(), evidence());
  }

  @Test
  void evidence_ofTheStepItself_isItsColdLoadAlone() {
    measured("10").hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "3.97"));
    List<Observation> own = Targets.evidenceBefore(floor.model.state(), "stereo-4").observations();
    assertEquals(Map.of(ReadingId.LOAD_OHMS, 3.97), own.get(own.size() - 1).readings());
  }

  @Test
  void wattsAndVolts_ofOneOutput_replaceEachOther_andNothingIsErased() {
    measured("13.4");
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "45.5 W"));
    StepState step = floor.step("stereo-4");
    assertEquals(Optional.empty(), step.latest(ReadingId.OUTPUT_VOLTS));
    assertEquals(45.5, step.latest(ReadingId.OUTPUT_WATTS).orElseThrow().value());
    assertEquals(Map.of(ReadingId.OUTPUT_WATTS, 45.5), evidence());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.6"));
    step = floor.step("stereo-4");
    assertEquals(13.6, step.latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    assertEquals(Optional.empty(), step.latest(ReadingId.OUTPUT_WATTS));
    assertEquals(2, step.entries().get(ReadingId.OUTPUT_VOLTS).size());
    assertEquals(3, step.entryCount());
  }

  @Test
  void amendedReading_staysInItsOwnStep_besideTheFirst() {
    measured("13.4").hear(new Intent.Finish());
    assertEquals("bridged-4", floor.model.state().currentId());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.6"));
    List<Entry> entries = floor.step("stereo-4").entries().get(ReadingId.OUTPUT_VOLTS);
    assertEquals(List.of("13.4", "13.6"), entries.stream().map(Entry::text).toList());
    assertEquals(0, floor.step("bridged-4").entryCount());
    assertEquals(Map.of(ReadingId.OUTPUT_VOLTS, 13.6), evidence());
  }

  @Test
  void doubtOnTheReplacedUnit_isNotRaisedAgain() {
    measured("13.4");
    floor.doubted = List.of(ReadingId.OUTPUT_WATTS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "455 W"));
    assertFalse(floor.holds(Fact.Doubted.class));
    assertEquals(List.of(ReadingId.OUTPUT_WATTS), floor.step("stereo-4").openDoubts());
    floor.doubted = List.of();
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4"));
    assertTrue(floor.model.state().openDoubts().isEmpty());
  }

  @Test
  void laterReading_thatContradictsAnEarlierOne_doubtsIt() {
    measured("13.4");
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.SUPPLY_AMPS, "1.7"));
    assertEquals(ReadingId.OUTPUT_VOLTS, floor.last(Fact.Doubted.class).reading());
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), floor.step("stereo-4").openDoubts());
  }

  private void done(String step, String volts) {
    floor.at(step).hear(new Intent.Begin());
    floor.hear(new Intent.Enter(step, ReadingId.OUTPUT_VOLTS, volts)).hear(new Intent.Finish());
  }

  private Optional<String> rechecked() {
    WalkState state = floor.model.state();
    return state.context(state.planned("recheck").orElseThrow()).repeated().map(PlannedStep::id);
  }

  @Test
  void heaviest_isTheLeastOhmsAChannelSees_bridgedBeforeStereo() {
    done("stereo-4", "13");
    done("bridged-4", "24");
    done("bridged-2", "20");
    done("stereo-1", "9");
    assertEquals(Optional.of("bridged-2"), rechecked());
    floor.at("recheck");
    assertEquals(2.0, Targets.of(floor.model.state(), plannedRecheck()).orElseThrow().ohms());
  }

  @Test
  void heaviest_ofARecheckFurtherOn_countsWhatIsStillToBeDone_butNothingSkipped() {
    assertEquals(Optional.of("bridged-2"), rechecked());
    done("stereo-4", "13");
    done("bridged-4", "24");
    assertEquals(Optional.of("bridged-2"), rechecked());
    floor.at("open-load");
    assertEquals(Optional.of("bridged-4"), rechecked());
    floor.at("recheck");
    assertEquals(4.0, Targets.of(floor.model.state(), plannedRecheck()).orElseThrow().ohms());
  }

  @Test
  void heaviest_withNothingDone_isNone() {
    floor.at("recheck");
    assertEquals(Optional.empty(), rechecked());
  }

  /** Of two steps that load a channel alike the bridged one is the heavier, asked when it may. */
  @Test
  void heaviest_ofEqualLoadsAChannel_isTheBridgedOne() {
    Floor equal =
        new Floor(
            """
            {"format":"loadwalk-sequence/1","name":"equal","title":"Equal","tone":{"hertz":40},
             "limit":{"thdPercent":1.0},"supplyVolts":13.8,
             "steps":[{"do":"measure","mode":"stereo","ohms":2},
              {"do":"measure","mode":"bridged","ohms":4},{"do":"idle"},
              {"do":"recheck","of":["heaviest"]}]}
            """);
    for (String step : List.of("stereo-2", "bridged-4")) {
      equal.at(step).hear(new Intent.Begin());
      equal.hear(new Intent.Enter(step, ReadingId.OUTPUT_VOLTS, "13")).hear(new Intent.Finish());
    }
    equal.hear(new Intent.Begin());
    equal.hear(new Intent.Enter("idle", ReadingId.SUPPLY_AMPS, "1.9")).hear(new Intent.Finish());
    WalkState state = equal.model.state();
    assertEquals(
        Optional.of("bridged-4"),
        state.context(state.planned("recheck").orElseThrow()).repeated().map(PlannedStep::id));
  }

  /** Watts typed where volts are asked, and volts where watts are. */
  @Test
  void watts_mayBeAskedFor_andVoltsTyped() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_WATTS, "45 W"));
    assertEquals(Map.of(ReadingId.OUTPUT_WATTS, 45.0), evidence());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_WATTS, "13.4 V"));
    assertEquals(Map.of(ReadingId.OUTPUT_VOLTS, 13.4), evidence());
  }

  private loadwalk.sequence.PlannedStep plannedRecheck() {
    return floor.model.state().planned("recheck").orElseThrow();
  }

  @Test
  void recheckOfNothing_asksForNoReadings() {
    floor.at("recheck");
    assertEquals(Optional.empty(), Targets.of(floor.model.state(), plannedRecheck()));
    floor.hear(new Intent.Enter("recheck", ReadingId.OUTPUT_VOLTS, "9"));
    assertEquals("recheck takes no readings.", floor.said());
  }

  @Test
  void readingsBeforeTheStart_areRefused_exceptTheColdLoad() {
    floor.at("stereo-4").hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13"));
    assertTrue(floor.said().contains("start the step first"), floor.said());
    floor.hear(new Intent.AddPair("stereo-4", "13.2", "0.8 %"));
    assertTrue(floor.said().contains("start the step first"), floor.said());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "3.97"));
    assertEquals(1, floor.step("stereo-4").entryCount());
    floor.hear(new Intent.Begin()).hear(new Intent.Enter("stereo-4", ReadingId.SUPPLY_VOLTS, "-1"));
    assertTrue(floor.said().contains("below zero"), floor.said());
  }

  @Test
  void severalReadings_areParsedAllBeforeAnyIsKept() {
    floor.at("stereo-4").hear(new Intent.Begin());
    Map<ReadingId, String> texts =
        Map.of(ReadingId.OUTPUT_VOLTS, "13.4", ReadingId.SUPPLY_AMPS, "many");
    floor.hear(new Intent.EnterAll("stereo-4", texts));
    assertEquals(0, floor.step("stereo-4").entryCount());
    assertTrue(floor.said().startsWith("supply amps: "), floor.said());
  }
}
