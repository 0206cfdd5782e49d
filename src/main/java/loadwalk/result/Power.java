package loadwalk.result;

import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Computes the power in one load. */
final class Power {
  private Power() {}

  /**
   * Computes P = V²/R with ∂P/∂V = 2V/R and ∂P/∂R = −V²/R² (JCGM 100:2008, 5.1.2, equation 10).
   *
   * <p>Because ∂P/∂V vanishes at 0 V, the next term of the series, ½(∂²P/∂V²)²·u⁴ = 2u⁴/R², is
   * added as a separate contribution of √2·u²/R (JCGM 100:2008, note to 5.1.2; JCGM 101:2008, 9.4
   * shows the effect of leaving it out).
   *
   * @param source the reading's name, which keeps its second-order term independent of the others
   */
  static Quantity ofVolts(Quantity volts, Quantity ohms, String source) {
    double v = volts.value();
    double r = ohms.value();
    Quantity watts =
        volts
            .mapped(v * v / r, 2 * v / r, Unit.WATT)
            .plus(ohms.mapped(0, -v * v / (r * r), Unit.WATT));
    double second = Math.sqrt(2) * volts.u() * volts.u() / r;
    return second > 0 ? watts.withPart(Sentence.of("{} second order", source), second) : watts;
  }

  /**
   * Computes the power from the watts shown by a meter that assumes a load: P = W·Rₙ/R, with ∂P/∂W
   * = Rₙ/R and ∂P/∂R = −W·Rₙ/R². This equals V²/R with V = √(W·Rₙ).
   *
   * @param shown the watts shown
   * @param assumedOhms the load the meter assumed, exact
   * @param ohms the load actually connected
   */
  static Quantity ofWatts(Quantity shown, double assumedOhms, Quantity ohms) {
    double r = ohms.value();
    double byShown = assumedOhms / r;
    double byOhms = -shown.value() * assumedOhms / (r * r);
    return shown
        .mapped(shown.value() * byShown, byShown, Unit.WATT)
        .plus(ohms.mapped(0, byOhms, Unit.WATT));
  }

  /**
   * Returns the volts that correspond to the watts shown: V = √(W·Rₙ), u(V) = u(W)·√(Rₙ/W)/2.
   *
   * <p>The derivative is unbounded at 0 W. There the true watts can be at most about u(W), so u(V)
   * is limited to √(u(W)·Rₙ).
   */
  static Quantity voltsOfWatts(Quantity shown, double assumedOhms) {
    double w = shown.value();
    double volts = Math.sqrt(w * assumedOhms);
    double u = shown.u();
    double derivative = Math.sqrt(assumedOhms / w) / 2;
    double most = u > 0 ? Math.sqrt(assumedOhms / u) : 0;
    return shown.mapped(volts, Math.min(derivative, most), Unit.VOLT);
  }
}
