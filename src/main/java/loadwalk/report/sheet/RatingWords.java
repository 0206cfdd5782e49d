package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Table;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison;
import loadwalk.result.RatingComparison.Verdict;
import loadwalk.text.Sentence;

/** Words how measured powers stand to their ratings. */
final class RatingWords {
  private static final Printer PRINTER = Printer.UTF8;

  private RatingWords() {}

  /**
   * Returns a row for each load that has a rating; none if none has. Ratio and decibels stand only
   * where there is a verdict: under other conditions they would read as one.
   */
  static Optional<Table> table(List<Sheet.LoadLine> loads) {
    List<List<String>> rows =
        loads.stream().filter(l -> l.rating().isPresent()).map(RatingWords::row).toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                "Against the rating of one load; the estimate is for the rating's supply volts",
                List.of(
                    Column.words("Load"),
                    Column.numbers("Read", Unit.WATT),
                    Column.numbers("Rated", Unit.WATT),
                    Column.words("Rating"),
                    Column.numbers("Of rated"),
                    Column.numbers("In dB"),
                    Column.numbers("Estimate", Unit.WATT)),
                rows));
  }

  private static List<String> row(Sheet.LoadLine line) {
    RatingComparison rating = line.rating().orElseThrow();
    boolean impossible = line.power().marks().contains(Mark.IMPOSSIBLE);
    boolean judged = rating.verdict() != Verdict.OTHER_CONDITIONS && !impossible;
    return List.of(
        ResultWords.load(line.power()),
        PRINTER.quantity(rating.measured()),
        PRINTER.exact(rating.ratingWatts(), Unit.WATT),
        impossible ? Mark.IMPOSSIBLE.text() : verdict(rating, line.power().marks()),
        judged ? PRINTER.value(100 * rating.ratio().value(), Unit.PERCENT, 3) : "",
        judged ? ResultWords.decibels(rating.decibels()) : "",
        rating
            .estimate()
            .filter(e -> !impossible)
            .map(e -> PRINTER.quantity(e.watts()))
            .orElse(""));
  }

  /** Returns the verdict; one that rests on a doubted reading says so beside it. */
  private static String verdict(RatingComparison rating, List<Mark> marks) {
    String verdict = rating.verdict().text();
    return marks.stream()
        .filter(mark -> mark == Mark.STOOD_BY || mark == Mark.IN_DOUBT)
        .findFirst()
        .map(mark -> Sentence.of("{}, {}", verdict, mark.text()))
        .orElse(verdict);
  }

  /**
   * Returns which channel is judged, what differs, what the rating leaves open, the estimate;
   * nothing of a result that cannot be.
   */
  static List<String> notes(Sheet.LoadLine line) {
    if (line.rating().isEmpty() || line.power().marks().contains(Mark.IMPOSSIBLE)) {
      return List.of();
    }
    RatingComparison rating = line.rating().get();
    String load = ResultWords.load(line.power());
    List<String> notes = new ArrayList<>();
    if (line.power().channelWatts().size() > 1) {
      notes.add(
          Sentence.of(
              "{}: the rating is set against the weaker channel, {}.",
              load,
              PRINTER.quantity(rating.measured())));
    }
    List<String> told = new ArrayList<>();
    if (!rating.differs().isEmpty()) {
      told.add(
          Sentence.of(
              "Other conditions than the rating's: {}.", String.join("; ", rating.differs())));
    }
    rating
        .estimate()
        .ifPresent(
            e ->
                told.add(
                    Sentence.of(
                        "About {} at {} ({}).",
                        PRINTER.quantity(e.watts()),
                        PRINTER.exact(e.supplyVolts(), Unit.VOLT),
                        e.assumption())));
    rating.notes().forEach(note -> told.add(ResultWords.sentence(note)));
    if (!told.isEmpty()) {
      notes.add(Sentence.of("{}: {}", load, String.join(" ", told)));
    }
    return notes;
  }
}
