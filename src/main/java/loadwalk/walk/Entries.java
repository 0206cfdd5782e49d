package loadwalk.walk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecaster;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/** Takes what the operator typed, judges it and turns it into facts. */
public final class Entries {
  private static final Set<ReadingId> OUTPUTS =
      EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.OUTPUT_WATTS);

  private static final Set<ReadingId> EARLY =
      EnumSet.of(ReadingId.LOAD_OHMS, ReadingId.OTHER_LOAD_OHMS, ReadingId.SINK_CELSIUS);
  private static final Set<ReadingId> TEMPERATURES =
      EnumSet.of(ReadingId.SINK_CELSIUS, ReadingId.AMBIENT_CELSIUS);
  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

  private final Forecaster forecaster;

  /** Makes entries that are judged by a forecaster. */
  public Entries(Forecaster forecaster) {
    this.forecaster = forecaster;
  }

  /** Takes readings of one step typed together; all are parsed before any is kept. */
  Next enter(
      Model model,
      String stepId,
      Map<ReadingId, String> texts,
      Map<ReadingId, Instrument> instruments) {
    return enter(model, stepId, texts, instruments, List.of());
  }

  /** Takes readings that follow other facts; all are kept together or not at all. */
  Next enter(
      Model model,
      String stepId,
      Map<ReadingId, String> texts,
      Map<ReadingId, Instrument> instruments,
      List<Fact> before) {
    WalkState state = model.state();
    Optional<PlannedStep> planned = state.planned(stepId);
    Optional<Target> target = planned.flatMap(p -> Targets.of(state, p));
    if (target.isEmpty()) {
      return Next.refused(model, Sentence.of("{} takes no readings.", stepId));
    }
    Map<ReadingId, Typed.Number> numbers = new LinkedHashMap<>();
    Map<ReadingId, String> kept = new LinkedHashMap<>();
    for (Map.Entry<ReadingId, String> e : texts.entrySet()) {
      Optional<String> refusal = refusal(state.step(stepId), e.getKey());
      Typed typed =
          refusal.<Typed>map(Typed.Problem::new).orElseGet(() -> parse(e.getKey(), e.getValue()));
      if (typed.problem().isPresent()) {
        return Next.refused(
            model, Sentence.of("{}: {}", e.getKey().label(), typed.problem().get()));
      }
      Typed.Number number = typed.number().orElseThrow();
      ReadingId id = inUnit(e.getKey(), number.unit());
      numbers.put(id, number);
      kept.put(id, e.getValue());
    }
    List<Fact> facts = new ArrayList<>(before);
    Model after = model;
    for (Fact fact : before) {
      after = after.with(fact.applyTo(after.state(), model.clock().wallMillis()));
    }
    facts.addAll(facts(after, target.get(), kept, numbers, instruments));
    return Next.keeping(model, facts);
  }

  /**
   * Returns why a step does not take a reading; before it runs, it takes only the cold loads and
   * the heatsink.
   */
  private static Optional<String> refusal(StepState step, ReadingId id) {
    boolean early = EARLY.contains(id);
    return early && step.status() == Status.BRIEFED ? Optional.empty() : refusal(step);
  }

  /** Returns why a step takes no readings now; empty if it does take them. */
  static Optional<String> refusal(StepState step) {
    if (step.status() == Status.RUNNING || step.status() == Status.DONE) {
      return Optional.empty();
    }
    return Optional.of(
        step.status() == Status.SKIPPED ? "the step was skipped" : "start the step first");
  }

  /** Parses what was typed for a reading; output volts and watts can replace each other. */
  public static Typed parse(ReadingId id, String text) {
    boolean output = id == ReadingId.OUTPUT_VOLTS || id == ReadingId.OUTPUT_WATTS;
    Unit twin = id == ReadingId.OUTPUT_VOLTS ? Unit.WATT : Unit.VOLT;
    Typed typed =
        output ? EntryParser.parse(text, id.unit(), twin) : EntryParser.parse(text, id.unit());
    double least = TEMPERATURES.contains(id) ? ABSOLUTE_ZERO_CELSIUS : 0;
    if (typed.number().filter(number -> number.value() < least).isEmpty()) {
      return typed;
    }
    return new Typed.Problem(
        TEMPERATURES.contains(id)
            ? "nothing is colder than -273.15 °C; check the thermometer's leads and unit"
            : "a reading cannot be below zero; check the meter's leads");
  }

  private static ReadingId inUnit(ReadingId id, Unit unit) {
    if (id == ReadingId.OUTPUT_VOLTS && unit == Unit.WATT) {
      return ReadingId.OUTPUT_WATTS;
    }
    return id == ReadingId.OUTPUT_WATTS && unit == Unit.VOLT ? ReadingId.OUTPUT_VOLTS : id;
  }

  /** Judges readings typed together and returns the resulting facts. */
  public List<Fact> facts(
      Model model,
      Target target,
      Map<ReadingId, String> texts,
      Map<ReadingId, Typed.Number> typed,
      Map<ReadingId, Instrument> instruments) {
    String stepId = target.stepId();
    StepState step = model.state().step(stepId);
    List<Doubt> doubts = judge(model.state(), target, withTyped(step, typed), instruments);
    List<Fact> facts = new ArrayList<>();
    typed.forEach(
        (id, number) ->
            facts.add(
                new Fact.Entered(
                    stepId,
                    id,
                    texts.get(id),
                    number.value(),
                    number.resolution(),
                    of(doubts, id),
                    model.clock().warmSeconds(),
                    Optional.ofNullable(instruments.get(id)),
                    OUTPUTS.contains(id) ? held(model, stepId) : OptionalDouble.empty())));
    facts.addAll(freshlyDoubted(stepId, step, doubts, typed));
    return facts;
  }

  /** Returns how long a step had run, to a tenth of a second, if it is the one that runs. */
  private static OptionalDouble held(Model model, String stepId) {
    OptionalDouble seconds = model.clock().heldSeconds();
    return seconds.isPresent() && model.state().currentId().equals(stepId)
        ? OptionalDouble.of(Math.round(10 * seconds.getAsDouble()) / 10.0)
        : OptionalDouble.empty();
  }

  /**
   * Judges a step that is about to end without the supply amps it asks for, and returns the doubts
   * that were waiting for them.
   */
  public List<Fact> atEnd(WalkState state, Target target) {
    StepState step = state.step(target.stepId());
    boolean waited =
        target.kind() == Target.Kind.LOADED && step.latest(ReadingId.SUPPLY_AMPS).isEmpty();
    if (!waited) {
      return List.of();
    }
    Evidence before = Targets.evidenceBefore(state, target.stepId());
    Map<ReadingId, Double> entered = withTyped(step, Map.of());
    return freshlyDoubted(
        target.stepId(), step, forecaster.judge(before, target, entered), Map.of());
  }

  /** Returns the doubts on readings that raised none when they were typed. */
  private static List<Fact> freshlyDoubted(
      String stepId, StepState step, List<Doubt> doubts, Map<ReadingId, Typed.Number> typed) {
    List<Fact> facts = new ArrayList<>();
    step.latest()
        .forEach(
            (id, entry) -> {
              List<Doubt> fresh = of(doubts, id);
              boolean untouched = !isReplaced(id, typed) && !fresh.isEmpty();
              if (untouched && entry.doubts().isEmpty()) {
                facts.add(new Fact.Doubted(stepId, id, fresh));
              }
            });
    return facts;
  }

  /** Tells whether a reading has just been typed, in either of its units. */
  private static boolean isReplaced(ReadingId id, Map<ReadingId, Typed.Number> typed) {
    return typed.containsKey(id)
        || (OUTPUTS.contains(id) && typed.keySet().stream().anyMatch(OUTPUTS::contains));
  }

  private List<Doubt> judge(
      WalkState state,
      Target target,
      Map<ReadingId, Double> entries,
      Map<ReadingId, Instrument> instruments) {
    Evidence before = Targets.evidenceBefore(state, target.stepId());
    StepState step = state.step(target.stepId());
    if (step.ended().isPresent()) {
      return List.of();
    }
    double limit = state.opened().sequence().limitThdPercent();
    List<Doubt> doubts =
        new ArrayList<>(PointOfReading.doubts(step, target, entries, instruments, limit));
    doubts.addAll(
        step.status() == Status.DONE
            ? forecaster.judge(before, target, entries)
            : forecaster.judgeSoFar(before, target, entries));
    return doubts;
  }

  /** Returns the readings of a step, with those just typed in place of earlier ones. */
  private static Map<ReadingId, Double> withTyped(
      StepState step, Map<ReadingId, Typed.Number> typed) {
    Map<ReadingId, Double> entries = new EnumMap<>(ReadingId.class);
    step.latest().forEach((id, entry) -> entries.put(id, entry.value()));
    typed.forEach((id, number) -> entries.put(id, number.value()));
    if (typed.containsKey(ReadingId.OUTPUT_VOLTS)) {
      entries.remove(ReadingId.OUTPUT_WATTS);
    } else if (typed.containsKey(ReadingId.OUTPUT_WATTS)) {
      entries.remove(ReadingId.OUTPUT_VOLTS);
    }
    return entries;
  }

  /** Returns the doubts on one reading; output volts and watts are one reading in two units. */
  private static List<Doubt> of(List<Doubt> doubts, ReadingId id) {
    return doubts.stream()
        .filter(d -> d.reading() == id || (OUTPUTS.contains(id) && OUTPUTS.contains(d.reading())))
        .toList();
  }
}
