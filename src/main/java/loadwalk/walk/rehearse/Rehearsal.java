package loadwalk.walk.rehearse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.json.Nearest;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.Entries;
import loadwalk.walk.Event;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.StartOverride;
import loadwalk.walk.Targets;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Runs a walk without an operator: the same updates as at the bench, fed with answers written in
 * advance.
 *
 * <p>Every answer counts as typed and is kept even if it is doubted. The doubt stays open, so that
 * a doubted reading feeds no later forecast. A heed or a halt is recorded and passed. The cold load
 * is entered before the step starts, as an operator would, so that a wrong load shows in the brief.
 * The point at which the output was read is said before the readings.
 */
public final class Rehearsal {
  /** The reason given for a skipped step. */
  public static final String NO_ANSWER = "no answer";

  /** The key of the point at which the output was read, beside the readings of a step. */
  private static final String CRITERION = "criterion";

  private static final double NO_CLOCK = 0;
  private static final String LIFTED = "rehearsed: the halt is noted and passed";

  private final Walker walker;
  private final Map<String, Map<String, String>> answers;
  private final List<Rehearsed> steps = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private Model model;

  private Rehearsal(Forecaster forecaster, Script script) {
    walker = new Walker(forecaster, StartOverride.REHEARSED);
    answers = script.answers();
    model = Model.of(WalkState.begin(script.opened(), 0), NO_CLOCK);
  }

  /**
   * The script of a rehearsal.
   *
   * @param opened how the walk begins
   * @param answers what an operator would type, by step and reading id, in order
   */
  public record Script(Fact.Opened opened, Map<String, Map<String, String>> answers) {}

  /**
   * One step as rehearsed.
   *
   * @param step its id
   * @param brief its brief just before it started
   * @param doubts what contradicted its readings, each once
   */
  public record Rehearsed(String step, Forecast brief, List<Doubt> doubts) {
    /** Copies the list. */
    public Rehearsed {
      doubts = List.copyOf(doubts);
    }
  }

  /**
   * An answer that could not be used.
   *
   * @param step the step's id as given
   * @param reading the reading's id as given; empty if it concerns the step
   * @param text one sentence
   */
  public record Problem(String step, String reading, String text) {}

  /**
   * A walk as rehearsed.
   *
   * @param steps every step, in order
   * @param problems the answers that could not be used
   * @param state the state of the walk at its end
   */
  public record Outcome(List<Rehearsed> steps, List<Problem> problems, WalkState state) {
    /** Copies the lists. */
    public Outcome {
      steps = List.copyOf(steps);
      problems = List.copyOf(problems);
    }
  }

  /** Runs a walk to its end. */
  public static Outcome of(Forecaster forecaster, Script script) {
    return new Rehearsal(forecaster, script).outcome();
  }

  private Outcome outcome() {
    strangers();
    take(new Event.Reopened(0, 0));
    Optional<PlannedStep> current = model.state().current();
    while (current.isPresent()) {
      steps.add(step(current.get()));
      current = model.state().current();
    }
    return new Outcome(steps, problems, model.state());
  }

  private void strangers() {
    List<String> known = model.state().plan().stream().map(PlannedStep::id).toList();
    for (String step : answers.keySet()) {
      if (!known.contains(step)) {
        String nearest = Nearest.of(step, known);
        String text = Sentence.of("the sequence has no such step; nearest step: «{}»", nearest);
        problems.add(new Problem(step, "", text));
      }
    }
  }

  private Rehearsed step(PlannedStep planned) {
    String id = planned.id();
    Map<ReadingId, String> late = sound(planned);
    String coldLoad = late.remove(ReadingId.LOAD_OHMS);
    if (coldLoad != null) {
      take(new Intent.EnterAll(id, Map.of(ReadingId.LOAD_OHMS, coldLoad)));
    }
    Forecast brief = state(id).brief().orElseThrow();
    SaidOutcome ended = ended(planned);
    if (!late.isEmpty() || ended.outcome().isPresent() || planned.step().required().isEmpty()) {
      start(planned);
    }
    if (!late.isEmpty()) {
      point(planned).ifPresent(said -> take(new Intent.SetCriterion(id, said)));
      take(new Intent.EnterAll(id, late));
    }
    ended.outcome().ifPresent(outcome -> take(new Intent.EndAs(outcome, "")));
    end(planned);
    return new Rehearsed(id, brief, doubts(id));
  }

  /** Returns the usable answers of a step; each of the others becomes a problem. */
  private Map<ReadingId, String> sound(PlannedStep planned) {
    Map<ReadingId, String> sound = new LinkedHashMap<>();
    boolean reads = Targets.of(model.state(), planned).isPresent();
    answers
        .getOrDefault(planned.id(), Map.of())
        .forEach(
            (key, text) -> {
              if (key.equals(CRITERION) || key.equals(SaidOutcome.KEY)) {
                return;
              }
              Optional<ReadingId> id = ReadingId.ofKey(key);
              Optional<String> why =
                  id.isEmpty()
                      ? Optional.of(
                          Sentence.of("there is no such reading; nearest: «{}»", nearest(key)))
                      : reads ? fault(id.get(), text) : Optional.of("the step takes no readings");
              why.ifPresent(sentence -> problems.add(new Problem(planned.id(), key, sentence)));
              id.filter(known -> why.isEmpty()).ifPresent(known -> sound.put(known, text));
            });
    return sound;
  }

  /** Returns the point that the answers of a step name; a word for none becomes a problem. */
  private Optional<Criterion> point(PlannedStep planned) {
    Optional<String> text =
        Optional.ofNullable(answers.getOrDefault(planned.id(), Map.of()).get(CRITERION));
    Optional<Criterion> said =
        text.flatMap(word -> Criterion.ofWord(word.strip()))
            .filter(Criterion.sayable()::contains)
            .filter(point -> Targets.isAtALimit(model.state(), planned));
    text.filter(word -> said.isEmpty())
        .map(word -> noPoint(planned, word))
        .ifPresent(why -> problems.add(new Problem(planned.id(), CRITERION, why)));
    return said;
  }

  private String noPoint(PlannedStep planned, String word) {
    return Targets.isAtALimit(model.state(), planned)
        ? Sentence.of(
            "«{}» names no point at which an output is read; nearest: «{}»",
            word,
            Nearest.of(word, Criterion.sayable().stream().map(Criterion::word).toList()))
        : "the step reads no output at a limit";
  }

  private SaidOutcome ended(PlannedStep planned) {
    boolean drives = Targets.of(model.state(), planned).filter(t -> t.kind().drives()).isPresent();
    SaidOutcome said = SaidOutcome.of(answers.getOrDefault(planned.id(), Map.of()), drives);
    said.fault().ifPresent(why -> problems.add(new Problem(planned.id(), SaidOutcome.KEY, why)));
    return said;
  }

  private static String nearest(String key) {
    Stream<String> readings = Stream.of(ReadingId.values()).map(ReadingId::key);
    return Nearest.of(key, Stream.concat(readings, Stream.of(CRITERION, SaidOutcome.KEY)).toList());
  }

  private static Optional<String> fault(ReadingId id, String text) {
    return Entries.parse(id, text).problem();
  }

  private void start(PlannedStep planned) {
    take(new Intent.LiftHalt(LIFTED));
    String load = Targets.of(model.state(), planned).map(t -> String.valueOf(t.ohms())).orElse("");
    take(Gate.needsArming(model.state(), planned) ? new Intent.Arm(load) : new Intent.Begin());
  }

  private void end(PlannedStep planned) {
    if (state(planned.id()).status().isOver()) {
      return;
    }
    take(new Intent.Finish());
    if (!state(planned.id()).status().isOver() && !doubts(planned.id()).isEmpty()) {
      take(new Intent.Finish());
    }
    if (!state(planned.id()).status().isOver()) {
      take(new Intent.Skip(NO_ANSWER));
    }
    if (!state(planned.id()).status().isOver()) {
      throw new IllegalStateException(planned.id() + " did not end: " + model.message());
    }
  }

  private List<Doubt> doubts(String id) {
    return state(id).latest().values().stream()
        .flatMap(entry -> entry.doubts().stream())
        .distinct()
        .toList();
  }

  private StepState state(String id) {
    return model.state().step(id);
  }

  /** Updates the walk; facts count as kept at once. */
  private void take(Event event) {
    model = walker.update(model, event).model();
    while (model.isWriting()) {
      model = walker.update(model, new Event.Kept(model.waiting())).model();
    }
  }
}
