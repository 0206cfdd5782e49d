package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.doubt.ConditionDoubts;
import loadwalk.forecast.doubt.ConditionDoubts.Side;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.StepState;

/** Holds the distortion read at an output against the point that the operator named. */
final class PointOfReading {
  private PointOfReading() {}

  /**
   * Returns the doubts on a step's readings that follow from what was asked or said.
   *
   * @param entries the values that count, those just typed among them
   * @param instruments what those just typed were read from
   * @param limit the limit of the walk, percent
   */
  static List<Doubt> doubts(
      StepState step,
      Target target,
      Map<ReadingId, Double> entries,
      Map<ReadingId, Instrument> instruments,
      double limit) {
    List<Doubt> doubts = new ArrayList<>();
    Double thd = entries.get(ReadingId.THD_PERCENT);
    if (thd != null && step.pairs().isEmpty() && target.kind() == Target.Kind.LOADED) {
      contradicted(thd, limit, step.said())
          .ifPresent(side -> doubts.add(ConditionDoubts.thd(thd, limit, side, target)));
    }
    boolean clipped =
        Optional.ofNullable(instruments.get(ReadingId.OUTPUT_VOLTS))
            .flatMap(step::captureOf)
            .filter(Capture::isOverdriven)
            .isPresent();
    if (clipped) {
      doubts.add(ConditionDoubts.recorder(target));
    }
    return doubts;
  }

  /** Returns why the point that the operator names cannot stand beside the distortion read. */
  static Optional<String> refusal(StepState step, Criterion said, double limit) {
    Optional<Double> thd = step.latest(ReadingId.THD_PERCENT).map(entry -> entry.value());
    return thd.filter(percent -> step.pairs().isEmpty())
        .flatMap(
            percent ->
                contradicted(percent, limit, Optional.of(said))
                    .map(side -> ConditionDoubts.sentence(percent, limit, side)));
  }

  /** The onset of clipping is seen, not read, so a low distortion does not contradict it. */
  private static Optional<Side> contradicted(
      double thdPercent, double limit, Optional<Criterion> said) {
    Criterion read = Criterion.reached(OptionalDouble.of(thdPercent), limit, Optional.empty());
    boolean fits = said.filter(point -> point == read).isPresent();
    boolean onset = said.filter(point -> point == Criterion.CLIPPING_ONSET).isPresent();
    if (fits) {
      return Optional.empty();
    }
    if (read == Criterion.ABOVE_LIMIT) {
      return Optional.of(Side.ABOVE);
    }
    return said.isEmpty() || onset
        ? Optional.empty()
        : Optional.of(read == Criterion.BELOW_LIMIT ? Side.BELOW : Side.AT);
  }
}
