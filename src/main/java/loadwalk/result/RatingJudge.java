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

/** Judges a measured power against its rating (JCGM 106:2012, 8.3.3). */
final class RatingJudge {
  /**
   * How far the supply volts may differ and still count as the rated volts, a fraction. Chosen by
   * hand.
   */
  private static final double SAME_VOLTS = 0.02;

  /**
   * How far the THD limit may differ and still count as the rated limit, a fraction. Chosen by
   * hand.
   */
  private static final double SAME_THD = 0.01;

  private RatingJudge() {}

  /**
   * Compares the power in one load with its rating.
   *
   * @param terminalVolts the volts read at the terminals; the walk's setting if they were not read
   */
  static RatingComparison compare(
      Rating rating,
      Quantity measured,
      Criterion criterion,
      Conditions conditions,
      Optional<Quantity> terminalVolts) {
    double rated = rating.watts();
    double ratio = measured.value() / rated;
    Conformance shown =
        GuardBand.AT_95_PERCENT.atLeast(
            measured.value(), measured.u(), measured.effectiveDegreesOfFreedom(), rated);
    List<String> notes = new ArrayList<>();
    RatingComparison.Verdict verdict = verdict(shown);
    if (criterion == Criterion.BELOW_LIMIT) {
      notes.add("read below the limit: the amplifier may deliver more");
      verdict = shown == Conformance.SHOWN_TO_MISS ? RatingComparison.Verdict.TOO_CLOSE : verdict;
    }
    thdNote(rating, criterion, conditions.limitThdPercent()).ifPresent(notes::add);
    double volts = terminalVolts.map(Quantity::value).orElse(conditions.supplyVolts());
    supplyNote(rating, volts).ifPresent(notes::add);
    return new RatingComparison(
        rated,
        measured,
        measured.mapped(ratio, 1 / rated, Unit.ONE),
        10 * Math.log10(Math.max(ratio, 0)),
        verdict,
        notes.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", notes)));
  }

  private static RatingComparison.Verdict verdict(Conformance shown) {
    return switch (shown) {
      case SHOWN_TO_MEET -> RatingComparison.Verdict.MEETS;
      case SHOWN_TO_MISS -> RatingComparison.Verdict.MISSES;
      case TOO_CLOSE -> RatingComparison.Verdict.TOO_CLOSE;
    };
  }

  private static Optional<String> thdNote(Rating rating, Criterion criterion, double limit) {
    OptionalDouble rated = rating.thdPercent();
    if (rated.isEmpty()) {
      return Optional.of("the rating states no THD");
    }
    String at = Printer.UTF8.exact(rated.getAsDouble(), Unit.PERCENT);
    if (criterion == Criterion.CLIPPING_ONSET) {
      return Optional.of(
          Sentence.of(
              "rated at {} THD, read at the onset of clipping: a hard clipper gives 4.75 % more"
                  + " power at 1 % THD",
              at));
    }
    boolean same = Math.abs(rated.getAsDouble() - limit) <= SAME_THD * limit;
    return criterion == Criterion.BELOW_LIMIT || same
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "rated at {} THD, measured at {}", at, Printer.UTF8.exact(limit, Unit.PERCENT)));
  }

  private static Optional<String> supplyNote(Rating rating, double volts) {
    OptionalDouble rated = rating.supplyVolts();
    if (rated.isEmpty()) {
      return Optional.of("the rating states no supply volts");
    }
    double at = rated.getAsDouble();
    return Math.abs(volts - at) <= SAME_VOLTS * at
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "rated at a supply of {}, measured at {}",
                Printer.UTF8.exact(at, Unit.VOLT),
                Printer.UTF8.exact(volts, Unit.VOLT)));
  }
}
