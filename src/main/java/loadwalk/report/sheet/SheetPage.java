package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Headline;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
import loadwalk.result.Criterion;
import loadwalk.result.RatingComparison;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Words a sheet for all formats. */
public final class SheetPage {
  private static final Printer PRINTER = Printer.UTF8;

  private final Sheet sheet;

  private SheetPage(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Returns the page of a sheet. */
  public static Page of(Sheet sheet) {
    return new SheetPage(sheet).page();
  }

  private Page page() {
    List<Section> sections = new ArrayList<>();
    sections.add(headline());
    List<Block> figures = new SheetCharts(sheet).figures();
    if (!figures.isEmpty()) {
      sections.add(new Section("charts", "Charts", figures));
    }
    sections.add(identity());
    sections.add(new Section("asked", "Instructions", List.of(asked())));
    sections.add(new Section("readings", "Readings and forecast", readings()));
    sections.addAll(WaveSections.sections(sheet));
    sections.addAll(ComputedSections.sections(sheet.result()));
    sections.addAll(WalkRecordSections.sections(sheet));
    sections.add(new Section("conditions", "Conditions and bench", BenchBlocks.blocks(sheet)));
    sections.add(new Section("assumptions", "Assumptions", assumptions()));
    sheet.budgetStep().ifPresent(step -> sections.add(BudgetSection.of(step)));
    String subtitle =
        Sentence.of(
            "Walk {} · {} · {}",
            Visible.name(sheet.walk()),
            Visible.name(sheet.sequence().name()),
            ResultWords.day(sheet.lastWallMillis()));
    return new Page(Visible.name(sheet.amplifier().name()), subtitle, sheet.warnings(), sections);
  }

  private Section headline() {
    List<Block> blocks = new ArrayList<>();
    if (sheet.loads().isEmpty()) {
      blocks.add(new Paragraph("No output measured yet."));
      return new Section("power", "Power", blocks);
    }
    List<List<String>> rows = sheet.loads().stream().map(SheetPage::loadRow).toList();
    Table table =
        new Table(
            Sentence.of("Power at each load, ± at {}", ResultWords.coverage(powers())),
            List.of(
                Column.words("Load"),
                Column.numbers("Per load"),
                Column.numbers("Total"),
                Column.numbers("Rated"),
                Column.numbers("Of rated"),
                Column.numbers("In dB"),
                Column.words("Rating")),
            rows);
    blocks.add(new Headline(table));
    List<String> notes = new ArrayList<>();
    notes.addAll(criteria());
    sheet.loads().forEach(line -> notes.addAll(notes(line)));
    blocks.add(new Bullets(notes));
    return new Section("power", "Power", blocks);
  }

  private static List<String> loadRow(Sheet.LoadLine line) {
    Optional<RatingComparison> rating = line.rating();
    boolean stereo = line.power().mode() == Mode.STEREO;
    return List.of(
        ResultWords.load(line.power().mode(), line.power().ohms()),
        line.power().channelWatts().stream()
            .map(PRINTER::quantity)
            .collect(Collectors.joining(", ")),
        stereo ? PRINTER.quantity(line.power().totalWatts()) : "",
        rating.map(r -> PRINTER.exact(r.ratingWatts(), Unit.WATT)).orElse(""),
        rating.map(r -> PRINTER.value(100 * r.ratio().value(), Unit.PERCENT, 3)).orElse(""),
        rating.map(r -> ResultWords.decibels(r.decibels())).orElse(""),
        rating.map(r -> r.verdict().text()).orElse("no rating"));
  }

  /**
   * Returns one note for each point at which loads were read; if the points differ, it names the
   * loads.
   */
  private List<String> criteria() {
    List<String> notes = new ArrayList<>();
    for (Criterion criterion : Criterion.values()) {
      List<String> loads =
          sheet.loads().stream()
              .filter(l -> l.power().criterion() == criterion)
              .map(l -> ResultWords.load(l.power().mode(), l.power().ohms()))
              .toList();
      if (!loads.isEmpty()) {
        notes.add(readAt(loads, point(criterion)));
      }
    }
    return notes;
  }

  private String readAt(List<String> loads, String point) {
    if (loads.size() == sheet.loads().size()) {
      return Sentence.of("Every load was read {}.", point);
    }
    return loads.size() == 1
        ? Sentence.of("{} was read {}.", loads.get(0), point)
        : Sentence.of("{} were read {}.", String.join(", ", loads), point);
  }

  private String point(Criterion criterion) {
    return criterion == Criterion.THD_LIMIT
        ? Sentence.of("at {} THD", PRINTER.exact(sheet.sequence().limitThdPercent(), Unit.PERCENT))
        : criterion.text();
  }

  private static List<String> notes(Sheet.LoadLine line) {
    String load = ResultWords.load(line.power().mode(), line.power().ohms());
    List<String> notes = new ArrayList<>();
    if (!line.power().why().isEmpty()) {
      notes.add(
          Sentence.of(
              "{} is taken from {}: {}.", load, line.power().fromStepId(), line.power().why()));
    }
    line.rating()
        .filter(rating -> line.power().channelWatts().size() > 1)
        .ifPresent(
            rating ->
                notes.add(
                    Sentence.of(
                        "{}: the rating is judged by the weaker channel, {}.",
                        load,
                        PRINTER.quantity(rating.measured()))));
    line.rating()
        .map(RatingWords::notes)
        .filter(words -> !words.isEmpty())
        .ifPresent(
            words ->
                notes.add(Sentence.of("{} vs. its rating: {}.", load, String.join("; ", words))));
    return notes;
  }

  private Section identity() {
    Amplifier a = sheet.amplifier();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term("Maker and model", Visible.name(a.maker()) + ", " + Visible.name(a.model())));
    a.year().ifPresent(year -> terms.add(new Term("Year", String.valueOf(year))));
    a.amplifierClass().ifPresent(c -> terms.add(new Term("Class", Visible.name(c))));
    a.channels().ifPresent(c -> terms.add(new Term("Channels", String.valueOf(c))));
    a.serial().ifPresent(s -> terms.add(new Term("Serial number", Visible.name(s))));
    if (sheet.serialKeptBack()) {
      terms.add(new Term("Serial number", "hidden"));
    }
    for (Mode mode : Mode.values()) {
      a.minimumOhms(mode)
          .ifPresent(
              ohms ->
                  terms.add(
                      new Term(
                          Sentence.of("Minimum load, {}", mode.word()),
                          PRINTER.exact(ohms, Unit.OHM))));
    }
    a.fuseAmps()
        .ifPresent(amps -> terms.add(new Term("Fuses", ResultWords.fuses(a.fuses(), amps))));
    a.regulated().ifPresent(r -> terms.add(new Term("Regulated rails", r ? "yes" : "no")));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Terms(terms));
    if (!a.ratings().isEmpty()) {
      blocks.add(ratings(a.ratings()));
    }
    return new Section("amplifier", "Amplifier", blocks);
  }

  private static Table ratings(List<Rating> ratings) {
    List<List<String>> rows = new ArrayList<>();
    for (Rating r : ratings) {
      rows.add(
          List.of(
              ResultWords.load(r.mode(), r.ohms()),
              PRINTER.exact(r.watts(), Unit.WATT),
              r.supplyVolts().isPresent()
                  ? PRINTER.exact(r.supplyVolts().getAsDouble(), Unit.VOLT)
                  : "not stated",
              r.thdPercent().isPresent()
                  ? PRINTER.exact(r.thdPercent().getAsDouble(), Unit.PERCENT)
                  : "not stated"));
    }
    return new Table(
        "Ratings, per load",
        List.of(
            Column.words("Load"),
            Column.numbers("Rated"),
            Column.numbers("Supply"),
            Column.numbers("THD")),
        rows);
  }

  private Terms asked() {
    return new Terms(
        sheet.steps().stream()
            .map(step -> new Term(step.id(), Visible.sentence(step.instruction())))
            .toList());
  }

  private List<Block> readings() {
    List<List<String>> rows = new ArrayList<>();
    for (Sheet.StepLine step : sheet.steps()) {
      for (Sheet.ReadingLine r : step.readings()) {
        rows.add(
            List.of(
                step.id(),
                r.id().label(),
                Visible.name(r.typed()),
                PRINTER.reading(r.value(), r.id().unit(), ResultWords.resolution(r)),
                r.forecast()
                    .map(b -> PRINTER.range(b.low(), b.high(), r.id().unit()))
                    .orElse("none"),
                r.forecast().map(b -> b.holds(r.value()) ? "yes" : "no").orElse("")));
      }
      for (var pair : step.pairs()) {
        String shown =
            Sentence.of(
                "{} at {}",
                PRINTER.exact(pair.volts(), Unit.VOLT),
                PRINTER.exact(pair.thdPercent(), Unit.PERCENT));
        rows.add(List.of(step.id(), "volts and THD", shown, shown, "none", ""));
      }
    }
    if (rows.isEmpty()) {
      return List.of(new Paragraph("No readings entered."));
    }
    return List.of(
        new Table(
            "Readings used",
            List.of(
                Column.words("Step"),
                Column.words("Reading"),
                Column.words("Typed"),
                Column.numbers("Taken as"),
                Column.numbers("Forecast, 95 %"),
                Column.words("Inside")),
            rows));
  }

  private List<Quantity> powers() {
    return sheet.loads().stream()
        .flatMap(
            line ->
                Stream.concat(
                    line.power().channelWatts().stream(), Stream.of(line.power().totalWatts())))
        .toList();
  }

  private boolean hasScatter() {
    return sheet.result().steps().stream()
        .flatMap(r -> Stream.of(r.outputVolts(), r.totalWatts(), r.inputWatts()))
        .flatMap(Optional::stream)
        .anyMatch(Quantity::isEstimated);
  }

  private List<Block> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Uncertainty follows JCGM 100. It comes from meter specifications and load tolerances, and"
            + " is printed expanded, at k = 2.");
    if (hasScatter()) {
      lines.add(
          "A reading taken straight from a meter also carries the scatter of its last readings"
              + " (type A). Where that matters, k is larger (Welch–Satterthwaite), so that the"
              + " range still covers 95 %.");
    }
    for (Sheet.Assumption a : sheet.assumptions()) {
      String steps = String.join(", ", a.stepIds());
      String text = a.remark().text();
      lines.add(ResultWords.sentence(steps.isEmpty() ? text : text + " (" + steps + ")"));
    }
    return List.of(new Bullets(lines));
  }
}
