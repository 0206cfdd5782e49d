package loadwalk.cautions;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Tables;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Verdict;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.plan.StockRules;
import loadwalk.plan.wiring.WiringLoadBank;

/** The tables of situations in {@code src/test/resources/cautions}, read strictly. */
final class Situations {
  static final List<String> COLUMNS =
      List.of(
          "situation",
          "amplifier",
          "bench",
          "so far",
          "step",
          "forecast",
          "cautions",
          "verdict",
          "wanted");

  private static final List<String> OTHER_TABLES =
      List.of("amplifiers.md", "benches.md", "codes.md");
  private static final StepCautions CAUTIONS =
      new StepCautions(Tables.stock(), new WiringLoadBank(Tables.stock()));

  private final Catalogue<Amplifier> amplifiers;
  private final Catalogue<Bench> benches;
  private final CautionCodes codes;

  Situations(String amplifiers, String benches, String codes) {
    this.amplifiers =
        new Catalogue<>("amplifiers.md", amplifiers, AmplifierRow.COLUMNS, AmplifierRow::amplifier);
    this.benches = new Catalogue<>("benches.md", benches, BenchRow.COLUMNS, BenchRow::bench);
    this.codes = CautionCodes.read(codes);
  }

  /** Returns the situations that the repository keeps. */
  static Situations kept() {
    return new Situations(text("amplifiers.md"), text("benches.md"), text("codes.md"));
  }

  CautionCodes codes() {
    return codes;
  }

  /**
   * One situation.
   *
   * @param row where it stands
   * @param cautions the cautions wanted, in order, each as {@code heed lead-amps}
   * @param verdict the verdict wanted
   */
  record Situation(MarkdownTable.Row row, List<String> cautions, String verdict) {
    String name() {
      return row.file() + ":" + row.line() + " " + row.cell("situation");
    }
  }

  /** Returns the situations of all kept tables, in the order of the files' names. */
  List<Situation> all() {
    List<Situation> all = new ArrayList<>();
    for (String file : files()) {
      all.addAll(read(file, text(file)));
    }
    return all;
  }

  /** Reads the situations of one text; an unknown word in any cell is an error with its line. */
  List<Situation> read(String file, String text) {
    return MarkdownTable.read(file, text, COLUMNS).stream().map(this::situation).toList();
  }

  private Situation situation(MarkdownTable.Row row) {
    List<String> cautions = Words.list(row.cell("cautions"), ",", caution -> caution);
    List<String> verdicts = Stream.of(Verdict.values()).map(Verdict::word).toList();
    if (!verdicts.contains(row.cell("verdict"))) {
      throw row.fault("a verdict is one of " + verdicts + ", found " + row.cell("verdict"));
    }
    for (String caution : cautions) {
      if (!codes.holds(caution)) {
        throw row.fault("codes.md knows no «" + caution + "»");
      }
    }
    try {
      amplifiers.of(row.cell("amplifier"));
      benches.of(row.cell("bench"));
      StepCell.of(row.cell("step"));
      StatedForecast.bands(row.cell("forecast"));
    } catch (IllegalArgumentException fault) {
      throw row.fault(fault.getMessage());
    }
    return new Situation(row, cautions, row.cell("verdict"));
  }

  /** Returns the brief that the program gives in a situation. */
  Forecast brief(Situation situation) {
    MarkdownTable.Row row = situation.row;
    StepCell step = StepCell.of(row.cell("step"));
    String stated = row.cell("forecast");
    Forecaster rules = StockRules.RULES;
    Forecaster forecaster =
        stated.equals(MarkdownTable.NONE)
            ? rules
            : new StatedForecast(rules, CAUTIONS, step.id(), StatedForecast.bands(stated));
    try {
      return new WalkToBrief(
              forecaster, step, amplifiers.of(row.cell("amplifier")), benches.of(row.cell("bench")))
          .brief(row.cell("so far"));
    } catch (IllegalArgumentException fault) {
      throw row.fault(fault.getMessage());
    }
  }

  /** Returns a caution in the words of the tables: {@code heed lead-amps}. */
  static String words(Caution caution) {
    return caution.gravity().word() + " " + caution.code();
  }

  /**
   * Returns what to read where a brief differs: both answers, the reasons, and the row to copy once
   * somebody has made sure that the new answer is the right one.
   */
  static String difference(Situation situation, Forecast brief) {
    List<String> found = brief.cautions().stream().map(Situations::words).toList();
    String cautions = found.isEmpty() ? MarkdownTable.NONE : String.join(", ", found);
    StringBuilder told = new StringBuilder("\n" + situation.name());
    told.append("\n  expected ").append(situation.row.cell("cautions"));
    told.append(" → ").append(situation.verdict);
    told.append("\n  found    ").append(cautions).append(" → ").append(brief.verdict().word());
    for (Caution caution : brief.cautions()) {
      told.append("\n    ").append(words(caution)).append(": ").append(caution.text());
    }
    told.append("\n  If the new answer is right, and you know why, the row is\n");
    told.append(
        situation.row.with(Map.of("cautions", cautions, "verdict", brief.verdict().word())));
    return told.toString();
  }

  private static Path folder() {
    try {
      return Path.of(Situations.class.getResource("/cautions").toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> files() {
    try (Stream<Path> list = Files.list(folder())) {
      TreeSet<String> names = new TreeSet<>();
      list.forEach(path -> names.add(path.getFileName().toString()));
      OTHER_TABLES.forEach(names::remove);
      return List.copyOf(names);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(String file) {
    try {
      return Files.readString(folder().resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
