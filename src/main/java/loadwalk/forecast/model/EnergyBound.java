package loadwalk.forecast.model;

import loadwalk.forecast.Band;

/**
 * Keeps what comes out of an amplifier below what goes in, at both ends of the bands and in their
 * middle (energy balance).
 *
 * <p>The bands of output, current and supply volts are each their own; taken together their ends
 * could make more come out than goes in. At the low end and in the middle the output gives way, at
 * the high end the current does: a band grows, and none gets narrower on the side that warns.
 *
 * @param loadVolts rms volts across each load
 * @param amps the supply current, amperes
 */
record EnergyBound(Band loadVolts, Band amps) {

  /**
   * Returns the bands held to the energy balance.
   *
   * @param loadVolts rms volts across each load
   * @param amps the supply current, amperes
   * @param supplyVolts the volts at the amplifier's terminals
   * @param ohms the load, ohms
   * @param loads how many loads are driven
   */
  static EnergyBound hold(Band loadVolts, Band amps, Band supplyVolts, double ohms, int loads) {
    double middle =
        Math.min(loadVolts.middle(), most(amps.middle(), supplyVolts.middle(), ohms, loads));
    double low = Math.min(loadVolts.low(), most(amps.low(), supplyVolts.low(), ohms, loads));
    double out = loads * loadVolts.high() * loadVolts.high() / ohms;
    double high = Math.max(amps.high(), out / supplyVolts.high());
    return new EnergyBound(
        new Band(Math.min(low, middle), middle, loadVolts.high()),
        new Band(amps.low(), amps.middle(), high));
  }

  /** Returns the volts across each load at which all that goes in comes out. */
  private static double most(double amps, double supplyVolts, double ohms, int loads) {
    return Math.sqrt(Math.max(0, amps * supplyVolts) * ohms / loads);
  }
}
