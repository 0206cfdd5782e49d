package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ThdKind;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;
import loadwalk.result.PublishedPower;
import loadwalk.text.Sentence;

/** Words at what point outputs were read, and on whose evidence: a reading's or the operator's. */
final class PointWords {
  private static final Printer PRINTER = Printer.UTF8;

  /** What the point of a result rests on. */
  private enum Basis {
    THD_READ,
    WORKED_OUT,
    WORD,
    NOTHING
  }

  private PointWords() {}

  /**
   * Returns one note for each point and evidence, which names the loads and the figures. What was
   * read at no stated point is told at the top of the sheet.
   */
  static List<String> notes(Sheet sheet) {
    String limit = PRINTER.exact(sheet.sequence().limitThdPercent(), Unit.PERCENT);
    Map<String, List<String>> loads = new LinkedHashMap<>();
    for (Criterion criterion : Criterion.values()) {
      for (Basis basis : criterion.isStated() ? Basis.values() : new Basis[0]) {
        for (Sheet.LoadLine line : sheet.loads()) {
          Conditions conditions = line.power().conditions();
          List<LimitPair> pairs = pairs(sheet, line.power());
          if (conditions.criterion() == criterion && basis(conditions, pairs) == basis) {
            loads
                .computeIfAbsent(words(criterion, basis, limit), key -> new ArrayList<>())
                .add(withFigures(line.power(), basis, pairs));
          }
        }
      }
    }
    List<String> notes = new ArrayList<>();
    loads.forEach(
        (words, which) -> notes.add(Sentence.of("{}: {}.", words, String.join(", ", which))));
    return notes;
  }

  /** Returns the point of one result with what it rests on. */
  static String of(Conditions conditions, List<LimitPair> pairs) {
    return switch (basis(conditions, pairs)) {
      case THD_READ -> Sentence.of("{}, by the THD read", conditions.criterion().text());
      case WORKED_OUT -> Sentence.of("{}, worked out", conditions.criterion().text());
      case WORD -> Sentence.of("{}, by the operator's word", conditions.criterion().text());
      case NOTHING -> "not known";
    };
  }

  /** Returns the THD of one result and what it counts. */
  static String thd(Conditions conditions, List<LimitPair> pairs) {
    if (!pairs.isEmpty()) {
      return range(pairs);
    }
    if (conditions.thdPercent().isEmpty()) {
      return "not read";
    }
    String thd = percent(conditions.thdPercent().getAsDouble());
    Optional<ThdKind> kind = conditions.around().thdKind();
    OptionalDouble band = conditions.around().thdBandwidthHertz();
    if (kind.isEmpty()) {
      return Sentence.of("{}, kind not known", thd);
    }
    return band.isPresent()
        ? Sentence.of(
            "{} {}, to {}", thd, kind.get().label(), PRINTER.exact(band.getAsDouble(), Unit.HERTZ))
        : Sentence.of("{} {}", thd, kind.get().label());
  }

  private static String words(Criterion criterion, Basis basis, String limit) {
    String point =
        criterion == Criterion.THD_LIMIT
            ? Sentence.of("At the limit of {} THD", limit)
            : "At the onset of clipping";
    return switch (basis) {
      case THD_READ -> Sentence.of("{}, by the THD read", point);
      case WORKED_OUT -> Sentence.of("{}, worked out from readings near it", point);
      case WORD -> Sentence.of("{}, by the operator's word, with no THD read", point);
      case NOTHING -> Sentence.of("{}, with no THD read and nothing said", point);
    };
  }

  private static Basis basis(Conditions conditions, List<LimitPair> pairs) {
    if (!pairs.isEmpty()) {
      return Basis.WORKED_OUT;
    }
    if (conditions.said()) {
      return Basis.WORD;
    }
    return conditions.thdPercent().isPresent() ? Basis.THD_READ : Basis.NOTHING;
  }

  private static String withFigures(PublishedPower power, Basis basis, List<LimitPair> pairs) {
    String load = ResultWords.load(power);
    return switch (basis) {
      case THD_READ ->
          Sentence.of("{} ({})", load, percent(power.conditions().thdPercent().orElseThrow()));
      case WORKED_OUT -> Sentence.of("{} ({})", load, range(pairs));
      case WORD, NOTHING -> load;
    };
  }

  private static String range(List<LimitPair> pairs) {
    return ResultWords.range(pairs.stream().map(LimitPair::thdPercent).toList(), Unit.PERCENT);
  }

  private static String percent(double percent) {
    return PRINTER.exact(percent, Unit.PERCENT);
  }

  private static List<LimitPair> pairs(Sheet sheet, PublishedPower power) {
    return sheet.steps().stream()
        .filter(step -> step.id().equals(power.fromStepId()))
        .findFirst()
        .map(Sheet.StepLine::pairs)
        .orElse(List.of());
  }
}
