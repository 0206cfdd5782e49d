package loadwalk.forecast;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.EndedStep;

/**
 * Everything a forecast may use.
 *
 * @param amplifier the amplifier and its ratings
 * @param bench the bench
 * @param conditions the sequence's tone, distortion limit and supply volts
 * @param observations the steps measured so far, oldest first
 * @param ended the steps that drove a load and ended before they were measured, oldest first
 * @param warmth what the walk's own warm-ups and rests tell of the heatsink
 */
public record Evidence(
    Amplifier amplifier,
    Bench bench,
    Conditions conditions,
    List<Observation> observations,
    List<EndedStep> ended,
    Warmth warmth) {
  /** Copies the lists. */
  public Evidence {
    observations = List.copyOf(observations);
    ended = List.copyOf(ended);
  }

  /** Makes evidence of a walk in which every step was measured. */
  public Evidence(
      Amplifier amplifier, Bench bench, Conditions conditions, List<Observation> observations) {
    this(amplifier, bench, conditions, observations, List.of(), Warmth.UNKNOWN);
  }

  /** Returns the same evidence with other observations, and no step that ended unmeasured. */
  public Evidence withOnly(List<Observation> others) {
    return new Evidence(amplifier, bench, conditions, others, List.of(), warmth);
  }

  /**
   * The test conditions of a sequence.
   *
   * @param toneHertz the test tone, hertz
   * @param limitThdPercent the distortion at which volts are read, percent THD
   * @param supplyVolts the supply volts at the amplifier's terminals
   */
  public record Conditions(double toneHertz, double limitThdPercent, double supplyVolts) {}
}
