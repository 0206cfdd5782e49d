package loadwalk.practice;

import java.util.Objects;

/**
 * The state in which amplifier, supply and load balance: power in = power out + all heat.
 *
 * @param railVolts the volts of one rail
 * @param outputVolts rms volts across one load: this channel's, or the bridged load's
 * @param otherOutputVolts rms volts across the other channel's load; equal to outputVolts bridged
 * @param openVolts rms volts of this output with its load disconnected, drive untouched
 * @param supplyVolts volts at the amplifier's terminals
 * @param supplyAmps supply current
 * @param outputWatts power in all loads together
 * @param stageHeatWatts heat of the output stages
 * @param converterHeatWatts heat of the converter
 * @param idleHeatWatts heat of the idle current
 * @param limitedBy what limits the output
 */
public record OperatingPoint(
    double railVolts,
    double outputVolts,
    double otherOutputVolts,
    double openVolts,
    double supplyVolts,
    double supplyAmps,
    double outputWatts,
    double stageHeatWatts,
    double converterHeatWatts,
    double idleHeatWatts,
    Limit limitedBy) {
  /** Checks that nothing is missing. */
  public OperatingPoint {
    Objects.requireNonNull(limitedBy, "limitedBy");
  }

  /** What limits the output. */
  public enum Limit {
    /** The rails, sagging or regulated: the ordinary case. */
    RAILS,
    /** The current limit of a channel. */
    CHANNEL_CURRENT,
    /** The power limit of the converter. */
    CONVERTER,
    /** The current limit of the supplies. */
    SUPPLY
  }

  /** Returns the power turned into heat in the amplifier, watts. */
  double heatWatts() {
    return stageHeatWatts + converterHeatWatts + idleHeatWatts;
  }
}
