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
import loadwalk.result.StepResult;
import loadwalk.text.Sentence;

/** Words the uncertainty budget of one step's power (in the form of JCGM 100:2008, H.1). */
final class BudgetSection {
  private static final Printer PRINTER = Printer.UTF8;

  private BudgetSection() {}

  static Section of(StepResult step) {
    Quantity watts = step.watts().orElseThrow();
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
            Sentence.of("Where the uncertainty of {} comes from", step.stepId()),
            columns,
            step.budget().stream().map(line -> row(line, scatters)).toList());
    return new Section(
        "budget",
        Sentence.of("Uncertainty budget of {}", step.stepId()),
        List.of(table, sum(step, scatters)));
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

  private static Paragraph sum(StepResult step, boolean scatters) {
    Quantity watts = step.watts().orElseThrow();
    String k = "k = " + ResultWords.factor(watts.coverageFactor());
    String sum =
        Sentence.of(
            "P = V²/R per load. The contributions add in quadrature to u = {}."
                + " Expanded, {} makes {} ({}).",
            PRINTER.value(watts.u(), Unit.WATT, 2),
            step.stepId(),
            PRINTER.quantity(watts),
            k);
    String scatter =
        Sentence.of(
            "The effective degrees of freedom (Welch–Satterthwaite) are ν_eff = {};"
                + " with them, {} covers 95 %.",
            ResultWords.degrees(watts.effectiveDegreesOfFreedom()), k);
    return new Paragraph(scatters ? sum + " " + scatter : sum);
  }
}
