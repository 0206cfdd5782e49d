package loadwalk.forecast.caution;

import java.util.Objects;
import loadwalk.forecast.Band;
import loadwalk.quantity.Unit;

/**
 * Holds what a step asks of one part of the bench against what that part bears.
 *
 * @param code the code of the caution it may become
 * @param what the part, in words
 * @param demand what is asked, in the unit
 * @param limit what is borne, in the unit, above 0
 * @param unit amperes or watts
 */
public record Stress(String code, String what, Band demand, double limit, Unit unit) {
  /** Checks that nothing is missing. */
  public Stress {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(unit, "unit");
    if (!(limit > 0)) {
      throw new IllegalArgumentException("what " + what + " bears must be above 0, got " + limit);
    }
  }

  /** Returns the upper end of the demand over what is borne. */
  public double share() {
    return demand.high() / limit;
  }

  /** Returns what is left at worst, percent of what is borne; below 0 where it is exceeded. */
  public double marginPercent() {
    return 100 * (1 - share());
  }
}
