package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import loadwalk.bench.Mode;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Figure;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
import loadwalk.report.sheet.ResultWords;
import loadwalk.report.sheet.SheetCharts;
import loadwalk.result.Conditions;
import loadwalk.result.PowerAtSupply;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Words the comparison of two to four walks. */
public final class ComparisonPage {
  /** The most walks that can be told apart in one chart. */
  public static final int MOST = 4;

  /** The factor that sets walks at one load side by side, so that none hides another. */
  private static final double BESIDE = 1.03;

  private static final Printer PRINTER = Printer.UTF8;

  private final List<LedgerEntry> walks;
  private final List<LedgerEntry.Load> rungs;

  private ComparisonPage(List<LedgerEntry> walks) {
    this.walks = walks;
    this.rungs = rungs(walks);
  }

  /**
   * Returns the page of a comparison.
   *
   * @throws IllegalArgumentException unless there are two to four walks
   */
  public static Page of(List<LedgerEntry> walks) {
    if (walks.size() < 2 || walks.size() > MOST) {
      throw new IllegalArgumentException("two to four walks can be compared, not " + walks.size());
    }
    return new ComparisonPage(List.copyOf(walks)).page();
  }

  private static List<LedgerEntry.Load> rungs(List<LedgerEntry> walks) {
    List<LedgerEntry.Load> rungs = new ArrayList<>();
    for (LedgerEntry walk : walks) {
      for (LedgerEntry.Load load : walk.loads()) {
        if (rungs.stream().noneMatch(r -> r.sameAs(load))) {
          rungs.add(load);
        }
      }
    }
    rungs.sort(
        Comparator.comparing(LedgerEntry.Load::mode)
            .thenComparing(Comparator.comparingDouble(LedgerEntry.Load::ohms).reversed()));
    return rungs;
  }

  private Page page() {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("power", "Power", List.of(power(), read())));
    differences().ifPresent(sections::add);
    estimates().ifPresent(sections::add);
    List<Block> figures = figures();
    if (!figures.isEmpty()) {
      sections.add(new Section("charts", "Charts", figures));
    }
    List<List<String>> ways = new ArrayList<>();
    walks.forEach(w -> ways.add(LedgerPage.wayRow(label(w), w.done())));
    Table done = new Table("What each walk was asked for", LedgerPage.wayColumns("Walk"), ways);
    sections.add(new Section("ways", "Sequences", List.of(done)));
    String title =
        String.join(" / ", walks.stream().map(w -> Visible.line(w.amplifier(), 40)).toList());
    return new Page(
        title, Sentence.of("Comparison of {} walks", walks.size()), warnings(), sections);
  }

  /**
   * Names a walk by its place and amplifier, so that two walks of one model get different names.
   */
  private String label(LedgerEntry walk) {
    return (walks.indexOf(walk) + 1) + " " + Visible.line(walk.amplifier(), 32);
  }

  private List<String> warnings() {
    List<String> warnings = new ArrayList<>(LoadWords.unranked(walks));
    simulated().ifPresent(warnings::add);
    for (LedgerEntry walk : walks) {
      String told = Visible.sentence(walk.soundness().told());
      if (!told.isEmpty()) {
        warnings.add(Sentence.of("{}: {}", label(walk), told));
      }
      if (!walk.finished() && !walk.soundness().standing().isFaulty()) {
        warnings.add(Sentence.of("{} is unfinished.", label(walk)));
      }
      if (walk.openDoubts() > 0) {
        warnings.add(Sentence.of("{} has doubts without an answer.", label(walk)));
      }
    }
    return warnings;
  }

  private Optional<String> simulated() {
    List<String> labels = walks.stream().filter(LedgerEntry::practice).map(this::label).toList();
    if (labels.isEmpty()) {
      return Optional.empty();
    }
    if (labels.size() == walks.size()) {
      return Optional.of("All of these are simulated amplifiers, not measurements.");
    }
    return Optional.of(
        labels.size() == 1
            ? Sentence.of("{} is a simulated amplifier, not a measurement.", labels.get(0))
            : Sentence.of(
                "{} are simulated amplifiers, not measurements.", String.join(", ", labels)));
  }

  private Table power() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Load"));
    walks.forEach(w -> columns.add(Column.numbers(label(w))));
    List<List<String>> rows = new ArrayList<>();
    for (LedgerEntry.Load rung : rungs) {
      List<String> row = new ArrayList<>();
      row.add(ResultWords.load(rung.mode(), rung.ohms()));
      walks.forEach(
          w ->
              row.add(
                  at(w, rung)
                      .map(l -> PRINTER.quantity(l.total(w.walk())) + LoadWords.behind(l))
                      .orElseGet(() -> ended(w, rung.mode(), rung.ohms()))));
      rows.add(row);
    }
    List<Quantity> all =
        walks.stream().flatMap(w -> w.loads().stream().map(l -> l.total(w.walk()))).toList();
    String caption = Sentence.of("Total power, ± at {}", ResultWords.coverage(all));
    return new Table(caption, columns, rows);
  }

  /** Returns how the step into a load without a result ended. */
  private static String ended(LedgerEntry walk, Mode mode, double ohms) {
    return walk.endedAt(mode, ohms).map(e -> e.outcome().text()).orElse("none");
  }

  private Table read() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Figure"));
    walks.forEach(w -> columns.add(Column.numbers(label(w))));
    List<String> ofRated = new ArrayList<>(List.of("worst of rated"));
    List<String> fuse = new ArrayList<>(List.of("W per fuse A"));
    List<String> efficiency = new ArrayList<>(List.of("best efficiency"));
    for (LedgerEntry w : walks) {
      ofRated.add(
          w.worstOfRated()
              .map(
                  l ->
                      Sentence.of(
                          "{} at {}", LedgerPage.ofRated(w), ResultWords.load(l.mode(), l.ohms())))
              .orElse(LedgerPage.ofRated(w)));
      fuse.add(LedgerPage.number(w.wattsPerFuseAmp(), 1));
      efficiency.add(LedgerPage.percent(w.bestEfficiency()));
    }
    return new Table("Side by side", columns, List.of(ofRated, fuse, efficiency));
  }

  private static Optional<LedgerEntry.Load> at(LedgerEntry walk, LedgerEntry.Load rung) {
    return walk.loads().stream().filter(rung::sameAs).findFirst();
  }

  /** Sets each walk against the first at each load that both have a result at. */
  private Optional<Section> differences() {
    List<String> lines = new ArrayList<>();
    for (LedgerEntry.Load rung : rungs) {
      Optional<RankedResult> first = result(walks.get(0), rung);
      for (LedgerEntry walk : walks.subList(1, walks.size())) {
        Optional<RankedResult> other = result(walk, rung);
        if (first.isPresent() && other.isPresent()) {
          lines.add(difference(first.get(), other.get()));
        }
      }
    }
    String title = Sentence.of("Differences from {}", label(walks.get(0)));
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("differences", title, List.of(new Bullets(lines))));
  }

  private String difference(RankedResult first, RankedResult other) {
    return Sentence.of(
        "{}, {}: {}.",
        label(other.walk()),
        ResultWords.load(other.load().mode(), other.load().ohms()),
        Comparison.of(first, other).words());
  }

  private static Optional<RankedResult> result(LedgerEntry walk, LedgerEntry.Load rung) {
    return at(walk, rung).map(load -> new RankedResult(walk, load));
  }

  /** Estimates the power at the first walk's supply volts for walks read at other volts. */
  private Optional<Section> estimates() {
    List<String> lines = new ArrayList<>();
    for (LedgerEntry.Load rung : rungs) {
      Optional<LedgerEntry.Load> first = at(walks.get(0), rung);
      if (first.isPresent() && first.get().supplyVolts().isPresent()) {
        double volts = first.get().supplyVolts().getAsDouble();
        walks.subList(1, walks.size()).forEach(w -> estimate(w, rung, volts).ifPresent(lines::add));
      }
    }
    String title = Sentence.of("Estimates at the supply voltage of {}", label(walks.get(0)));
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("estimates", title, List.of(new Bullets(lines))));
  }

  /** What does not rank is no ground for an estimate. */
  private Optional<String> estimate(LedgerEntry walk, LedgerEntry.Load rung, double volts) {
    Optional<LedgerEntry.Load> load =
        at(walk, rung).filter(walk::ranks).filter(l -> l.supplyVolts().isPresent());
    if (load.isEmpty() || !isOff(load.get().supplyVolts().getAsDouble(), volts)) {
      return Optional.empty();
    }
    Quantity measured = load.get().total(walk.walk());
    Quantity at = Quantity.exact(load.get().supplyVolts().getAsDouble(), Unit.VOLT);
    PowerAtSupply power = PowerAtSupply.of(measured, at, volts, walk.regulated());
    return Optional.of(
        Sentence.of(
            "{}, {}: {} at {}, {}.",
            label(walk),
            ResultWords.load(rung.mode(), rung.ohms()),
            PRINTER.quantity(power.watts()),
            PRINTER.exact(volts, Unit.VOLT),
            power.assumption()));
  }

  private static boolean isOff(double from, double to) {
    return from > 0 && !Conditions.within(Conditions.SAME_READING, from, to);
  }

  private List<Block> figures() {
    List<Figure> all = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      String title = Sentence.of("Power vs. load, {}", mode.word());
      all.add(
          new Figure(
              chart(title, mode, "total power, W", false),
              "Each walk with its uncertainty; only results that rank."));
      all.add(
          new Figure(
              chart(
                  Sentence.of("Efficiency vs. load, {}", mode.word()), mode, "efficiency, %", true),
              "Output divided by input at each load, of results that rank. Bars are k = 2."));
    }
    return all.stream().filter(f -> !f.chart().isEmpty()).map(Block.class::cast).toList();
  }

  private Chart chart(String title, Mode mode, String label, boolean efficiency) {
    TreeSet<Double> ohms = new TreeSet<>();
    List<Series> series = new ArrayList<>();
    for (int i = 0; i < walks.size(); i++) {
      double beside = Math.pow(BESIDE, i - (walks.size() - 1) / 2.0);
      List<Point> points = new ArrayList<>();
      LedgerEntry walk = walks.get(i);
      for (LedgerEntry.Load rung : rungs) {
        Optional<LedgerEntry.Load> load =
            at(walk, rung).filter(l -> l.mode() == mode && walk.ranks(l));
        load.ifPresent(l -> ohms.add(l.ohms()));
        load.flatMap(l -> point(l, l.ohms() * beside, efficiency)).ifPresent(points::add);
      }
      SheetCharts.add(series, label(walks.get(i)), Series.Kind.JOINED, i + 1, points);
    }
    Axis loads = Axis.ratios("load, Ω", SheetCharts.ticks(ohms));
    return Chart.of(title, loads, Axis.fromZero(label), series);
  }

  private static Optional<Point> point(LedgerEntry.Load load, double x, boolean efficiency) {
    if (!efficiency) {
      Quantity total = load.total("total");
      return Optional.of(Point.within(x, total.value(), total.expanded()));
    }
    return load.efficiency().isPresent()
        ? Optional.of(
            Point.within(
                x,
                100 * load.efficiency().getAsDouble(),
                2 * 100 * load.efficiencyU().getAsDouble()))
        : Optional.empty();
  }
}
