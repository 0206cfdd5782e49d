package loadwalk.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;

/** What each kind of step answers. */
class StepTest {
  private static final Measure STEREO = new Measure(Mode.STEREO, 4, false);
  private static final Measure BRIDGED = new Measure(Mode.BRIDGED, 2, true);
  private static final WarmUp WARM_UP = new WarmUp(15, 0.5, 0.25);
  private static final Recheck RECHECK = new Recheck(List.of("bridged-2"), 10);

  /** One step of every kind. */
  private static final List<Step> ALL =
      List.of(
          WARM_UP,
          new Idle(),
          STEREO,
          BRIDGED,
          new OpenLoad(),
          RECHECK,
          new Music(10),
          new Note("Check the manual first."));

  private static final Sequence SEQUENCE =
      new Sequence("all", "One step of every kind", 40, 1, 13.8, ALL, "0");
  private static final List<PlannedStep> PLAN = PlannedStep.of(SEQUENCE);

  private static PlannedStep planned(String id) {
    return PLAN.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private static StepContext context(String id) {
    return planned(id).in(SEQUENCE, PLAN, any -> true);
  }

  private static String instruction(String id) {
    return planned(id).instruction(context(id));
  }

  @Test
  void everyKind_isAmongTheSteps() {
    assertEquals(
        List.of(Step.class.getPermittedSubclasses()),
        ALL.stream().<Class<?>>map(Step::getClass).distinct().toList());
  }

  @Test
  void instruction_saysWhatToConnectToDoAndToRead() {
    assertEquals(
        "Connect 4 Ω to each channel. Run at about 50 % of full power for 15 min.",
        instruction("warm-up"));
    assertEquals("No tone. Read the supply current at idle.", instruction("idle"));
    assertEquals(
        "Connect 4 Ω to each channel. Raise the 40 Hz tone to 1 % THD, then read. Read volts and,"
            + " amplifier off, ohms at its terminals: 20 mΩ of lead is 2 % at 1 Ω.",
        instruction("stereo-4"));
    assertEquals(
        "Connect one 2 Ω load across the bridge; both terminals are live. Raise the 40 Hz tone"
            + " to 1 % THD, then read. Read volts and, amplifier off, ohms at its terminals, no"
            + " grounded clip: 20 mΩ of lead is 2 % at 1 Ω.",
        instruction("bridged-2"));
    assertEquals(
        "Connect 4 Ω to each channel. Set a level below the limit and read the output. Take the"
            + " load off, generator untouched, and read again.",
        instruction("open-load"));
    assertEquals(
        "Measure bridged-2 again. Connect one 2 Ω load across the bridge; both terminals are live."
            + " Raise the 40 Hz tone to 1 % THD, then read. Put the tips where they were then.",
        instruction("recheck"));
    assertEquals(
        "Connect 4 Ω to each channel. Run at about 50 % of full power for 10 min.",
        instruction("warm-up#2"));
    assertEquals("Play music for 10 min and listen.", instruction("music"));
    assertEquals("Check the manual first.", instruction("note"));
  }

  @Test
  void bridgedStep_alwaysSaysThatBothTerminalsAreLive() {
    Sequence bridged =
        new Sequence(
            "b", "Bridged", 40, 1, 13.8, List.of(WARM_UP, BRIDGED, new OpenLoad(), RECHECK), "0");
    List<PlannedStep> plan = PlannedStep.of(bridged);
    for (PlannedStep step : plan) {
      String asked = step.instruction(step.in(bridged, plan, any -> true));
      assertTrue(asked.contains("both terminals are live"), asked);
    }
  }

  @Test
  void stepWithoutItsLoad_saysToSkipIt() {
    Sequence none = new Sequence("n", "No load", 40, 1, 13.8, List.of(new Idle()), "0");
    StepContext nothing = new StepContext(none, Optional.empty());
    for (Step step : List.of(WARM_UP, new OpenLoad(), RECHECK)) {
      assertEquals(Optional.empty(), step.target("x", nothing));
      assertTrue(step.instruction(nothing).endsWith("Skip this step."), step.verb());
    }
  }

  @Test
  void target_isWhatTheStepDoesToTheAmplifier() {
    assertEquals(
        List.of(
            new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5),
            Target.idle("idle"),
            Target.loaded("stereo-4", Mode.STEREO, 4),
            Target.loaded("bridged-2", Mode.BRIDGED, 2),
            new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, 4, 1),
            new Target("warm-up#2", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5),
            Target.loaded("recheck", Mode.BRIDGED, 2)),
        PLAN.stream().flatMap(p -> p.target(context(p.id())).stream()).toList());
  }

  @Test
  void otherChannel_isAskedInStereoOnly() {
    for (Step step : List.of(STEREO, RECHECK)) {
      assertTrue(step.readings(Mode.STEREO).contains(ReadingId.OTHER_OUTPUT_VOLTS));
      assertFalse(step.readings(Mode.BRIDGED).contains(ReadingId.OTHER_OUTPUT_VOLTS));
    }
    assertEquals(STEREO.readings(Mode.STEREO), planned("stereo-4").readings(context("stereo-4")));
    assertEquals(BRIDGED.readings(Mode.BRIDGED), planned("recheck").readings(context("recheck")));
  }

  @Test
  void loadIsCheckedCold_beforeAnythingElse() {
    for (Mode mode : Mode.values()) {
      assertEquals(ReadingId.LOAD_OHMS, STEREO.readings(mode).get(0));
    }
  }

  @Test
  void step_isNotFinishedWithoutItsOwnReading() {
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), STEREO.required());
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), RECHECK.required());
    assertEquals(List.of(ReadingId.SUPPLY_AMPS), new Idle().required());
    assertEquals(List.of(ReadingId.OPEN_VOLTS), new OpenLoad().required());
    assertEquals(List.of(), WARM_UP.required());
    for (Step step : ALL) {
      assertTrue(step.readings(Mode.STEREO).containsAll(step.required()), step.verb());
    }
  }

  @Test
  void onlySomeSteps_areTimedConfirmedOrOptional() {
    assertEquals(List.of(WARM_UP), ALL.stream().flatMap(s -> s.warmUp().stream()).toList());
    assertEquals(List.of("note"), verbs(ALL.stream().filter(Step::isConfirmed)));
    assertEquals(List.of(BRIDGED), ALL.stream().filter(Step::isOptional).toList());
    assertEquals(List.of("recheck"), verbs(ALL.stream().filter(s -> s.repeats().isPresent())));
  }

  private static List<String> verbs(Stream<Step> steps) {
    return steps.map(Step::verb).toList();
  }

  @Test
  void recheck_isWalkedAsAWarmUpAndOneStepForEachNamed() {
    Recheck two = new Recheck(List.of("stereo-4", Recheck.HEAVIEST), 5);
    assertEquals(
        List.of(
            new WarmUp(5, 0.5, 0.25),
            new Recheck(List.of("stereo-4"), 0),
            new Recheck(List.of(Recheck.HEAVIEST), 0)),
        two.walked(SEQUENCE));
    assertEquals(List.of(STEREO), STEREO.walked(SEQUENCE));
  }
}
