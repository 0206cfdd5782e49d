package loadwalk.report.ledger;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A walk drawn at random, as plain whole numbers: what was asked, and what was read. Neither the
 * program's types nor its rules are in it, so that a reader of the design can judge it by itself.
 *
 * @param name its name
 * @param practice whether the amplifier is simulated
 * @param regulated whether its rails are regulated, where known
 * @param ratings its rated powers
 * @param fuseAmps the amplifier's own fuse
 * @param describedBench whether the bench has meters and loads
 * @param stockMilliohms the loads in stock; the nominal ones if empty
 * @param limit the THD limit asked for, thousandths of a percent
 * @param tone the tone asked for, tenths of a hertz
 * @param supply the supply volts asked for, millivolts
 * @param warmUp what became of the warm-up
 * @param runs the steps with a load, in order
 */
record DrawnWalk(
    String name,
    boolean practice,
    Optional<Boolean> regulated,
    List<Rated> ratings,
    OptionalInt fuseAmps,
    boolean describedBench,
    List<Integer> stockMilliohms,
    int limit,
    int tone,
    int supply,
    WarmUp warmUp,
    List<Run> runs) {

  /** What became of a warm-up. */
  enum WarmUp {
    NONE,
    DONE,
    CUT_SHORT,
    WITHOUT_A_CLOCK
  }

  /**
   * A rated power.
   *
   * @param watts rated, per load
   * @param supply millivolts, where stated
   * @param thd thousandths of a percent, where stated
   */
  record Rated(boolean bridged, int milliohms, double watts, OptionalInt supply, OptionalInt thd) {}

  /**
   * One step with a load.
   *
   * @param id its id
   * @param volts the output, millivolts
   * @param otherVolts of the other channel, where read
   * @param loadRead milliohms, where read
   * @param thd thousandths of a percent, where read
   * @param tone tenths of a hertz, where read
   * @param supply millivolts, where read
   * @param milliamps the supply current, where read
   * @param said the point that the operator named, by its word
   * @param stoodBy whether a doubt was stood by
   * @param inDoubt whether a doubt has no answer
   * @param cooledBefore whether the amplifier cooled before it
   */
  record Run(
      String id,
      boolean bridged,
      int milliohms,
      int volts,
      OptionalInt otherVolts,
      OptionalInt loadRead,
      OptionalInt thd,
      OptionalInt tone,
      OptionalInt supply,
      OptionalInt milliamps,
      Optional<String> said,
      boolean stoodBy,
      boolean inDoubt,
      boolean cooledBefore) {
    /** Tells whether another run had the same load. */
    boolean sameLoad(Run other) {
      return bridged == other.bridged && milliohms == other.milliohms;
    }
  }
}
