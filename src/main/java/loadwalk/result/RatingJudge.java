package loadwalk.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Rating;
import loadwalk.numeric.Conformance;
import loadwalk.numeric.GuardBand;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Judges a measured power against its rating (JCGM 106:2012, 8.3.3), where both stand under like
 * conditions.
 *
 * @param conditions those that the power was reached under
 * @param asked what the walk's sequence asks for
 * @param load the load that the power was computed with, ohms
 * @param supplyVolts the volts read at the amplifier's terminals
 * @param regulated whether the rails are regulated, if known
 */
record RatingJudge(
    Conditions conditions,
    Asked asked,
    Quantity load,
    Optional<Quantity> supplyVolts,
    Optional<Boolean> regulated) {
  /** How far the load may lie from the rated one, a fraction of it. Set by the design. */
  private static final double SAME_OHMS = 0.05;

  private static final Printer PRINT = Printer.UTF8;

  /** Compares the power in one load with its rating. */
  RatingComparison compare(Rating rating, Quantity measured) {
    List<String> differs = new ArrayList<>();
    loadDiffers(rating).ifPresent(differs::add);
    limitDiffers(rating).ifPresent(differs::add);
    Optional<String> supply = supplyDiffers(rating);
    supply.ifPresent(differs::add);
    double rated = rating.watts();
    double ratio = measured.value() / rated;
    Quantity counted = withSupply(rating, measured);
    Optional<PowerAtSupply> estimate = supply.flatMap(why -> estimate(rating, measured));
    return new RatingComparison(
        rated,
        measured,
        measured.mapped(ratio, 1 / rated, Unit.ONE),
        10 * Math.log10(Math.max(ratio, 0)),
        differs.isEmpty() ? verdict(counted, rated) : RatingComparison.Verdict.OTHER_CONDITIONS,
        differs,
        notes(rating),
        estimate);
  }

  private static RatingComparison.Verdict verdict(Quantity measured, double rated) {
    Conformance shown =
        GuardBand.AT_95_PERCENT.atLeast(
            measured.value(), measured.u(), measured.effectiveDegreesOfFreedom(), rated);
    return switch (shown) {
      case SHOWN_TO_MEET -> RatingComparison.Verdict.MEETS;
      case SHOWN_TO_MISS -> RatingComparison.Verdict.MISSES;
      case TOO_CLOSE -> RatingComparison.Verdict.TOO_CLOSE;
    };
  }

  private Optional<String> loadDiffers(Rating rating) {
    return Conditions.isNear(load.value(), rating.ohms(), SAME_OHMS)
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "rated into {}, read into {}",
                PRINT.exact(rating.ohms(), Unit.OHM),
                PRINT.value(load.value(), Unit.OHM, 3)));
  }

  /** A rating without a THD is taken as one at the limit of the sequence. */
  private Optional<String> limitDiffers(Rating rating) {
    double limit = rating.thdPercent().orElse(asked.limitThdPercent());
    if (Criterion.reached(wordOrReading(), limit, Optional.empty()) == Criterion.THD_LIMIT) {
      return Optional.empty();
    }
    String at = PRINT.exact(limit, Unit.PERCENT);
    OptionalDouble thd = conditions.thdPercent();
    return Optional.of(
        thd.isPresent()
            ? Sentence.of(
                "rated at {} THD, read at {}", at, PRINT.value(thd.getAsDouble(), Unit.PERCENT, 3))
            : Sentence.of("rated at {} THD, read {}", at, pointSaid()));
  }

  /** Returns the THD read; the limit where the operator said that the output was at it. */
  private OptionalDouble wordOrReading() {
    return conditions.said() && conditions.criterion() == Criterion.THD_LIMIT
        ? OptionalDouble.of(asked.limitThdPercent())
        : conditions.thdPercent();
  }

  private String pointSaid() {
    return conditions.criterion() == Criterion.THD_LIMIT
        ? Sentence.of("at {}", PRINT.exact(asked.limitThdPercent(), Unit.PERCENT))
        : conditions.criterion().text();
  }

  /** Regulated rails do not follow the supply; a rating without supply volts says nothing of it. */
  private Optional<String> supplyDiffers(Rating rating) {
    if (rating.supplyVolts().isEmpty() || regulated.orElse(false)) {
      return Optional.empty();
    }
    double at = rating.supplyVolts().getAsDouble();
    String rated = PRINT.exact(at, Unit.VOLT);
    if (supplyVolts.isEmpty()) {
      return Optional.of(Sentence.of("rated at a supply of {}, supply volts not read", rated));
    }
    double volts = supplyVolts.get().value();
    return Conditions.isNear(volts, at, Mark.SAME_VOLTS)
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "rated at a supply of {}, read at {}", rated, PRINT.value(volts, Unit.VOLT, 4)));
  }

  /**
   * Counts in the uncertainty what a small difference of the supply does to the watts: they go with
   * the square of the volts, or not at all, so half-width of the whole difference, rectangular.
   */
  private Quantity withSupply(Rating rating, Quantity measured) {
    boolean follows =
        rating.supplyVolts().isPresent() && supplyVolts.isPresent() && !regulated.orElse(false);
    if (!follows || !(supplyVolts.get().value() > ReadingUncertainty.LEAST)) {
      return measured;
    }
    double ratio = rating.supplyVolts().getAsDouble() / supplyVolts.get().value();
    double change = Math.abs(measured.value() * (ratio * ratio - 1));
    return measured.withRectangular("supply volts off the rated ones", change);
  }

  /** Returns the power at the rating's supply volts, where it is known how the rails follow. */
  private Optional<PowerAtSupply> estimate(Rating rating, Quantity measured) {
    return supplyVolts
        .filter(volts -> volts.value() > ReadingUncertainty.LEAST && regulated.isPresent())
        .map(
            volts ->
                PowerAtSupply.of(measured, volts, rating.supplyVolts().orElseThrow(), regulated));
  }

  private List<String> notes(Rating rating) {
    List<String> notes = new ArrayList<>();
    if (rating.thdPercent().isEmpty()) {
      notes.add(
          Sentence.of(
              "the rating states no THD: taken as {}, the limit of the sequence",
              PRINT.exact(asked.limitThdPercent(), Unit.PERCENT)));
    }
    if (rating.supplyVolts().isEmpty()) {
      notes.add("the rating states no supply volts");
    }
    return notes;
  }
}
