package loadwalk.forecast;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;

/**
 * All that a forecast may rest on.
 *
 * @param amplifier the amplifier and its ratings
 * @param bench the bench
 * @param conditions tone, limit and supply volts of the sequence
 * @param observations the steps measured so far, oldest first
 */
public record Evidence(
    Amplifier amplifier, Bench bench, Conditions conditions, List<Observation> observations) {
  /** Copies the observations. */
  public Evidence {
    observations = List.copyOf(observations);
  }

  /**
   * The conditions a sequence asks for.
   *
   * @param toneHertz the test tone, hertz
   * @param limitThdPercent the distortion at which volts are read, percent
   * @param supplyVolts the supply volts at the amplifier's terminals
   */
  public record Conditions(double toneHertz, double limitThdPercent, double supplyVolts) {}
}
