package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.forecast.Forecast;
import loadwalk.journal.Soundness;
import loadwalk.plan.Rules;
import loadwalk.result.PublishedPower;
import loadwalk.result.Remark;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Results;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Gathers a sheet from a walk. */
final class SheetFold {
  private final WalkState state;
  private final Soundness soundness;
  private final SheetOptions options;
  private final WalkResult result;

  SheetFold(WalkState state, Soundness soundness, SheetOptions options, Rules rules) {
    this.state = state;
    this.soundness = soundness;
    this.options = options;
    this.result = Results.of(state, rules.wire());
  }

  Sheet sheet() {
    Amplifier amplifier = state.opened().amplifier();
    boolean keptBack = amplifier.serial().isPresent() && !options.showSerial();
    return new Sheet(
        state.opened().walk(),
        state.opened().version(),
        state.opened().practiceSeed(),
        state.lastWallMillis(),
        keptBack ? withoutSerial(amplifier) : amplifier,
        keptBack,
        state.opened().bench(),
        state.opened().sequence(),
        state.isFinished(),
        soundness,
        SheetWarnings.of(state, soundness, result),
        loads(),
        state.plan().stream().map(this::step).toList(),
        result,
        new WalkRecordFold(state, options).walkRecord(),
        assumptions(),
        budgetOf());
  }

  private static Amplifier withoutSerial(Amplifier a) {
    return new Amplifier(
        a.maker(),
        a.model(),
        Optional.empty(),
        a.year(),
        a.amplifierClass(),
        a.channels(),
        a.ratings(),
        a.minimumStereoOhms(),
        a.minimumBridgedOhms(),
        a.fuses(),
        a.regulated());
  }

  private List<Sheet.LoadLine> loads() {
    List<Sheet.LoadLine> lines = new ArrayList<>();
    for (PublishedPower power : result.published().values()) {
      Optional<Forecast> brief = state.step(power.fromStepId()).brief();
      lines.add(
          new Sheet.LoadLine(power, power.rating(), brief.flatMap(b -> b.demand().loadWatts())));
    }
    return lines;
  }

  private Sheet.StepLine step(PlannedStep planned) {
    StepState step = state.step(planned.id());
    List<Sheet.ReadingLine> readings = new ArrayList<>();
    step.latest()
        .forEach(
            (id, entry) ->
                readings.add(
                    new Sheet.ReadingLine(
                        id,
                        entry.text(),
                        entry.value(),
                        entry.resolution(),
                        step.brief().flatMap(b -> b.band(id)))));
    OptionalDouble armed = step.armedOhms();
    return new Sheet.StepLine(
        planned.id(),
        planned.step().verb(),
        planned.instruction(state.context(planned)),
        step.status(),
        step.brief(),
        armed,
        state.context(planned).repeated().map(PlannedStep::id),
        step.criterion(state.opened().sequence().limitThdPercent()),
        readings,
        step.pairs(),
        result.step(planned.id()),
        step.captureOfOutput(),
        Targets.of(state, planned).flatMap(target -> step.outcome()));
  }

  /** Returns each remark once, with the steps it applies to. */
  private List<Sheet.Assumption> assumptions() {
    Map<Remark, List<String>> byRemark = new LinkedHashMap<>();
    result.remarks().forEach(r -> byRemark.put(r, new ArrayList<>()));
    for (StepResult step : result.steps()) {
      step.remarks()
          .forEach(r -> byRemark.computeIfAbsent(r, key -> new ArrayList<>()).add(step.stepId()));
    }
    List<Sheet.Assumption> all = new ArrayList<>();
    byRemark.forEach((remark, steps) -> all.add(new Sheet.Assumption(remark, steps)));
    return all;
  }

  /** Returns the most power published, whose budget is written out as an example. */
  private Optional<PublishedPower> budgetOf() {
    return result.published().values().stream()
        .max(Comparator.comparingDouble(p -> p.totalWatts().value()))
        .filter(p -> !p.budget().isEmpty());
  }
}
