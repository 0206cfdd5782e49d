package loadwalk.experiment;

/**
 * What a simulated step really is, before any meter.
 *
 * @param outputVolts rms volts across one load
 * @param otherVolts rms volts across the other channel's load
 * @param supplyVolts volts at the terminals
 * @param supplyAmps supply current
 * @param outputWatts watts in all loads
 */
record Truth(
    double outputVolts,
    double otherVolts,
    double supplyVolts,
    double supplyAmps,
    double outputWatts) {

  /** Returns this with output and load current changed by a small factor, as heat does. */
  Truth drifted(double factor, double idleAmps) {
    return new Truth(
        outputVolts * factor,
        otherVolts * factor,
        supplyVolts,
        idleAmps + (supplyAmps - idleAmps) * factor,
        outputWatts * factor * factor);
  }
}
