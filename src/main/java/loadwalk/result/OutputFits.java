package loadwalk.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.numeric.LinearFit;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/**
 * Fits V(R) = E·R/(R + r) to the volts at the limit.
 *
 * <p>1/V = 1/E + (r/E)·(1/R) is a straight line in 1/R, fitted with equal weights: at equal
 * relative uncertainty, 1/V is known about equally well everywhere. A bridged load R counts as R/2
 * at V/2 for each channel. The slope and intercept are sums over the points, so each source of
 * uncertainty in a point carries through to them with its sign. With more than two points, their
 * scatter about the line is added (JCGM 100:2008, H.3).
 */
final class OutputFits {
  private OutputFits() {}

  /** Returns the fit through the steps; empty with fewer than two different loads. */
  static Optional<OutputFit> of(List<StepResult> steps) {
    List<Point> points = new ArrayList<>();
    for (StepResult step : steps) {
      Point point = Point.of(step);
      if (point.volts().value() > ReadingUncertainty.LEAST) {
        points.add(point);
      }
    }
    boolean different =
        points.stream()
            .anyMatch(p -> !StepResult.sameOhms(p.ohms().value(), points.get(0).ohms().value()));
    return different ? fit(points) : Optional.empty();
  }

  private static Optional<OutputFit> fit(List<Point> points) {
    double[] x = points.stream().mapToDouble(p -> 1 / p.ohms().value()).toArray();
    double[] y = points.stream().mapToDouble(p -> 1 / p.volts().value()).toArray();
    LinearFit line = LinearFit.line(x, y);
    if (!(line.intercept() > 0)) {
      return Optional.empty();
    }
    Quantity slope = Quantity.exact(0, Unit.ONE);
    Quantity mean = Quantity.exact(0, Unit.ONE);
    for (int i = 0; i < x.length; i++) {
      Quantity inverse = points.get(i).inverse(line.slope());
      slope = slope.plus(inverse.scaledBy((x[i] - line.centre()) / line.spread()));
      mean = mean.plus(inverse.scaledBy(1.0 / x.length));
    }
    Quantity intercept = mean.minus(slope.scaledBy(line.centre()));
    double a = line.intercept();
    double r = line.slope() / a;
    Quantity open = intercept.mapped(1 / a, -1 / (a * a), Unit.VOLT);
    Quantity series = slope.minus(intercept.scaledBy(r)).mapped(r, 1 / a, Unit.OHM);
    if (line.hasScatter()) {
      open = open.withPart("scatter about the fit", line.interceptU() / (a * a));
      series = series.withPart("scatter about the fit", ratioScatter(line, r));
    }
    OutputFit fit =
        new OutputFit(open, series, points.stream().map(Point::stepId).toList(), worst(line, x, y));
    return Optional.of(fit);
  }

  /**
   * Returns the standard uncertainty of slope/intercept that comes from the scatter of the points.
   */
  private static double ratioScatter(LinearFit line, double r) {
    double a = line.intercept();
    double variance =
        Math.pow(line.slopeU(), 2) + Math.pow(r * line.interceptU(), 2) - 2 * r * line.covariance();
    return Math.sqrt(Math.max(0, variance)) / a;
  }

  private static double worst(LinearFit line, double[] x, double[] y) {
    double worst = 0;
    for (int i = 0; i < x.length; i++) {
      worst = Math.max(worst, Math.abs(y[i] / line.at(x[i]) - 1));
    }
    return worst;
  }

  /** One channel's volts into its load. */
  private record Point(String stepId, Quantity volts, Quantity ohms) {
    static Point of(StepResult step) {
      double part = step.mode() == Mode.BRIDGED ? 0.5 : 1;
      return new Point(
          step.stepId(),
          step.outputVolts().orElseThrow().scaledBy(part),
          step.loadOhms().orElseThrow().scaledBy(part));
    }

    /** Returns 1/V, with the error of 1/R converted to an error of 1/V along the line. */
    Quantity inverse(double slope) {
      double v = volts.value();
      double r = ohms.value();
      return volts
          .mapped(1 / v, -1 / (v * v), Unit.ONE)
          .plus(ohms.mapped(0, slope / (r * r), Unit.ONE));
    }
  }
}
