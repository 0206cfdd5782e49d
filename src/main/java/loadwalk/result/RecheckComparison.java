package loadwalk.result;

import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Compares two runs at one load: they agree when |P₁ − P₂| ≤ k·√(u₁² + u₂²), with k = 2, or larger
 * if there are few readings.
 *
 * <p>Only contributions that do not cancel count (JCGM 100:2008, 5.2). What both runs share, such
 * as the gain of the same meter or the tolerance of the same load, shifts both equally. Resolution
 * and digits remain.
 */
final class RecheckComparison {
  private RecheckComparison() {}

  static RecheckAgreement of(StepResult first, StepResult again) {
    if (!first.isMeasured() || !again.isMeasured()) {
      return notComparable(
          first,
          again,
          Sentence.of(
              "{} and {} are not compared: one has no output reading",
              again.stepId(),
              first.stepId()));
    }
    if (!first.sameLoad(again)) {
      return notComparable(
          first,
          again,
          Sentence.of(
              "{} and {} are not compared: their loads differ", again.stepId(), first.stepId()));
    }
    if (first.criterion() != again.criterion()) {
      return notComparable(
          first,
          again,
          Sentence.of(
              "{} and {} are not compared: one was read {}, the other {}",
              again.stepId(),
              first.stepId(),
              again.criterion().text(),
              first.criterion().text()));
    }
    if (!first.criterion().isStated()) {
      return notComparable(
          first,
          again,
          Sentence.of(
              "{} and {} are not compared: both were read {}, which is no stated point",
              again.stepId(),
              first.stepId(),
              first.criterion().text()));
    }
    if (!first.conditions().isLike(again.conditions())) {
      return notComparable(
          first,
          again,
          Sentence.of(
              "{} and {} are not compared: tone, supply or warm-up were not alike, or not read",
              again.stepId(),
              first.stepId()));
    }
    Quantity one = first.totalWatts().orElseThrow();
    Quantity other = again.totalWatts().orElseThrow();
    Quantity difference = other.minus(one);
    double limit = other.withoutSourcesOf(one).minus(one.withoutSourcesOf(other)).expanded();
    boolean agrees = Math.abs(difference.value()) <= limit;
    String text =
        Sentence.of(
            agrees
                ? "{} and {} agree: {} apart, up to {} is within the uncertainty"
                : "{} and {} disagree: {} apart, up to {} is within the uncertainty",
            again.stepId(),
            first.stepId(),
            Printer.UTF8.value(Math.abs(difference.value()), Unit.WATT, 3),
            Printer.UTF8.value(limit, Unit.WATT, 3));
    return new RecheckAgreement(
        first.stepId(),
        again.stepId(),
        Optional.of(difference),
        limit,
        agrees ? RecheckAgreement.Outcome.AGREES : RecheckAgreement.Outcome.DISAGREES,
        text);
  }

  private static RecheckAgreement notComparable(StepResult first, StepResult again, String text) {
    return new RecheckAgreement(
        first.stepId(),
        again.stepId(),
        Optional.empty(),
        0,
        RecheckAgreement.Outcome.NOT_COMPARABLE,
        text);
  }
}
