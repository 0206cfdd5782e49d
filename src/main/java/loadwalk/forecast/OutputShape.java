package loadwalk.forecast;

/** One way in which the output may depend on the load, with its evidence. */
interface OutputShape {

  /** Returns ln of the probability density of the readings under this shape. */
  double logEvidence();

  /** Returns the common scale of the errors under this shape. */
  double scale();

  /** Returns the density of ln of the channel volts that a new reading should show. */
  Mixture predict(double channelOhms, boolean bridged, double logSupply);
}
