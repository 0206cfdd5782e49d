package loadwalk.result;

import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * An estimate of the power at another supply voltage; never a measurement.
 *
 * @param watts the estimate
 * @param supplyVolts the supply volts that the estimate applies to
 * @param assumption one sentence that begins with "estimate" and states the assumption
 */
public record PowerAtSupply(Quantity watts, double supplyVolts, String assumption) {
  /** Rejects missing parts. */
  public PowerAtSupply {
    Objects.requireNonNull(watts, "watts");
    Objects.requireNonNull(assumption, "assumption");
    if (!(supplyVolts > 0) || Double.isInfinite(supplyVolts)) {
      throw new IllegalArgumentException(
          "supplyVolts must be a number above 0, got " + supplyVolts);
    }
  }

  /**
   * Estimates power at other supply volts.
   *
   * <p>Unregulated rails follow the supply, so output volts are proportional to it and P ∝ V² (from
   * the class-B relation P = V²/2R at full swing). Regulated rails do not follow it, so P does not
   * change. If the type is unknown, P lies between the two, with every value equally likely: the
   * midpoint with u = half-width/√3 (JCGM 100:2008, 4.3.7).
   *
   * @param measured the measured watts
   * @param measuredAt the supply volts they were measured at, above 0
   * @param supplyVolts the supply volts to estimate for, above 0
   * @param regulated whether the amplifier's rails are regulated, if known
   */
  public static PowerAtSupply of(
      Quantity measured, Quantity measuredAt, double supplyVolts, Optional<Boolean> regulated) {
    if (!(measuredAt.value() > ReadingUncertainty.LEAST)) {
      throw new IllegalArgumentException(
          "supply volts of the measurement must be above 0, got " + measuredAt.value());
    }
    String from = Printer.UTF8.exact(measuredAt.value(), Unit.VOLT);
    Quantity factor = factor(measuredAt, supplyVolts);
    Quantity scaled = measured.times(factor, Unit.WATT);
    if (regulated.isEmpty()) {
      double halfWidth = Math.abs(scaled.value() - measured.value()) / 2;
      Quantity middle =
          scaled.plus(measured).scaledBy(0.5).withRectangular("rails regulated or not", halfWidth);
      return new PowerAtSupply(
          middle,
          supplyVolts,
          Sentence.of(
              "estimate from {}: whether the rails are regulated is not known, so halfway between",
              from));
    }
    return regulated.get()
        ? new PowerAtSupply(
            measured,
            supplyVolts,
            Sentence.of("estimate from {}: rails taken as regulated, so the power stays", from))
        : new PowerAtSupply(
            scaled,
            supplyVolts,
            Sentence.of(
                "estimate from {}: rails taken as unregulated, so power goes with the square of the"
                    + " supply volts",
                from));
  }

  /** Returns (supplyVolts/V)² with ∂/∂V = −2·supplyVolts²/V³. */
  private static Quantity factor(Quantity volts, double supplyVolts) {
    double ratio = supplyVolts / volts.value();
    return volts.mapped(ratio * ratio, -2 * ratio * ratio / volts.value(), Unit.ONE);
  }
}
