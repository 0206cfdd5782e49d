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
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
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
    sections.add(PowerSection.of(sheet));
    sections.add(ConditionsSection.of(sheet));
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
    sections.add(new Section("bench", "Sequence and bench", BenchBlocks.blocks(sheet)));
    sections.add(new Section("assumptions", "Assumptions", assumptions()));
    sheet.budgetOf().ifPresent(power -> sections.add(BudgetSection.of(power)));
    sections.add(StandardSection.of(sheet));
    String subtitle =
        Sentence.of(
            "Walk {} · {} · {}",
            Visible.name(sheet.walk()),
            Visible.name(sheet.sequence().name()),
            ResultWords.day(sheet.lastWallMillis()));
    return new Page(Visible.name(sheet.amplifier().name()), subtitle, sheet.warnings(), sections);
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

  private boolean hasScatter() {
    return sheet.result().steps().stream()
        .flatMap(r -> Stream.of(r.outputVolts(), r.totalWatts(), r.inputWatts()))
        .flatMap(Optional::stream)
        .anyMatch(Quantity::isEstimated);
  }

  private List<Block> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Uncertainty follows JCGM 100. It comes from meters, loads with their heat and leads, and"
            + " from setting the limit. It is printed expanded to cover 95 %: k = 2, or less where"
            + " one part with limits, such as a tolerance, outweighs the others.");
    if (hasScatter()) {
      lines.add(
          "A reading taken straight from a meter also carries the scatter of its last readings"
              + " (type A). Where that matters, k is larger (Welch–Satterthwaite), so that the"
              + " range still covers 95 %.");
    }
    if (!sheet.loads().isEmpty()) {
      lines.add(ResultWords.repeatability(sheet.result().repeatability()));
    }
    for (Sheet.Assumption a : sheet.assumptions()) {
      String steps = String.join(", ", a.stepIds());
      String text = a.remark().text();
      lines.add(ResultWords.sentence(steps.isEmpty() ? text : text + " (" + steps + ")"));
    }
    return List.of(new Bullets(lines));
  }
}
