package loadwalk.result;

import java.util.List;
import java.util.Objects;
import loadwalk.quantity.Quantity;

/**
 * The output of one channel at the limit, modelled as one source: V(R) = E·R/(R + r).
 *
 * @param openVolts E, the volts at the limit extrapolated to no load
 * @param seriesOhms r, the sag of rails, supply and output stage as one resistance
 * @param stepIds the steps used in the fit
 * @param worstResidual the largest |measured − fitted| divided by measured, a fraction
 */
public record OutputFit(
    Quantity openVolts, Quantity seriesOhms, List<String> stepIds, double worstResidual) {
  /** Copies the list. */
  public OutputFit {
    Objects.requireNonNull(openVolts, "openVolts");
    Objects.requireNonNull(seriesOhms, "seriesOhms");
    stepIds = List.copyOf(stepIds);
  }

  /** Returns the fitted volts of one channel into a load in ohms. */
  public double voltsAt(double channelOhms) {
    return openVolts.value() * channelOhms / (channelOhms + seriesOhms.value());
  }
}
