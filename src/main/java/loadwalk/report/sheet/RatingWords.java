package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.RatingComparison;
import loadwalk.text.Sentence;

/** Words how a measured power stands to its rating. */
final class RatingWords {
  private static final Printer PRINTER = Printer.UTF8;

  private RatingWords() {}

  /** Returns what differs, what the rating leaves open, and the estimate at its supply volts. */
  static List<String> notes(RatingComparison rating) {
    List<String> notes = new ArrayList<>(rating.differs());
    notes.addAll(rating.notes());
    rating
        .estimate()
        .ifPresent(
            e ->
                notes.add(
                    Sentence.of(
                        "about {} at {} ({})",
                        PRINTER.quantity(e.watts()),
                        PRINTER.exact(e.supplyVolts(), Unit.VOLT),
                        e.assumption())));
    return notes;
  }
}
