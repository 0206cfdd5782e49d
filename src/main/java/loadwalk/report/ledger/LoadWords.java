package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.report.sheet.ResultWords;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.text.Sentence;

/** Words the results of a ledger: their marks, their conditions, and why they do not rank. */
public final class LoadWords {
  private static final Printer PRINT = Printer.UTF8;

  private LoadWords() {}

  /** Returns what stands behind the number of a result: the point it was read at and its marks. */
  static String behind(Load load) {
    String marks = load.marks().stream().map(Mark::text).collect(Collectors.joining(", "));
    String point = load.criterion() == Criterion.CLIPPING_ONSET ? ", at clipping onset" : "";
    return marks.isEmpty() ? point : Sentence.of("{} ({})", point, marks);
  }

  /** Returns the worst mark of a result as it stands before its number on a narrow screen. */
  public static String before(Load load) {
    return load.marks().stream()
        .findFirst()
        .map(mark -> Sentence.of("{}: ", mark.word().replace('-', ' ')))
        .orElse("");
  }

  /** Says in one line how a walk stands: its name, the marks of its strongest result, its rank. */
  public static String standing(Ledger ledger, LedgerEntry walk) {
    List<String> said = new ArrayList<>(List.of(walk.walk()));
    walk.strongest().ifPresent(load -> load.marks().forEach(mark -> said.add(mark.text())));
    if (ledger.sort().ranks()) {
      said.add(rank(ledger, walk));
    }
    return String.join("; ", said);
  }

  private static String rank(Ledger ledger, LedgerEntry walk) {
    for (RankGroup group : ledger.groups()) {
      if (group.walks().contains(walk)) {
        return Sentence.of("ranked among: {}", of(ledger.sort(), group));
      }
    }
    return Sentence.of("not ranked: {}", ledger.sort().unranked(walk));
  }

  /** Returns what the walks of a group have alike. */
  static String of(LedgerSort sort, RankGroup group) {
    Load first = group.loads().get(0);
    if (!sort.isAmongAlike()) {
      return first.isPractice()
          ? "each under the conditions of its rating, practice"
          : "each under the conditions of its rating";
    }
    return Sentence.of(
        "{}, {}", ResultWords.load(first.mode(), first.ohms()), conditions(group.loads()));
  }

  /** Returns the conditions that results have alike, apart from their mode and load. */
  static String conditions(List<Load> alike) {
    List<String> words = new ArrayList<>();
    words.add(tone(alike));
    words.add(Likeness.POINT.of(alike.get(0)));
    words.add(supply(alike));
    words.add(Sentence.of("warm-up {}", Likeness.WARM.of(alike.get(0))));
    if (alike.get(0).isPractice()) {
      words.add("practice");
    }
    return String.join(", ", words);
  }

  private static String tone(List<Load> alike) {
    return alike.get(0).conditions().hertz().isEmpty()
        ? Likeness.TONE.of(alike.get(0))
        : range(alike, load -> load.conditions().hertz(), Unit.HERTZ, 3);
  }

  private static String supply(List<Load> alike) {
    return alike.get(0).supplyVolts().isEmpty()
        ? "supply volts not read"
        : Sentence.of("supply {}", range(alike, Load::supplyVolts, Unit.VOLT, 4));
  }

  private static String range(
      List<Load> alike, Function<Load, OptionalDouble> what, Unit unit, int digits) {
    double[] read = alike.stream().mapToDouble(l -> what.apply(l).orElseThrow()).sorted().toArray();
    String low = PRINT.value(read[0], unit, digits);
    String high = PRINT.value(read[read.length - 1], unit, digits);
    return low.equals(high) ? low : Sentence.of("{} to {}", low, high);
  }

  /** Says how many results of walks are not ranked, and why; empty where all are. */
  public static List<String> unranked(List<LedgerEntry> walks) {
    Map<Mark, Integer> counts = new EnumMap<>(Mark.class);
    int damaged = 0;
    for (LedgerEntry walk : walks) {
      for (Load load : walk.loads()) {
        if (walk.soundness().standing().isFaulty()) {
          damaged++;
        } else if (!walk.ranks(load)) {
          counts.merge(load.unrankedBy().orElse(Mark.LIMIT_NOT_KNOWN), 1, Integer::sum);
        }
      }
    }
    List<String> why = new ArrayList<>();
    counts.forEach((mark, count) -> why.add(because(mark, count)));
    if (damaged > 0) {
      why.add(Sentence.of("{} from damaged journals", damaged));
    }
    int all = damaged + counts.values().stream().mapToInt(Integer::intValue).sum();
    String reasons = String.join(", ", why);
    return all == 0
        ? List.of()
        : List.of(
            all == 1
                ? Sentence.of("1 result is not ranked: {}.", reasons)
                : Sentence.of("{} results are not ranked: {}.", all, reasons));
  }

  private static String because(Mark mark, int count) {
    return switch (mark) {
      case IMPOSSIBLE -> Sentence.of("{} with more out than in", count);
      case STOOD_BY -> Sentence.of("{} stood by", count);
      case IN_DOUBT -> Sentence.of("{} in doubt", count);
      case ABOVE_LIMIT -> Sentence.of("{} above the limit", count);
      case BELOW_LIMIT -> Sentence.of("{} below the limit", count);
      case LIMIT_NOT_KNOWN -> Sentence.of("{} where nobody read the THD or named the point", count);
      default -> Sentence.of("{} {}", count, mark.text());
    };
  }
}
