package loadwalk.result;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.numeric.LogInterpolation;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Finds the volts at the limit from points near it, with {@link LogInterpolation}.
 *
 * <p>Errors common to all points are kept apart from what the interpolation adds. The gain of the
 * voltmeter scales the result. An error of the distortion meter that is common to all points acts
 * like a different limit, so it moves the volts along the curve.
 */
final class LimitVolts {
  /**
   * Half-width assumed for a distortion meter that the bench does not list, percent of reading.
   * Common practice, no source.
   */
  private static final double ASSUMED_THD_PERCENT = 10;

  /** Change of the limit used to find the slope of volts against ln THD, a fraction. */
  private static final double SLOPE_STEP = 1e-4;

  private final Bench bench;
  private final ReadingUncertainty readings;
  private final List<Remark> remarks;

  LimitVolts(Bench bench, ReadingUncertainty readings, List<Remark> remarks) {
    this.bench = bench;
    this.readings = readings;
    this.remarks = remarks;
  }

  /** Returns the volts at the limit; empty, with a remark, if the points do not determine them. */
  Optional<Quantity> of(MeasuredStep step, double limitThdPercent) {
    List<LogInterpolation.Point> points =
        step.pairs().stream()
            .map(p -> new LogInterpolation.Point(p.volts(), 0, p.thdPercent(), 0))
            .toList();
    LogInterpolation result = LogInterpolation.at(limitThdPercent, points);
    result.missing().ifPresent(s -> remarks.add(new Remark("limit-not-interpolated", s)));
    if (result.found().isEmpty()) {
      return Optional.empty();
    }
    LogInterpolation.Found found = result.found().get();
    remarks.add(
        new Remark(
            "limit-interpolated",
            Sentence.of(
                "the volts at {} THD are interpolated from {} points near it",
                Printer.UTF8.exact(limitThdPercent, Unit.PERCENT),
                points.size())));
    double resolution =
        step.reading(ReadingId.OUTPUT_VOLTS).map(TakenReading::resolution).orElse(0.0);
    double slope = slope(limitThdPercent, points, found.volts());
    Quantity volts =
        readings.of(new TakenReading(ReadingId.OUTPUT_VOLTS, found.volts(), resolution));
    return Optional.of(
        volts
            .withPart(Sentence.of("{} limit interpolation", step.stepId()), found.u())
            .withRectangular(thdSource(), slope * relativeHalfWidth(limitThdPercent)));
  }

  /** Returns dV/d(ln THD) at the limit, taken on the side that has points; 0 at the last point. */
  private static double slope(double limit, List<LogInterpolation.Point> points, double volts) {
    for (double way : new double[] {1, -1}) {
      Optional<LogInterpolation.Found> moved =
          LogInterpolation.at(limit * (1 + way * SLOPE_STEP), points).found();
      if (moved.isPresent()) {
        return Math.abs(moved.get().volts() - volts) / SLOPE_STEP;
      }
    }
    return 0;
  }

  private double relativeHalfWidth(double limit) {
    Optional<Meter> meter = bench.meterFor(ReadingId.THD_PERCENT);
    if (meter.isEmpty()) {
      remarks.add(
          new Remark("thd-meter-assumed", "no THD meter is entered: taken as ±10 % of reading"));
    }
    double halfWidth = meter.map(m -> m.halfWidth(limit)).orElse(limit * ASSUMED_THD_PERCENT / 100);
    return halfWidth / limit;
  }

  private String thdSource() {
    return Sentence.of(
        "{} THD at the limit",
        bench.meterFor(ReadingId.THD_PERCENT).map(Meter::label).orElse("assumed meter"));
  }
}
