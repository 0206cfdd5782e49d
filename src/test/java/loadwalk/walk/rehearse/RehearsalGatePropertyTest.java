package loadwalk.walk.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.plan.StockRules;
import loadwalk.result.Criterion;
import loadwalk.sequence.Idle;
import loadwalk.sequence.Measure;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.WarmUp;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Results;
import loadwalk.walk.Targets;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

class RehearsalGatePropertyTest {
  private static final long SEED = 20261125;
  private static final Sequence LADDER =
      new Sequence(
          "ladder",
          "Ladder",
          40,
          1,
          13.8,
          List.of(
              new WarmUp(15, 0.5, 0.5),
              new Idle(),
              new Measure(Mode.STEREO, 4, false),
              new Measure(Mode.STEREO, 2, false),
              new Measure(Mode.BRIDGED, 4, false),
              new Measure(Mode.BRIDGED, 2, true)),
          "");

  @Test
  void begun_inAnOrdinaryWalk_neverPassesADoubtOnAnotherStep() {
    int begunWithoutDoubt = 0;
    int refusedForDoubt = 0;
    for (int walk = 0; walk < 300; walk++) {
      Random random = new Random(SEED + walk);
      Walker walker = new Walker(new Capricious(random));
      Model model = settled(walker, opened(), new Event.Reopened(0, 0));
      for (int i = 0; i < 60; i++) {
        Intent intent = anyIntent(random, model);
        Next next = walker.update(model, intent);
        Optional<PlannedStep> current = model.state().current();
        boolean begins =
            next.model().waiting().stream().anyMatch(s -> s.fact() instanceof Fact.Begun);
        if (begins && isHeavy(model.state(), current.orElseThrow())) {
          assertEquals(List.of(), others(model.state()), "seed " + (SEED + walk));
          begunWithoutDoubt++;
        }
        refusedForDoubt +=
            next.model().message().filter(m -> m.startsWith("Held")).isPresent() ? 1 : 0;
        model = settled(walker, model, intent);
      }
    }
    assertTrue(begunWithoutDoubt > 50, "heavy steps begun: " + begunWithoutDoubt);
    assertTrue(refusedForDoubt > 50, "held: " + refusedForDoubt);
  }

  @Test
  void rehearsal_passesDoubtsOnOtherSteps_andLeavesThemOpen() {
    int passed = 0;
    for (int walk = 0; walk < 100; walk++) {
      Map<String, Map<String, String>> answers =
          Map.of(
              "idle", Map.of("supplyAmps", "1.9 A"),
              "stereo-4", Map.of("outputVolts", "13.4 V"),
              "stereo-2", Map.of("outputVolts", "12.1 V"),
              "bridged-4", Map.of("outputVolts", "24.4 V"),
              "bridged-2", Map.of("outputVolts", "20.4 V"));
      Rehearsal.Outcome outcome =
          Rehearsal.of(
              new Capricious(new Random(SEED + walk)),
              new Rehearsal.Script(opened().state().opened(), answers));
      List<WalkState.OpenDoubt> open = outcome.state().openDoubts();
      passed += open.isEmpty() ? 0 : 1;
      for (PlannedStep step : outcome.state().plan()) {
        StepState state = outcome.state().step(step.id());
        assertEquals(StepState.Status.DONE, state.status(), step.id() + ", seed " + (SEED + walk));
        assertFalse(
            state.latest().values().stream().anyMatch(e -> e.stoodBy().isPresent()),
            "a rehearsal stands by nothing");
      }
      for (WalkState.OpenDoubt doubt : open) {
        boolean trusted =
            Targets.evidenceBefore(outcome.state(), "none").observations().stream()
                .filter(o -> o.target().stepId().equals(doubt.stepId()))
                .anyMatch(o -> o.readings().containsKey(doubt.reading()));
        assertFalse(trusted, doubt + ", seed " + (SEED + walk));
      }
    }
    assertTrue(passed > 30, "walks with a doubt left open: " + passed);
  }

  @Test
  void rehearsal_withoutDoubts_isTheWalkStepByStep() {
    Map<String, Map<String, String>> answers =
        Map.of(
            "idle", Map.of("supplyAmps", "1.9 A"),
            "stereo-4",
                Map.of("loadOhms", "4.02", "criterion", "thd-limit", "outputVolts", "13.4 V"),
            "bridged-4", Map.of("criterion", "clipping-onset", "outputVolts", "24.4 V"));
    WalkState rehearsed =
        Rehearsal.of(StockRules.RULES, new Rehearsal.Script(opened().state().opened(), answers))
            .state();
    Walker walker = new Walker(StockRules.RULES);
    Model model = opened();
    List<Event> events =
        List.of(
            new Event.Reopened(0, 0),
            new Intent.Arm("4"),
            new Intent.EndEarly("rehearsed: no clock runs"),
            new Intent.Begin(),
            new Intent.Enter("idle", ReadingId.SUPPLY_AMPS, "1.9 A"),
            new Intent.Finish(),
            new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "4.02"),
            new Intent.Arm("4"),
            new Intent.SetCriterion("stereo-4", Criterion.THD_LIMIT),
            new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"),
            new Intent.Finish(),
            new Intent.Skip("no answer"),
            new Intent.Arm("4"),
            new Intent.SetCriterion("bridged-4", Criterion.CLIPPING_ONSET),
            new Intent.Enter("bridged-4", ReadingId.OUTPUT_VOLTS, "24.4 V"),
            new Intent.Finish(),
            new Intent.Skip("no answer"));
    for (Event event : events) {
      model = settled(walker, model, event);
      assertEquals(Optional.empty(), model.message(), event.toString());
    }
    assertTrue(model.state().isFinished());
    for (PlannedStep step : rehearsed.plan()) {
      StepState byHand = model.state().step(step.id());
      assertEquals(byHand.brief(), rehearsed.step(step.id()).brief(), step.id());
      assertEquals(byHand.entries(), rehearsed.step(step.id()).entries(), step.id());
      assertEquals(byHand.status(), rehearsed.step(step.id()).status(), step.id());
      assertEquals(byHand.said(), rehearsed.step(step.id()).said(), step.id());
    }
    assertEquals(watts(model.state()), watts(rehearsed));
  }

  /** Whether the amplifier was warm is known at the bench alone. */
  private static List<String> watts(WalkState state) {
    return Results.of(state, StockRules.RULES.wire()).steps().stream()
        .map(step -> step.stepId() + " " + step.watts() + " " + step.budget())
        .toList();
  }

  private static boolean isHeavy(WalkState state, PlannedStep planned) {
    boolean bridged = planned.step().load().filter(l -> l.mode() == Mode.BRIDGED).isPresent();
    return bridged || state.step(planned.id()).brief().orElseThrow().verdict() != Verdict.CLEAR;
  }

  private static List<WalkState.OpenDoubt> others(WalkState state) {
    String current = state.currentId();
    return state.openDoubts().stream().filter(d -> !d.stepId().equals(current)).toList();
  }

  private static Model opened() {
    Fact.Opened opened =
        new Fact.Opened(
            "walk",
            "1",
            LADDER,
            "",
            Amplifier.named("Brightmoor", "B2"),
            Bench.unknown(),
            OptionalLong.empty());
    return Model.of(WalkState.begin(opened, 0), 0);
  }

  private static Model settled(Walker walker, Model model, Event event) {
    Model now = walker.update(model, event).model();
    while (now.isWriting()) {
      now = walker.update(now, new Event.Kept(now.waiting())).model();
    }
    return now;
  }

  private static Intent anyIntent(Random random, Model model) {
    String id = model.state().currentId();
    List<Intent> intents = new ArrayList<>();
    intents.add(new Intent.Begin());
    intents.add(new Intent.LiftHalt("it is known"));
    model
        .state()
        .current()
        .flatMap(p -> Targets.of(model.state(), p))
        .ifPresent(t -> intents.add(new Intent.Arm(String.valueOf(t.ohms()))));
    intents.add(new Intent.Enter(id, ReadingId.OUTPUT_VOLTS, "13.4 V"));
    intents.add(new Intent.Enter(id, ReadingId.SUPPLY_AMPS, "12.5 A"));
    intents.add(new Intent.Finish());
    intents.add(new Intent.EndEarly("no clock here"));
    if (random.nextInt(4) == 0) {
      model
          .state()
          .openDoubts()
          .forEach(d -> intents.add(new Intent.StandBy(d.stepId(), d.reading(), "seen twice")));
    }
    return intents.get(random.nextInt(intents.size()));
  }

  /** Gives any verdict, and doubts a third of the entries. */
  private record Capricious(Random random) implements Forecaster {
    @Override
    public Forecast forecast(Evidence evidence, Target target) {
      Verdict verdict = Verdict.values()[random.nextInt(3)];
      List<Caution> cautions =
          verdict == Verdict.CLEAR
              ? List.of()
              : List.of(new Caution("whim", verdict, "A whim.", 1));
      return new Forecast(
          target.stepId(),
          0.95,
          Map.of(),
          Forecast.Demand.unknown(),
          cautions,
          verdict,
          "Rests on nothing.");
    }

    @Override
    public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
      List<Doubt> doubts = new ArrayList<>();
      for (ReadingId id : entries.keySet()) {
        if (random.nextInt(3) == 0) {
          doubts.add(new Doubt(id, Slip.UNNAMED, "It is off.", "Look at it."));
        }
      }
      return doubts;
    }
  }
}
