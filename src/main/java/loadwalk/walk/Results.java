package loadwalk.walk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.result.MeasuredStep;
import loadwalk.result.ResultComputation;
import loadwalk.result.TakenReading;
import loadwalk.result.WalkResult;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Computes the results of the readings of a walk so far. */
public final class Results {
  private Results() {}

  /**
   * Returns the results of every step that has readings, doubted ones included.
   *
   * @param wire the wire data for the leads, from the rules in force
   */
  public static WalkResult of(WalkState state, Wire wire) {
    Sequence sequence = state.opened().sequence();
    return ResultComputation.walk(
        state.opened().amplifier(),
        state.opened().bench(),
        sequence.limitThdPercent(),
        sequence.supplyVolts(),
        sequence.toneHertz(),
        wire,
        state.opened().repeatability(),
        taken(state));
  }

  /** Returns the raw readings of every step that has any and did not end before its limit. */
  public static List<MeasuredStep> taken(WalkState state) {
    List<MeasuredStep> steps = new ArrayList<>();
    for (PlannedStep planned : state.plan()) {
      StepState step = state.step(planned.id());
      Optional<Target> target = Targets.of(state, planned);
      boolean counts = step.status() != StepState.Status.SKIPPED && step.ended().isEmpty();
      if (target.isPresent() && step.entryCount() > 0 && counts) {
        steps.add(taken(state, planned, target.get()));
      }
    }
    return steps;
  }

  private static TakenReading taken(ReadingId id, Entry entry, StepState step) {
    Optional<Capture> capture = step.captureOf(entry);
    if (capture.isPresent()) {
      double own = id == ReadingId.OUTPUT_VOLTS ? capture.get().scatterVolts() : 0;
      return new TakenReading(
          id,
          entry.value(),
          entry.resolution(),
          own,
          Double.POSITIVE_INFINITY,
          capture.map(Results::calibration));
    }
    return taken(id, entry);
  }

  /** Returns an entry that comes from no wave, with its scatter if a meter gave one. */
  public static TakenReading taken(ReadingId id, Entry entry) {
    return entry
        .instrument()
        .filter(from -> from.count() > 1)
        .map(
            from ->
                new TakenReading(
                    id, entry.value(), entry.resolution(), from.scatter(), from.count() - 1))
        .orElseGet(() -> new TakenReading(id, entry.value(), entry.resolution()));
  }

  private static TakenReading.Captured calibration(Capture capture) {
    String which =
        Sentence.of(
            "{}, {} V per unit", capture.calibration(), String.valueOf(capture.voltsPerUnit()));
    return new TakenReading.Captured(which, capture.calibrationU());
  }

  private static MeasuredStep taken(WalkState state, PlannedStep planned, Target target) {
    StepState step = state.step(planned.id());
    Map<ReadingId, TakenReading> readings = new EnumMap<>(ReadingId.class);
    step.latest().forEach((id, e) -> readings.put(id, taken(id, e, step)));
    step.captureOfOutput().ifPresent(capture -> addOf(capture, readings));
    boolean idle = target.kind() == Target.Kind.IDLE;
    return new MeasuredStep(
        target.stepId(),
        target.kind(),
        idle ? Mode.STEREO : target.mode(),
        target.ohms(),
        readings,
        step.pairs(),
        state.context(planned).repeated().map(PlannedStep::id),
        StepCircumstances.of(state, planned));
  }

  /** Adds the tone of the wave that the output was taken from, where no other was read. */
  private static void addOf(Capture capture, Map<ReadingId, TakenReading> readings) {
    readings.putIfAbsent(
        ReadingId.FREQUENCY_HERTZ, new TakenReading(ReadingId.FREQUENCY_HERTZ, capture.hertz(), 0));
  }
}
