package loadwalk.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/**
 * Finds the volts at the limit between two points, the logarithm of THD taken as straight against
 * volts.
 *
 * <p>Near clipping THD grows by orders of magnitude over a few percent of volts, so its logarithm
 * is the straighter line (common practice, no source). How straight is not known: half the
 * uncertainty budget of the method is where a straight line in THD itself would cross the limit.
 */
final class LimitVolts {
  /** Half-width taken for a distortion meter that the bench does not name, percent of reading. */
  private static final double ASSUMED_THD_PERCENT = 10;

  private final Bench bench;
  private final ReadingUncertainty readings;
  private final List<Remark> remarks;

  LimitVolts(Bench bench, ReadingUncertainty readings, List<Remark> remarks) {
    this.bench = bench;
    this.readings = readings;
    this.remarks = remarks;
  }

  /** Returns the volts at the limit; empty, with a remark, where no two points bracket it. */
  Optional<Quantity> of(TakenStep step, double limitThdPercent) {
    List<LimitPair> pairs =
        step.pairs().stream().sorted(Comparator.comparingDouble(LimitPair::volts)).toList();
    String limit = Printer.UTF8.exact(limitThdPercent, Unit.PERCENT) + " THD";
    for (int i = 0; i + 1 < pairs.size(); i++) {
      LimitPair below = pairs.get(i);
      LimitPair above = pairs.get(i + 1);
      boolean brackets =
          below.thdPercent() <= limitThdPercent
              && limitThdPercent <= above.thdPercent()
              && below.thdPercent() < above.thdPercent()
              && below.volts() < above.volts();
      if (brackets) {
        remarks.add(
            new Remark(
                "limit-interpolated",
                "volts at "
                    + limit
                    + " are interpolated between "
                    + point(below)
                    + " and "
                    + point(above)));
        return Optional.of(between(step, below, above, limitThdPercent));
      }
    }
    remarks.add(
        new Remark(
            "limit-not-bracketed", "no two points lie on both sides of " + limit + " in order"));
    return Optional.empty();
  }

  private Quantity between(TakenStep step, LimitPair below, LimitPair above, double limit) {
    double span = above.volts() - below.volts();
    double decades = Math.log(above.thdPercent() / below.thdPercent());
    double volts = below.volts() + span * Math.log(limit / below.thdPercent()) / decades;
    double straight =
        below.volts()
            + span * (limit - below.thdPercent()) / (above.thdPercent() - below.thdPercent());
    double resolution = step.reading(ReadingId.OUTPUT_VOLTS).map(Taken::resolution).orElse(0.0);
    double model = ReadingUncertainty.rectangular(Math.abs(volts - straight));
    double meter = span / decades * relativeThdU(limit);
    return readings
        .of(new Taken(ReadingId.OUTPUT_VOLTS, volts, resolution))
        .withPart(step.stepId() + " limit interpolation", model)
        .withPart(thdSource(), meter);
  }

  private double relativeThdU(double limit) {
    Optional<Meter> meter = bench.meterFor(ReadingId.THD_PERCENT);
    if (meter.isEmpty()) {
      remarks.add(
          new Remark(
              "thd-meter-assumed", "no meter is named for THD: taken as ±10 % of the reading"));
    }
    double halfWidth = meter.map(m -> m.halfWidth(limit)).orElse(limit * ASSUMED_THD_PERCENT / 100);
    return ReadingUncertainty.rectangular(halfWidth) / limit;
  }

  private String thdSource() {
    return bench.meterFor(ReadingId.THD_PERCENT).map(Meter::label).orElse("assumed meter")
        + " THD at the limit";
  }

  private static String point(LimitPair pair) {
    return Printer.UTF8.exact(pair.volts(), Unit.VOLT)
        + " at "
        + Printer.UTF8.exact(pair.thdPercent(), Unit.PERCENT);
  }
}
