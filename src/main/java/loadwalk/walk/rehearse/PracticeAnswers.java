package loadwalk.walk.rehearse;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.practice.PracticeRig;
import loadwalk.practice.PracticeTone;
import loadwalk.practice.SimulatedOperator;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * The meters of the practice bench in one walk, read for its current step as an operator would type
 * the readings.
 *
 * @param cold the amplifier as it was switched on
 * @param operator who reads and types
 */
public record PracticeAnswers(PracticeRig cold, SimulatedOperator operator) {
  /** How long an operator takes over a loaded step, s; common practice, no source. */
  private static final double LOADED_SECONDS = 20;

  /** Returns the bench of a walk; empty if the walk is not on the practice bench. */
  public static Optional<PracticeAnswers> in(Fact.Opened opened) {
    OptionalLong seed = opened.practiceSeed();
    return seed.isPresent()
        ? Optional.of(
            new PracticeAnswers(
                PracticeRig.ofSeed(seed.getAsLong()), new SimulatedOperator(seed.getAsLong())))
        : Optional.empty();
  }

  /**
   * Returns what each meter shows now, in the order of the step's readings; empty if it asks for
   * none.
   */
  public Map<ReadingId, String> of(WalkState state, double warmSeconds) {
    Optional<Target> target = state.current().flatMap(p -> Targets.of(state, p));
    if (target.isEmpty()) {
      return Map.of();
    }
    Target asked = target.get();
    double ohms = asked.kind() == Target.Kind.IDLE ? 4 : asked.ohms();
    Target.Kind kind = asked.kind();
    Map<ReadingId, String> shown =
        operator.answers(now(state, warmSeconds), asked.mode(), ohms, kind);
    Map<ReadingId, String> ordered = new LinkedHashMap<>();
    PlannedStep current = state.current().orElseThrow();
    current.step().readings(asked.mode()).stream()
        .filter(shown::containsKey)
        .forEach(id -> ordered.put(id, shown.get(id)));
    return ordered;
  }

  /**
   * Tells whether the meters show the same in two states of a walk at the same warm-up time; typed
   * values make no difference.
   */
  public static boolean areTheSame(WalkState one, WalkState other) {
    return one == other
        || (one.opened() == other.opened()
            && one.plan().stream().allMatch(p -> isAsFar(one.step(p.id()), other.step(p.id()))));
  }

  private static boolean isAsFar(StepState one, StepState other) {
    return one.status() == other.status() && one.warmSeconds() == other.warmSeconds();
  }

  /**
   * Returns the output of the practice amplifier while a tone is turned up through the limit; empty
   * if the step has no load.
   */
  public Optional<PracticeTone> tone(WalkState state, double warmSeconds) {
    double hertz = state.opened().sequence().toneHertz();
    return state
        .current()
        .flatMap(p -> Targets.of(state, p))
        .filter(t -> t.kind() == Target.Kind.LOADED || t.kind() == Target.Kind.OPEN_LOAD)
        .map(t -> now(state, warmSeconds).tone(t.mode(), t.ohms(), hertz));
  }

  /** Returns the rig after everything done up to this moment. */
  private PracticeRig now(WalkState state, double warmSeconds) {
    PracticeRig rig = cold;
    for (PlannedStep planned : state.plan()) {
      StepState step = state.step(planned.id());
      boolean running = step.status() == Status.RUNNING;
      Optional<Target> target = Targets.of(state, planned);
      if (planned.step().warmUp().isPresent() && target.isPresent()) {
        double seconds = running ? warmSeconds : step.warmSeconds();
        rig =
            rig.run(
                seconds, target.get().mode(), target.get().ohms(), target.get().powerFraction());
      } else if (step.status() == Status.DONE && target.isPresent()) {
        rig = after(rig, target.get());
      }
      if (!step.status().isOver()) {
        return rig;
      }
    }
    return rig;
  }

  private static PracticeRig after(PracticeRig rig, Target target) {
    return target.kind() == Target.Kind.LOADED
        ? rig.run(LOADED_SECONDS, target.mode(), target.ohms(), 1)
        : rig;
  }

  /** Returns the answers not entered yet. */
  public static Map<ReadingId, String> missing(Map<ReadingId, String> answers, StepState step) {
    Map<ReadingId, String> left = new EnumMap<>(ReadingId.class);
    answers.forEach(
        (id, text) -> {
          if (step.latest(id).isEmpty()) {
            left.put(id, text);
          }
        });
    return left;
  }
}
