package loadwalk.report.ledger;

import java.util.List;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * What can be said of the power of one result beside another's.
 *
 * @param outcome what it is
 * @param words the same in words, to follow the name of the other
 */
record Comparison(Outcome outcome, String words) {
  private static final Printer PRINT = Printer.UTF8;

  /** What can be said. */
  enum Outcome {
    MORE,
    LESS,
    TOO_CLOSE,
    /** Reached under other conditions. */
    OTHER_CONDITIONS,
    /** One of them does not rank at all. */
    NOT_RANKED
  }

  /** Compares a result with the first one; only what ranks under like conditions is compared. */
  static Comparison of(RankedResult first, RankedResult other) {
    if (!first.walk().ranks(first.load())) {
      return notRanked(
          Sentence.of(
              "not compared: the first is not ranked, {}", first.walk().unranked(first.load())));
    }
    if (!other.walk().ranks(other.load())) {
      return notRanked(Sentence.of("not ranked, {}", other.walk().unranked(other.load())));
    }
    List<String> differs = Likeness.differences(first.load(), other.load());
    if (!differs.isEmpty()) {
      return new Comparison(
          Outcome.OTHER_CONDITIONS,
          Sentence.of("other conditions, {}", String.join("; ", differs)));
    }
    return measured(first, other);
  }

  private static Comparison measured(RankedResult first, RankedResult other) {
    Quantity difference = other.total().minus(first.total());
    String watts = PRINT.value(Math.abs(difference.value()), Unit.WATT, 3);
    if (other.isCloseTo(first)) {
      String most = PRINT.value(difference.expanded(), Unit.WATT, 3);
      return new Comparison(
          Outcome.TOO_CLOSE, Sentence.of("too close to call, {} apart, within {}", watts, most));
    }
    double part = Math.abs(difference.value()) / first.watts();
    String percent = PRINT.value(100 * part, Unit.PERCENT, 2);
    return difference.value() > 0
        ? new Comparison(Outcome.MORE, Sentence.of("{} more, {}", watts, percent))
        : new Comparison(Outcome.LESS, Sentence.of("{} less, {}", watts, percent));
  }

  private static Comparison notRanked(String words) {
    return new Comparison(Outcome.NOT_RANKED, words);
  }
}
