package loadwalk.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;

/**
 * What a bench truly bears, by the rules of the trade and by none of the program's code. What is
 * not entered is infinite, or 0 where a load may not be below it.
 *
 * @param countedOnAmps what the supplies can be counted on for: 90 % of their sum unless stated
 * @param ownFuseAmps the sum of the amplifier's fuses
 * @param benchFuseAmps the fuse at the source
 * @param leadAmps what the weakest lead carries
 * @param leastStereoOhms the least load stated for a channel
 * @param leastBridgedOhms the least bridged load stated
 * @param protectsBelowOhms the load on a channel below which the amplifier shuts itself off
 */
record TrueLimits(
    double countedOnAmps,
    double ownFuseAmps,
    double benchFuseAmps,
    double leadAmps,
    double leastStereoOhms,
    double leastBridgedOhms,
    double protectsBelowOhms) {
  /** The part of its rating that a fuse carries without end. */
  private static final double FUSE_CONTINUOUS = 0.75;

  private static final double READING_SECONDS = 60;
  private static final double FLOATING = 1 + 1e-9;

  /**
   * What a step truly asks.
   *
   * @param continuous whether it is held without end, as a warm-up is
   * @param mode how the load is connected
   * @param ohms the load
   * @param demandedAmps what it would draw from supplies without a limit
   * @param amps what flows
   * @param hottest the load resistor that is nearest its end, where the bench has any
   */
  record Asked(
      boolean continuous,
      Mode mode,
      double ohms,
      double demandedAmps,
      double amps,
      Optional<HotResistor> hottest) {}

  /** Returns what a step asks of every part over what the part bears. */
  List<Exceeded> by(Asked asked) {
    double fuse = asked.continuous ? FUSE_CONTINUOUS : 1;
    boolean stereo = asked.mode == Mode.STEREO;
    double channelOhms = stereo ? asked.ohms : asked.ohms / 2;
    double least = stereo ? leastStereoOhms : leastBridgedOhms;
    List<Exceeded> parts = new ArrayList<>();
    parts.add(new Exceeded(Exceeded.Part.SUPPLY, asked.demandedAmps / countedOnAmps));
    parts.add(new Exceeded(Exceeded.Part.OWN_FUSES, asked.amps / (fuse * ownFuseAmps)));
    parts.add(new Exceeded(Exceeded.Part.BENCH_FUSE, asked.amps / (fuse * benchFuseAmps)));
    parts.add(new Exceeded(Exceeded.Part.LEAD, asked.amps / leadAmps));
    parts.add(new Exceeded(Exceeded.Part.LEAST_LOAD, least / (FLOATING * asked.ohms)));
    parts.add(new Exceeded(Exceeded.Part.AMPLIFIER, protectsBelowOhms / channelOhms));
    double seconds = asked.continuous ? Double.POSITIVE_INFINITY : READING_SECONDS;
    asked.hottest.ifPresent(
        hot -> parts.add(new Exceeded(Exceeded.Part.RESISTOR, hot.watts() / hot.bears(seconds))));
    return parts;
  }
}
