package loadwalk.result;

import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/**
 * Compares two runs at one load: they agree when |P₁ − P₂| ≤ k·√(u₁² + u₂²), k = 2 or as much more
 * as few readings ask for.
 *
 * <p>Only the parts that do not cancel count (JCGM 100:2008, 5.2): what both runs share — the gain
 * of the same meter, the tolerance of the same load — moves both alike. Resolution and digits stay.
 */
final class RecheckComparison {
  private RecheckComparison() {}

  static RecheckAgreement of(StepResult first, StepResult again) {
    if (!first.isMeasured() || !again.isMeasured()) {
      return notComparable(first, again, "one of them has no output reading");
    }
    if (!first.sameLoad(again)) {
      return notComparable(first, again, "their loads differ");
    }
    if (first.criterion() != again.criterion()) {
      return notComparable(
          first,
          again,
          "one was read "
              + first.criterion().text()
              + ", the other "
              + again.criterion().text()
              + "; these are different criteria");
    }
    if (first.criterion() == Criterion.BELOW_LIMIT) {
      return notComparable(first, again, "both were read below the limit, at no stated point");
    }
    Quantity one = first.totalWatts().orElseThrow();
    Quantity other = again.totalWatts().orElseThrow();
    Quantity difference = other.minus(one);
    double limit = other.withoutSourcesOf(one).minus(one.withoutSourcesOf(other)).expanded();
    boolean agrees = Math.abs(difference.value()) <= limit;
    String text =
        again.stepId()
            + " and "
            + first.stepId()
            + " lie "
            + Printer.UTF8.value(Math.abs(difference.value()), Unit.WATT, 3)
            + " apart and "
            + (agrees ? "agree" : "do not agree")
            + " within "
            + Printer.UTF8.value(limit, Unit.WATT, 3);
    return new RecheckAgreement(
        first.stepId(),
        again.stepId(),
        Optional.of(difference),
        limit,
        agrees ? RecheckAgreement.Outcome.AGREES : RecheckAgreement.Outcome.DISAGREES,
        text);
  }

  private static RecheckAgreement notComparable(StepResult first, StepResult again, String why) {
    return new RecheckAgreement(
        first.stepId(),
        again.stepId(),
        Optional.empty(),
        0,
        RecheckAgreement.Outcome.NOT_COMPARABLE,
        again.stepId() + " and " + first.stepId() + " are not compared: " + why);
  }
}
