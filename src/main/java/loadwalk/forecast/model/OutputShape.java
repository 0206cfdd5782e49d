package loadwalk.forecast.model;

/** One way in which the output may depend on the load, with its evidence. */
interface OutputShape {

  /** Returns ln of the probability density of the readings under this shape. */
  double logEvidence();

  /** Returns the common error scale under this shape. */
  double scale();

  /**
   * Returns the slope of ln v over ln x at the least loads if a limit is active there, otherwise 0.
   */
  double slope();

  /** Returns the density of ln of the channel volts that a new reading should show. */
  Mixture predict(double channelOhms, boolean bridged, double logSupply);
}
