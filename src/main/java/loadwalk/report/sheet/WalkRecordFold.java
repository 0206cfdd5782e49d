package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Verdict;
import loadwalk.report.sheet.Sheet.Answer;
import loadwalk.result.ResultComputation;
import loadwalk.result.TakenReading;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.WarmUp;
import loadwalk.walk.Results;
import loadwalk.walk.Steadiness;
import loadwalk.walk.Targets;
import loadwalk.walk.WarmRun;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Gathers what happened during a walk. */
final class WalkRecordFold {
  private static final Set<ReadingId> OUTPUTS =
      EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.OUTPUT_WATTS);

  private final WalkState state;
  private final SheetOptions options;
  private final List<Sheet.DoubtLine> doubts = new ArrayList<>();
  private final List<Sheet.Amendment> amendments = new ArrayList<>();
  private final List<Sheet.Lift> lifts = new ArrayList<>();
  private final List<Sheet.Skip> skips = new ArrayList<>();
  private final List<Sheet.WarmUp> warmUps = new ArrayList<>();

  WalkRecordFold(WalkState state, SheetOptions options) {
    this.state = state;
    this.options = options;
  }

  Sheet.WalkRecord walkRecord() {
    for (PlannedStep planned : state.plan()) {
      StepState step = state.step(planned.id());
      entries(planned.id(), step, planned.step().warmUp().isPresent());
      lift(planned.id(), step);
      if (step.status() == StepState.Status.SKIPPED) {
        skips.add(new Sheet.Skip(planned.id(), step.reason().orElseThrow()));
      }
      planned.step().warmUp().ifPresent(warm -> warmUps.add(warmUp(planned.id(), warm, step)));
    }
    return new Sheet.WalkRecord(
        doubts,
        amendments,
        lifts,
        skips,
        Targets.ended(state).stream().map(this::ended).toList(),
        warmUps,
        state.notes(),
        state.attachments().stream().map(this::photo).toList(),
        state.stops(),
        state.cooled(),
        state.controls());
  }

  private Sheet.Ended ended(EndedStep ended) {
    Target target = ended.target();
    boolean rated = target.kind() == Target.Kind.LOADED;
    Optional<Rating> rating =
        state.opened().amplifier().rating(target.mode(), target.ohms()).filter(r -> rated);
    return new Sheet.Ended(
        ended,
        state.step(target.stepId()).reason().orElse(""),
        rating.map(r -> OptionalDouble.of(r.watts())).orElseGet(OptionalDouble::empty));
  }

  private Sheet.Photo photo(WalkState.Attachment attachment) {
    return new Sheet.Photo(
        attachment, Optional.ofNullable(options.pictures().get(attachment.sha256())));
  }

  /** Gathers the doubts and amendments of a step; a temperature log of a warm-up amends nothing. */
  private void entries(String stepId, StepState step, boolean warmUp) {
    for (Map.Entry<ReadingId, List<Entry>> e : step.entries().entrySet()) {
      for (Entry entry : e.getValue()) {
        for (Doubt doubt : entry.doubts()) {
          doubts.add(doubtLine(stepId, step, e.getKey(), entry, doubt));
        }
      }
      boolean log = warmUp && e.getKey() == ReadingId.SINK_CELSIUS;
      List<Entry> all = inOrder(step, e.getKey());
      List<String> typed = changes(step, all);
      if (typed.size() > 1 && !log && step.latest(e.getKey()).isPresent()) {
        amendments.add(new Sheet.Amendment(stepId, e.getKey(), typed));
      }
    }
  }

  /** Returns every value as typed; one that was only typed again, to the same digit, once. */
  private static List<String> changes(StepState step, List<Entry> entries) {
    List<String> typed = new ArrayList<>();
    Entry last = null;
    for (Entry entry : entries) {
      if (last == null || !isSame(step, last, entry)) {
        typed.add(entry.text());
      }
      last = entry;
    }
    return typed;
  }

  private static boolean isSame(StepState step, Entry one, Entry other) {
    boolean sameUnit =
        step.entries().values().stream().anyMatch(list -> list.containsAll(List.of(one, other)));
    return sameUnit && one.value() == other.value() && one.resolution() == other.resolution();
  }

  private static Sheet.DoubtLine doubtLine(
      String stepId, StepState step, ReadingId id, Entry entry, Doubt doubt) {
    Optional<Entry> next =
        inOrder(step, id).stream().filter(e -> e.order() > entry.order()).findFirst();
    Answer answer = Answer.OPEN;
    String detail = "";
    if (entry.stoodBy().isPresent()) {
      answer = Answer.STOOD_BY;
      detail = entry.stoodBy().get();
    } else if (entry.point().isPresent()) {
      answer = Answer.POINT_SAID;
      detail = entry.point().get().text();
    } else if (next.isPresent()) {
      boolean sameUnit = step.entries().get(id).contains(next.get());
      boolean same = sameUnit && next.get().value() == entry.value();
      answer = same ? Answer.KEPT : Answer.AMENDED;
      detail = next.get().text();
    } else if (step.ended().isPresent()) {
      answer = Answer.ENDED;
    }
    return new Sheet.DoubtLine(stepId, id, entry.text(), doubt, answer, detail);
  }

  /**
   * Returns every entry of a reading in the order they were made; output volts and watts are one
   * reading, so either amends the other and answers its doubt.
   */
  private static List<Entry> inOrder(StepState step, ReadingId id) {
    Set<ReadingId> ids = OUTPUTS.contains(id) ? OUTPUTS : Set.of(id);
    return ids.stream()
        .flatMap(same -> step.entries().getOrDefault(same, List.of()).stream())
        .sorted(Comparator.comparingInt(Entry::order))
        .toList();
  }

  private void lift(String stepId, StepState step) {
    if (step.liftReason().isEmpty()) {
      return;
    }
    List<String> halts =
        step.brief().stream()
            .flatMap(b -> b.cautions().stream())
            .filter(c -> c.gravity() == Verdict.HALT)
            .map(Caution::text)
            .toList();
    lifts.add(new Sheet.Lift(stepId, halts, step.liftReason().get()));
  }

  private Sheet.WarmUp warmUp(String stepId, WarmUp warm, StepState step) {
    List<Sheet.Temperature> temperatures = lastRun(stepId, step);
    boolean done = step.status() == StepState.Status.DONE;
    return new Sheet.WarmUp(
        stepId,
        warm.minutes(),
        step.warmSeconds(),
        step.status(),
        done ? step.reason() : Optional.empty(),
        temperatures,
        WarmRun.of(step).settling(),
        Steadiness.of(warm, WarmRun.of(step).sinceRest(), step.warmSeconds()));
  }

  /** Returns the temperatures since the clock last restarted, at most one for each moment. */
  private List<Sheet.Temperature> lastRun(String stepId, StepState step) {
    List<Sheet.Temperature> run = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (Entry e : step.entries().getOrDefault(ReadingId.SINK_CELSIUS, List.of())) {
      if (e.warmSeconds() < last) {
        run.clear();
      } else if (e.warmSeconds() == last) {
        run.remove(run.size() - 1);
      }
      run.add(new Sheet.Temperature(e.warmSeconds() / 60, e.value(), u(stepId, e)));
      last = e.warmSeconds();
    }
    return run;
  }

  private double u(String stepId, Entry e) {
    TakenReading taken = Results.taken(ReadingId.SINK_CELSIUS, e);
    double tone = state.opened().sequence().toneHertz();
    return ResultComputation.reading(state.opened().bench(), tone, stepId, taken).u();
  }
}
