package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import loadwalk.text.Visible;

/** Words a sheet, the same for every format. */
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
    sections.add(new Section("asked", "What each step asked", List.of(asked())));
    sections.add(new Section("readings", "Readings as typed, beside their forecast", readings()));
    sections.addAll(WaveSections.sections(sheet));
    sections.addAll(ComputedSections.sections(sheet.result()));
    sections.addAll(WalkRecordSections.sections(sheet));
    sections.add(new Section("conditions", "Conditions and bench", BenchBlocks.blocks(sheet)));
    sections.add(new Section("assumptions", "What this rests on", assumptions()));
    sheet.budgetStep().ifPresent(step -> sections.add(BudgetSection.of(step)));
    String subtitle =
        "Walk "
            + Visible.name(sheet.walk())
            + " · "
            + Visible.name(sheet.sequence().name())
            + " · "
            + ResultWords.day(sheet.lastWallMillis());
    return new Page(Visible.name(sheet.amplifier().name()), subtitle, sheet.warnings(), sections);
  }

  private Section headline() {
    List<Block> blocks = new ArrayList<>();
    if (sheet.loads().isEmpty()) {
      blocks.add(new Paragraph("No output has been measured yet."));
      return new Section("power", "What it makes", blocks);
    }
    List<List<String>> rows = sheet.loads().stream().map(SheetPage::loadRow).toList();
    Table table =
        new Table(
            "Power at each load, ± with " + ResultWords.coverage(powers()),
            List.of(
                Column.words("Load"),
                Column.numbers("In one load"),
                Column.numbers("In all loads"),
                Column.numbers("Rated"),
                Column.numbers("Ratio"),
                Column.numbers("Ratio, dB"),
                Column.words("Rating")),
            rows);
    blocks.add(new Headline(table));
    List<String> notes = new ArrayList<>();
    notes.addAll(criteria());
    sheet.loads().forEach(line -> notes.addAll(notes(line)));
    blocks.add(new Bullets(notes));
    return new Section("power", "What it makes", blocks);
  }

  private static List<String> loadRow(Sheet.LoadLine line) {
    Optional<RatingComparison> rating = line.rating();
    boolean stereo = line.power().mode() == Mode.STEREO;
    return List.of(
        ResultWords.load(line.power().mode(), line.power().ohms()),
        PRINTER.quantity(line.power().perLoad()),
        stereo ? PRINTER.quantity(line.power().totalWatts()) : "",
        rating.map(r -> PRINTER.exact(r.ratingWatts(), Unit.WATT)).orElse(""),
        rating.map(r -> PRINTER.value(r.ratio().value(), Unit.ONE, 3)).orElse(""),
        rating.map(r -> ResultWords.decibels(r.decibels())).orElse(""),
        rating.map(r -> r.verdict().text()).orElse("no rating"));
  }

  /** Says at what point the loads were read; different ones are named one by one. */
  private List<String> criteria() {
    List<String> notes = new ArrayList<>();
    for (Criterion criterion : Criterion.values()) {
      List<String> loads =
          sheet.loads().stream()
              .filter(l -> l.power().criterion() == criterion)
              .map(l -> ResultWords.load(l.power().mode(), l.power().ohms()))
              .toList();
      if (!loads.isEmpty()) {
        boolean every = loads.size() == sheet.loads().size();
        String all = every ? "Every load" : String.join(", ", loads);
        String were = every || loads.size() == 1 ? " was read " : " were read ";
        notes.add(all + were + criterion.text() + limit(criterion) + ".");
      }
    }
    return notes;
  }

  private String limit(Criterion criterion) {
    return criterion == Criterion.THD_LIMIT
        ? ", " + PRINTER.exact(sheet.sequence().limitThdPercent(), Unit.PERCENT)
        : "";
  }

  private static List<String> notes(Sheet.LoadLine line) {
    String load = ResultWords.load(line.power().mode(), line.power().ohms());
    List<String> notes = new ArrayList<>();
    if (!line.power().why().isEmpty()) {
      notes.add(load + " is from " + line.power().fromStepId() + ": " + line.power().why() + ".");
    }
    line.rating()
        .filter(rating -> rating.measured().value() < line.power().perLoad().value())
        .ifPresent(rating -> notes.add(load + lowerChannel(rating)));
    line.rating()
        .flatMap(RatingComparison::note)
        .ifPresent(note -> notes.add(load + " and its rating: " + note + "."));
    return notes;
  }

  private static String lowerChannel(RatingComparison rating) {
    return " and its rating: the lower channel made "
        + PRINTER.quantity(rating.measured())
        + ", and the ratio is of that one.";
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
      terms.add(new Term("Serial number", "kept back"));
    }
    for (Mode mode : Mode.values()) {
      a.minimumOhms(mode)
          .ifPresent(
              ohms ->
                  terms.add(new Term("Least load, " + mode.word(), PRINTER.exact(ohms, Unit.OHM))));
    }
    a.fuseAmps()
        .ifPresent(amps -> terms.add(new Term("Own fuses", ResultWords.fuses(a.fuses(), amps))));
    a.regulated().ifPresent(r -> terms.add(new Term("Regulated rails", r ? "yes" : "no")));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Terms(terms));
    if (!a.ratings().isEmpty()) {
      blocks.add(ratings(a.ratings()));
    }
    return new Section("amplifier", "The amplifier", blocks);
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
        "Ratings, watts in one load",
        List.of(
            Column.words("Load"),
            Column.numbers("Rated"),
            Column.numbers("At a supply of"),
            Column.numbers("At THD")),
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
                r.forecast().map(b -> b.holds(r.value()) ? "inside" : "outside").orElse("")));
      }
      for (var pair : step.pairs()) {
        String shown =
            PRINTER.exact(pair.volts(), Unit.VOLT)
                + " at "
                + PRINTER.exact(pair.thdPercent(), Unit.PERCENT);
        rows.add(List.of(step.id(), "volts and THD", shown, shown, "none", ""));
      }
    }
    if (rows.isEmpty()) {
      return List.of(new Paragraph("No readings have been entered."));
    }
    return List.of(
        new Table(
            "Each reading that counts",
            List.of(
                Column.words("Step"),
                Column.words("Reading"),
                Column.words("Typed"),
                Column.numbers("Taken as"),
                Column.numbers("Forecast, 95 %"),
                Column.words("It lies")),
            rows));
  }

  private List<Quantity> powers() {
    return sheet.loads().stream()
        .flatMap(line -> Stream.of(line.power().perLoad(), line.power().totalWatts()))
        .toList();
  }

  private boolean hasScatter() {
    return sheet.result().steps().stream()
        .flatMap(r -> Stream.of(r.outputVolts(), r.totalWatts(), r.inputWatts()))
        .flatMap(Optional::stream)
        .anyMatch(quantity -> !quantity.degreesOfFreedom().isEmpty());
  }

  private List<Block> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Uncertainties are JCGM 100 standard uncertainties from the meters' specifications and the"
            + " loads' tolerances, printed expanded with k = 2.");
    if (hasScatter()) {
      lines.add(
          "Readings taken from a meter carry the scatter of its last readings as well (type A);"
              + " where that matters k is larger, by Welch–Satterthwaite, so that it covers as much"
              + " as k = 2 covers else: 95 %.");
    }
    for (Sheet.Assumption a : sheet.assumptions()) {
      String steps = a.stepIds().isEmpty() ? "" : " (" + String.join(", ", a.stepIds()) + ")";
      lines.add(ResultWords.sentence(a.remark().text() + steps));
    }
    return List.of(new Bullets(lines));
  }
}
