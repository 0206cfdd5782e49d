package loadwalk.forecast.caution;

import java.util.Objects;
import loadwalk.forecast.Band;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Unit;

/**
 * The demand of a step on one part of the bench, with what that part bears.
 *
 * @param code the code of the caution it may become
 * @param what the name of the part
 * @param part the part with its verb: "the bench fuse carries"
 * @param demand the demand, in the unit
 * @param bears what the part bears, in the unit
 * @param unit amperes or watts
 */
public record Stress(String code, String what, String part, Band demand, Bears bears, Unit unit) {
  /** Chance of giving before the limit is reached from which a step is halted, if none sees it. */
  private static final double UNSEEN = 0.05;

  /** Chance of giving from which it is worth saying. */
  private static final double WORTH_SAYING = 0.025;

  /**
   * Ratio of the demand to what is counted on from which a part gives before a hand can turn back.
   * Chosen by hand.
   */
  private static final double FAR_BEYOND = 4.0 / 3;

  /** Checks that no field is null. */
  public Stress {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(bears, "bears");
    Objects.requireNonNull(unit, "unit");
  }

  /**
   * Returns the verdict on the step from this part alone.
   *
   * <p>Halt: more likely than not it gives before the limit is reached; or it may give and nothing
   * that is read shows it in time. Heed: it may give, and the reading at which to stop shows it.
   *
   * @param watched whether the demand is read while the output is raised
   */
  Verdict verdict(boolean watched) {
    boolean unseen = !watched && demand.exceededWith(UNSEEN) > bears.most();
    boolean sudden = demand.exceededWith(UNSEEN) > FAR_BEYOND * bears.counted();
    if (isLikely() || unseen || sudden) {
      return Verdict.HALT;
    }
    double counted = Math.min(bears.counted(), bears.most());
    return demand.exceededWith(WORTH_SAYING) > counted ? Verdict.HEED : Verdict.CLEAR;
  }

  /** Tells whether it is more likely than not that the part gives. */
  boolean isLikely() {
    return demand.middle() > bears.most();
  }

  /** Returns the ratio of the upper end of the demand to what can be counted on. */
  public double share() {
    return demand.high() / bears.counted();
  }

  /** Returns how near the likely demand comes to the most that the part bears. */
  double nearness() {
    return demand.middle() / bears.most();
  }

  /** Returns the margin left at worst, percent of what is counted on; below 0 if exceeded. */
  public double marginPercent() {
    return 100 * (1 - share());
  }
}
