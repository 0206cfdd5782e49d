package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.journal.Soundness;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.Mark;
import loadwalk.result.PublishedPower;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Words what the reader of a sheet must know first, worst first: each mark of a result as one
 * sentence that names the loads and the numbers.
 */
final class SheetWarnings {
  private static final Printer PRINTER = Printer.UTF8;

  /** The seconds in a tenth of a minute. */
  private static final double TENTH_SECONDS = 6;

  private final WalkState state;
  private final Soundness soundness;
  private final WalkResult result;
  private final List<String> warnings = new ArrayList<>();

  private SheetWarnings(WalkState state, Soundness soundness, WalkResult result) {
    this.state = state;
    this.soundness = soundness;
    this.result = result;
  }

  static List<String> of(WalkState state, Soundness soundness, WalkResult result) {
    return new SheetWarnings(state, soundness, result).all();
  }

  private List<String> all() {
    warnings.addAll(soundness.remarks());
    EndedWords.gaveOut(Targets.ended(state)).ifPresent(warnings::add);
    result.steps().stream()
        .filter(step -> step.marks().contains(Mark.IMPOSSIBLE))
        .forEach(step -> warnings.add(impossible(step)));
    state.plan().forEach(planned -> stoodBy(planned.id()).ifPresent(warnings::add));
    state.openDoubts().forEach(d -> warnings.add(inDoubt(d.stepId(), d.reading().label())));
    state.current().ifPresent(step -> warnings.add(unfinished(step.id())));
    notWarm();
    state.cooled().ifPresent(warnings::add);
    limit();
    supply();
    state.opened().practiceSeed().ifPresent(seed -> warnings.add(practice(seed)));
    return warnings;
  }

  private String impossible(StepResult step) {
    return Sentence.of(
        "{}: {} came out of {} in, which cannot be: a reading is wrong.",
        name(step.stepId()),
        PRINTER.quantity(step.totalWatts().orElseThrow()),
        PRINTER.quantity(step.inputWatts().orElseThrow()));
  }

  private Optional<String> stoodBy(String stepId) {
    List<String> readings = new ArrayList<>();
    state
        .step(stepId)
        .latest()
        .forEach(
            (id, entry) -> {
              if (entry.stoodBy().isPresent()) {
                readings.add(Sentence.of("{} {}", id.label(), Visible.name(entry.text())));
              }
            });
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "{} rests on what was doubted and stood by: {}.",
                name(stepId),
                String.join(", ", readings)));
  }

  private static String inDoubt(String stepId, String reading) {
    return Sentence.of(
        "{}: a doubt on {} has no answer. Every result from it is in doubt too.", stepId, reading);
  }

  private String unfinished(String stepId) {
    if (soundness.standing().isFaulty()) {
      return Sentence.of("As far as its records can be read, this walk is at {}.", stepId);
    }
    return switch (state.hold()) {
      case RUNNING -> Sentence.of("This walk is not finished: it is at {}.", stepId);
      case PAUSED -> Sentence.of("This walk is not finished: it is paused at {}.", stepId);
      case STOPPED -> Sentence.of("This walk is not finished: it was stopped at {}.", stepId);
    };
  }

  /** Says of each warm-up that was cut short which loads were read after it. */
  private void notWarm() {
    Map<PlannedStep, List<PublishedPower>> after = new LinkedHashMap<>();
    for (PublishedPower power : marked(Mark.NOT_WARM)) {
      runs(power, Mark.NOT_WARM)
          .flatMap(run -> state.warmUpBefore(run.stepId()).stream())
          .distinct()
          .forEach(warm -> after.computeIfAbsent(warm, key -> new ArrayList<>()).add(power));
    }
    after.forEach((warm, powers) -> warnings.add(notWarm(warm, powers)));
  }

  private String notWarm(PlannedStep warm, List<PublishedPower> powers) {
    StepState step = state.step(warm.id());
    String clock =
        Sentence.of(
            "The {} lasted {} of {} min.",
            warm.id(),
            PRINTER.exact(Math.floor(step.warmSeconds() / TENTH_SECONDS) / 10, Unit.ONE),
            PRINTER.exact(warm.step().warmUp().orElseThrow().minutes(), Unit.ONE));
    if (powers.size() == result.published().size()) {
      return Sentence.of("{} Every load was read on an amplifier that was not warm.", clock);
    }
    return powers.size() == 1
        ? Sentence.of("{} {} was read on an amplifier that was not warm.", clock, loads(powers))
        : Sentence.of("{} {} were read on an amplifier that was not warm.", clock, loads(powers));
  }

  private void limit() {
    String limit = PRINTER.exact(state.opened().sequence().limitThdPercent(), Unit.PERCENT);
    List<PublishedPower> above = marked(Mark.ABOVE_LIMIT);
    if (!above.isEmpty()) {
      warnings.add(
          Sentence.of("Not read at {} THD but above it: {}.", limit, each(above, this::atThd)));
    }
    List<PublishedPower> below = marked(Mark.BELOW_LIMIT);
    if (!below.isEmpty()) {
      warnings.add(
          Sentence.of("Not read at {} THD but below it: {}.", limit, each(below, this::atThd)));
    }
    List<PublishedPower> unknown = marked(Mark.LIMIT_NOT_KNOWN);
    if (!unknown.isEmpty()) {
      warnings.add(
          Sentence.of(
              "Not known at what distortion, with no THD read and nothing said: {}.",
              loads(unknown)));
    }
  }

  private String atThd(PublishedPower power) {
    OptionalDouble thd = power.conditions().thdPercent();
    return thd.isPresent()
        ? Sentence.of(
            "{} at {}", ResultWords.load(power), PRINTER.exact(thd.getAsDouble(), Unit.PERCENT))
        : Sentence.of("{} by the operator's word", ResultWords.load(power));
  }

  private void supply() {
    String asked = PRINTER.exact(state.opened().sequence().supplyVolts(), Unit.VOLT);
    List<PublishedPower> off = marked(Mark.SUPPLY_OFF);
    if (off.size() == 1) {
      warnings.add(
          Sentence.of(
              "{} was read at {} at the amplifier; {} was asked for.",
              ResultWords.load(off.get(0)),
              volts(off.get(0)),
              asked));
    } else if (!off.isEmpty()) {
      warnings.add(
          Sentence.of(
              "{} was asked for at the amplifier and not held: {}.",
              asked,
              each(off, p -> Sentence.of("{} at {}", ResultWords.load(p), volts(p)))));
    }
  }

  /** Returns the volts of each run that a power rests on and whose supply was off. */
  private String volts(PublishedPower power) {
    return runs(power, Mark.SUPPLY_OFF)
        .map(run -> PRINTER.exact(run.conditions().supplyVolts().orElseThrow(), Unit.VOLT))
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private Stream<StepResult> runs(PublishedPower power, Mark mark) {
    return result.steps().stream()
        .filter(run -> power.runs().contains(run.stepId()) && run.marks().contains(mark));
  }

  private static String practice(long seed) {
    return Sentence.of("Practice: a simulated amplifier (seed {}), not a measurement.", seed);
  }

  private List<PublishedPower> marked(Mark mark) {
    return result.published().values().stream().filter(p -> p.marks().contains(mark)).toList();
  }

  /** Names a step by its load; a load that was read more than once also by the step. */
  private String name(String stepId) {
    Optional<StepResult> step = result.step(stepId).filter(SheetWarnings::isLoaded);
    if (step.isEmpty()) {
      return stepId;
    }
    String load = ResultWords.load(step.get().mode(), step.get().ohms());
    long runs =
        result.steps().stream()
            .filter(SheetWarnings::isLoaded)
            .map(run -> ResultWords.load(run.mode(), run.ohms()))
            .filter(load::equals)
            .count();
    return runs == 1 ? load : Sentence.of("{} ({})", load, stepId);
  }

  private static boolean isLoaded(StepResult step) {
    return step.watts().isPresent();
  }

  private static String loads(List<PublishedPower> powers) {
    return each(powers, ResultWords::load);
  }

  private static String each(List<PublishedPower> powers, Function<PublishedPower, String> words) {
    return powers.stream().map(words).collect(Collectors.joining(", "));
  }
}
