package loadwalk.report.ledger;

import java.util.Map;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Shape;
import loadwalk.quantity.Unit;

/**
 * A power as the ledger keeps it: with all that its coverage factor rests on.
 *
 * @param value watts
 * @param u its standard uncertainty, watts
 * @param degreesOfFreedom those of u, infinite where none of it comes from few readings
 * @param excess the excess kurtosis of its distribution, 0 for a normal one
 */
record KeptWatts(double value, double u, double degreesOfFreedom, double excess) {
  static KeptWatts of(Quantity watts) {
    return new KeptWatts(
        watts.value(), watts.u(), watts.effectiveDegreesOfFreedom(), watts.excess());
  }

  /** Returns it as a quantity whose uncertainty comes from one source of its own. */
  Quantity quantity(String source) {
    boolean normal = Double.isInfinite(degreesOfFreedom) && excess == 0;
    return new Quantity(
        value,
        Unit.WATT,
        Map.of(source, u),
        normal ? Map.of() : Map.of(source, new Shape(excess, degreesOfFreedom, "")));
  }
}
