package loadwalk.forecast.caution;

import java.util.Objects;
import loadwalk.forecast.Band;
import loadwalk.quantity.Unit;

/**
 * The demand of a step on one part of the bench, with the limit of that part.
 *
 * @param code the code of the caution it may become
 * @param what the name of the part
 * @param demand the demand, in the unit
 * @param limit the limit, in the unit, above 0
 * @param unit amperes or watts
 */
public record Stress(String code, String what, Band demand, double limit, Unit unit) {
  /** Checks that no field is null. */
  public Stress {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(unit, "unit");
    if (!(limit > 0)) {
      throw new IllegalArgumentException("what " + what + " bears must be above 0, got " + limit);
    }
  }

  /** Returns the ratio of the upper end of the demand to the limit. */
  public double share() {
    return demand.high() / limit;
  }

  /** Returns the margin left at worst, percent of the limit; below 0 if it is exceeded. */
  public double marginPercent() {
    return 100 * (1 - share());
  }
}
