package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;
import loadwalk.result.LimitPair;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/** Handles the operator's intents about a step while the walk runs. */
final class Steps {
  private static final int REASON_LETTERS = 3;

  private static final String NO_POINT =
      "Nobody read the THD or said at what point the output was read, so the result will not be"
          + " ranked or judged.";

  private static final String FIND_CAUSE =
      "Output down, supply off. Find the cause before you drive the amplifier again.";

  private final Entries entries;
  private final StartOverride override;

  Steps(Entries entries, StartOverride override) {
    this.entries = entries;
    this.override = override;
  }

  Next enter(
      Model model,
      String step,
      Map<ReadingId, String> texts,
      Map<ReadingId, Instrument> instruments) {
    return entries.enter(model, step, texts, instruments);
  }

  Next take(Model model, Intent.TakeCapture take) {
    return Captures.take(entries, model, take);
  }

  static Next pause(Model model) {
    List<Fact> facts = new ArrayList<>(WarmClock.soFar(model));
    facts.add(new Fact.Paused());
    return Next.keeping(model, facts);
  }

  Next begin(Model model, PlannedStep planned) {
    Optional<String> refusal = Gate.refusal(model.state(), override);
    return refusal.isPresent()
        ? Next.refused(model, refusal.get())
        : Next.keeping(model, List.of(new Fact.Begun(planned.id())));
  }

  /**
   * Arms the step and starts it if nothing else holds it. A clear step needs no typed load; if one
   * is typed, it must match the step's load.
   */
  Next arm(Model model, PlannedStep planned, String text) {
    Optional<Target> target = Targets.of(model.state(), planned);
    StepState step = model.state().step(planned.id());
    if (target.isEmpty() || step.status() != Status.BRIEFED) {
      return Next.refused(model, Sentence.of("{} is not waiting to be armed.", planned.id()));
    }
    boolean needsArming = Gate.needsArming(model.state(), planned);
    if (!needsArming && (text.isBlank() || !Gate.loads(target.get()))) {
      return begin(model, planned);
    }
    Typed typed = EntryParser.parse(text, Unit.OHM);
    if (typed.problem().isPresent()) {
      return Next.refused(model, typed.problem().get());
    }
    double ohms = typed.number().orElseThrow().value();
    Optional<String> problem = Gate.armProblem(target.get(), ohms);
    if (problem.isPresent()) {
      return Next.refused(model, problem.get());
    }
    Fact armed = new Fact.Armed(planned.id(), text, ohms);
    WalkState then = armed.applyTo(model.state(), model.clock().wallMillis());
    Optional<String> refusal = Gate.refusal(then, override);
    return refusal.isPresent()
        ? Next.refused(model, refusal.get())
        : Next.keeping(model, List.of(armed, new Fact.Begun(planned.id())));
  }

  static Next lift(Model model, PlannedStep planned, String reason) {
    StepState step = model.state().step(planned.id());
    boolean halted =
        step.status() == Status.BRIEFED
            && step.brief().filter(b -> b.verdict() == Verdict.HALT).isPresent();
    if (!halted) {
      return Next.refused(model, "There is no halt to lift.");
    }
    if (isTooShort(reason)) {
      return Next.refused(model, "Give a reason in words to lift a halt.");
    }
    List<String> codes =
        step.brief().orElseThrow().cautions().stream()
            .filter(c -> c.gravity() == Verdict.HALT)
            .map(Caution::code)
            .toList();
    return Next.keeping(model, List.of(new Fact.HaltLifted(planned.id(), codes, reason.strip())));
  }

  static Next standBy(Model model, Intent.StandBy stand) {
    boolean open =
        model.state().step(stand.step()).latest(stand.reading()).filter(Entry::isOpen).isPresent();
    if (!open) {
      return Next.refused(model, "There is no open doubt on that reading.");
    }
    return isTooShort(stand.reason())
        ? Next.refused(model, "Say in words why you stand by the reading.")
        : Next.keeping(
            model,
            List.of(new Fact.StoodBy(stand.step(), stand.reading(), stand.reason().strip())));
  }

  static Next say(Model model, Intent.SetCriterion point) {
    WalkState state = model.state();
    StepState step = state.step(point.step());
    Optional<String> early = Entries.refusal(step);
    if (early.isPresent()) {
      return Next.refused(model, Sentence.of("The point is not kept: {}.", early.get()));
    }
    if (state.planned(point.step()).filter(p -> Targets.isAtALimit(state, p)).isEmpty()) {
      return Next.refused(model, Sentence.of("{} reads no output at a limit.", point.step()));
    }
    double limit = state.opened().sequence().limitThdPercent();
    Optional<String> refusal = PointOfReading.refusal(step, point.criterion(), limit);
    return refusal.isPresent()
        ? Next.refused(model, refusal.get())
        : Next.keeping(model, List.of(new Fact.CriterionSet(point.step(), point.criterion())));
  }

  static Next addPair(Model model, Intent.AddPair pair) {
    Optional<String> early = Entries.refusal(model.state().step(pair.step()));
    if (early.isPresent()) {
      return Next.refused(model, Sentence.of("The pair is not kept: {}.", early.get()));
    }
    Typed volts = EntryParser.parse(pair.voltsText(), Unit.VOLT);
    Typed thd = EntryParser.parse(pair.thdText(), Unit.PERCENT);
    Optional<String> wrong = volts.problem().or(thd::problem);
    if (wrong.isPresent()) {
      return Next.refused(model, wrong.get());
    }
    double v = volts.number().orElseThrow().value();
    double t = thd.number().orElseThrow().value();
    return v > 0 && t > 0
        ? Next.keeping(model, List.of(new Fact.PairAdded(pair.step(), new LimitPair(v, t))))
        : Next.refused(model, "Both the volts and the THD of a pair must be above zero.");
  }

  Next finish(Model model, PlannedStep planned) {
    StepState step = model.state().step(planned.id());
    boolean confirmed = planned.step().isConfirmed() && step.status() == Status.BRIEFED;
    if (step.status() != Status.RUNNING && !confirmed) {
      return Next.refused(model, Sentence.of("{} is not running.", planned.id()));
    }
    Optional<String> missing = missing(model, planned);
    if (missing.isPresent()) {
      return Next.refused(model, missing.get());
    }
    List<Fact> late =
        Targets.of(model.state(), planned)
            .map(t -> entries.atEnd(model.state(), t))
            .orElse(List.of());
    if (!late.isEmpty()) {
      return Next.keeping(model.saying("Read the doubt first, then finish the step again."), late);
    }
    Fact done = new Fact.Done(planned.id());
    if (isFirstWithoutPoint(model.state(), planned)) {
      return Next.keeping(model.saying(NO_POINT), List.of(done));
    }
    return planned.step().warmUp().isPresent()
        ? Next.keeping(
            model, List.of(new Fact.Warmed(planned.id(), model.clock().warmSeconds()), done))
        : Next.keeping(model, List.of(done));
  }

  /**
   * Tells whether this is the first loaded step of which nobody knows at what point it was read.
   */
  private static boolean isFirstWithoutPoint(WalkState state, PlannedStep planned) {
    boolean before =
        state.plan().stream()
            .filter(p -> state.step(p.id()).status() == Status.DONE)
            .anyMatch(p -> Targets.isWithoutPoint(state, p));
    return !before && Targets.isWithoutPoint(state, planned);
  }

  private Optional<String> missing(Model model, PlannedStep planned) {
    WalkState state = model.state();
    if (planned.step().warmUp().isPresent()) {
      return override == StartOverride.REHEARSED
          ? Optional.empty()
          : warmMissing(Steadiness.of(state, planned, model.clock().warmSeconds()));
    }
    StepState step = state.step(planned.id());
    return Targets.of(state, planned).stream()
        .flatMap(t -> planned.step().required().stream())
        .filter(id -> !isIn(step, id))
        .findFirst()
        .map(id -> Sentence.of("Enter the {} first, or skip the step with a reason.", id.label()));
  }

  private static Optional<String> warmMissing(Steadiness now) {
    if (now.isSteady()) {
      return Optional.empty();
    }
    return Optional.of(
        now.clockDone()
            ? Sentence.of(
                "Not steady yet: wait, or end early with a reason. {}", SteadinessWords.now(now))
            : "The warm-up time is not up. Wait, or end early with a reason.");
  }

  private static boolean isIn(StepState step, ReadingId id) {
    boolean watts = id == ReadingId.OUTPUT_VOLTS && step.latest(ReadingId.OUTPUT_WATTS).isPresent();
    return watts || step.latest(id).isPresent();
  }

  static Next endEarly(Model model, PlannedStep planned, String reason) {
    boolean running = model.state().step(planned.id()).status() == Status.RUNNING;
    if (!running || planned.step().warmUp().isEmpty()) {
      return Next.refused(model, "No warm-up is running.");
    }
    return isTooShort(reason)
        ? Next.refused(model, "Give a reason in words to end a warm-up early.")
        : Next.keeping(
            model,
            List.of(
                new Fact.Warmed(planned.id(), model.clock().warmSeconds()),
                new Fact.EndedEarly(planned.id(), reason.strip()),
                new Fact.Done(planned.id())));
  }

  static Next endAs(Model model, PlannedStep planned, Intent.EndAs end) {
    boolean running = model.state().step(planned.id()).status() == Status.RUNNING;
    boolean drives = Targets.of(model.state(), planned).filter(Gate::loads).isPresent();
    if (!running || !drives) {
      return Next.refused(
          model, "Only a step that runs and drives a load ends like this; skip it instead.");
    }
    List<Fact> facts = new ArrayList<>(WarmClock.soFar(model));
    facts.add(new Fact.Ended(planned.id(), end.outcome(), end.text().strip()));
    return Next.keeping(
        end.outcome() == Outcome.NOT_REACHED ? model : model.saying(FIND_CAUSE), facts);
  }

  static Next skip(Model model, PlannedStep planned, String reason) {
    if (isTooShort(reason) && !planned.step().isOptional()) {
      return Next.refused(model, "Give a reason in words to skip this step.");
    }
    String why = reason.isBlank() ? "optional" : reason.strip();
    return Next.keeping(model, List.of(new Fact.Skipped(planned.id(), why)));
  }

  static Next warmAgain(Model model, PlannedStep planned) {
    List<PlannedStep> before =
        model.state().plan().subList(0, model.state().plan().indexOf(planned) + 1);
    Optional<PlannedStep> warm =
        before.stream()
            .filter(p -> p.step().warmUp().isPresent())
            .reduce((first, second) -> second);
    return warm.isEmpty()
        ? Next.refused(model, Sentence.of("This sequence has no warm-up before {}.", planned.id()))
        : Next.keeping(model, List.of(new Fact.WarmAgain(warm.get().id())));
  }

  static Next note(Model model, Intent.Note note) {
    return note.text().isBlank()
        ? Next.quiet(model)
        : Next.keeping(
            model, List.of(new Fact.Noted(model.state().currentId(), note.text().strip())));
  }

  static Next controls(Model model, String text) {
    return text.isBlank()
        ? Next.refused(model, "Say in words how gain and controls are set.")
        : Next.keeping(model, List.of(new Fact.ControlsSet(text.strip())));
  }

  static Next attach(Model model, Intent.Attach attach) {
    if (attach.path().isBlank()) {
      return Next.refused(model, "Type the path of a PNG or JPEG, then what it shows.");
    }
    if (isTooShort(attach.caption())) {
      return Next.refused(model, "After the path, say in words what the photo shows.");
    }
    String walk = model.state().opened().walk();
    return Next.quiet(model).and(new Effect.KeepPhoto(walk, attach.path(), attach.caption()));
  }

  private static boolean isTooShort(String reason) {
    return reason.chars().filter(Character::isLetter).count() < REASON_LETTERS;
  }
}
