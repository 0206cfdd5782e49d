package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Table;
import loadwalk.text.Sentence;

/** Words the steps that drove a load and ended before they were measured. */
final class EndedWords {
  private static final Printer PRINTER = Printer.UTF8;

  private EndedWords() {}

  /** Returns a row for each such step, and what was seen; nothing where there is none. */
  static List<Block> blocks(List<Sheet.Ended> ended) {
    List<Block> blocks = new ArrayList<>();
    if (!ended.isEmpty()) {
      blocks.add(table(ended));
    }
    List<String> seen =
        ended.stream()
            .filter(e -> !e.seen().isEmpty())
            .map(
                e ->
                    Sentence.of(
                        "{}, seen: {}", e.step().target().stepId(), ResultWords.typed(e.seen())))
            .toList();
    if (!seen.isEmpty()) {
      blocks.add(new Bullets(seen));
    }
    return blocks;
  }

  private static Table table(List<Sheet.Ended> ended) {
    return new Table(
        "Ended before the limit: no result, last readings only",
        List.of(
            Column.words("Load"),
            Column.words("Step"),
            Column.words("Outcome"),
            Column.words("Last readings"),
            Column.words("Rating of one load")),
        ended.stream().map(EndedWords::row).toList());
  }

  private static List<String> row(Sheet.Ended ended) {
    EndedStep step = ended.step();
    return List.of(
        ResultWords.load(step.target().mode(), step.target().ohms()),
        step.target().stepId(),
        step.text(),
        last(step),
        rating(ended));
  }

  private static String last(EndedStep step) {
    Map<ReadingId, Double> others = new TreeMap<>(step.readings());
    others.remove(ReadingId.SUPPLY_AMPS);
    return others.isEmpty()
        ? "none"
        : others.entrySet().stream()
            .map(
                e ->
                    Sentence.of(
                        "{} {}",
                        e.getKey().label(),
                        PRINTER.exact(e.getValue(), e.getKey().unit())))
            .collect(Collectors.joining(", "));
  }

  private static String rating(Sheet.Ended ended) {
    return ended.ratedWatts().isPresent()
        ? Sentence.of(
            "{}, neither met nor missed",
            PRINTER.exact(ended.ratedWatts().getAsDouble(), Unit.WATT))
        : "none";
  }

  /** Returns what the reader of a sheet must know first of an amplifier that gave out. */
  static Optional<String> gaveOut(List<EndedStep> ended) {
    return ended.stream()
        .filter(step -> step.outcome() == Outcome.GAVE_OUT)
        .findFirst()
        .map(step -> Sentence.of("The amplifier gave out at {}.", step.target().stepId()));
  }
}
