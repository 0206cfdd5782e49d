package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page.Section;
import loadwalk.result.BudgetLine;
import loadwalk.result.PublishedPower;
import loadwalk.text.Sentence;

/** Words the uncertainty budget of one published total (in the form of JCGM 100:2008, H.1). */
final class BudgetSection {
  private static final Printer PRINTER = Printer.UTF8;

  private BudgetSection() {}

  static Section of(PublishedPower power) {
    Quantity watts = power.totalWatts();
    String load = ResultWords.load(power.mode(), power.ohms());
    boolean scatters = !Double.isInfinite(watts.effectiveDegreesOfFreedom());
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Source"));
    columns.add(Column.numbers("Input u"));
    columns.add(Column.numbers("Sensitivity"));
    columns.add(Column.numbers("Contribution"));
    if (scatters) {
      columns.add(Column.numbers("ν"));
    }
    Table table =
        new Table(
            Sentence.of("Where the uncertainty of the total at {} comes from", load),
            columns,
            power.budget().stream().map(line -> row(line, scatters)).toList());
    return new Section(
        "budget",
        Sentence.of("Uncertainty budget at {}", load),
        List.of(table, sum(power, scatters)));
  }

  private static List<String> row(BudgetLine line, boolean scatters) {
    List<String> row = new ArrayList<>();
    row.add(line.source());
    row.add(PRINTER.value(line.inputU(), line.inputUnit(), 2));
    row.add(ResultWords.sensitivity(line));
    row.add(PRINTER.value(line.contribution(), Unit.WATT, 2));
    if (scatters) {
      row.add(ResultWords.degrees(line.degreesOfFreedom()));
    }
    return row;
  }

  private static Paragraph sum(PublishedPower power, boolean scatters) {
    Quantity watts = power.totalWatts();
    String k = "k = " + ResultWords.factor(watts.coverageFactor());
    String sum =
        Sentence.of(
            "P = V²/R in each load. The contributions add in quadrature to u = {}."
                + " Expanded, the total is {} ({} for 95 %).",
            PRINTER.value(watts.u(), Unit.WATT, 2), PRINTER.quantity(watts), k);
    String scatter =
        Sentence.of(
            "The effective degrees of freedom (Welch–Satterthwaite) are ν_eff = {};"
                + " with them, {} covers 95 %.",
            ResultWords.degrees(watts.effectiveDegreesOfFreedom()), k);
    return new Paragraph(scatters ? sum + " " + scatter : sum);
  }
}
