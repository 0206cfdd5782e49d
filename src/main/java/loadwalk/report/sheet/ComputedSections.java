package loadwalk.report.sheet;

import static loadwalk.report.sheet.ResultWords.UNKNOWN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loadwalk.bench.Target;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page.Section;
import loadwalk.result.Mark;
import loadwalk.result.OutputFit;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.text.Sentence;

/** Words the results computed from the readings, and how well the readings agree. */
final class ComputedSections {
  private static final Printer PRINTER = Printer.UTF8;
  private static final String IMPOSSIBLE = Mark.IMPOSSIBLE.text();

  private final WalkResult result;

  private ComputedSections(WalkResult result) {
    this.result = result;
  }

  static List<Section> sections(WalkResult result) {
    ComputedSections page = new ComputedSections(result);
    return List.of(
        new Section("computed", "Results", page.computed()),
        new Section("agreement", "Cross-checks", page.agreement()));
  }

  private List<Block> computed() {
    List<List<String>> powers =
        result.steps().stream()
            .filter(ComputedSections::hasPower)
            .map(ComputedSections::powerRow)
            .toList();
    if (powers.isEmpty()) {
      return List.of(new Paragraph("Nothing can be computed yet."));
    }
    List<List<String>> leads =
        result.steps().stream()
            .filter(r -> r.leadDropVolts().isPresent())
            .map(ComputedSections::leadRow)
            .toList();
    return leads.isEmpty() ? List.of(powers(powers)) : List.of(powers(powers), leads(leads));
  }

  private static boolean hasPower(StepResult r) {
    boolean loaded = r.watts().isPresent() && r.kind() != Target.Kind.OPEN_LOAD;
    return r.inputWatts().isPresent() || loaded;
  }

  private Table powers(List<List<String>> rows) {
    String coverage =
        coverage(
            List.of(
                StepResult::totalWatts,
                StepResult::inputWatts,
                StepResult::efficiency,
                StepResult::heatWatts));
    return new Table(
        Sentence.of("Output, input, efficiency and heat, ± at {}", coverage),
        List.of(
            Column.words("Step"),
            Column.numbers("Total output"),
            Column.numbers("Input"),
            Column.numbers("Efficiency"),
            Column.numbers("Heat")),
        rows);
  }

  private Table leads(List<List<String>> rows) {
    return new Table(
        Sentence.of(
            "Lost between supply and amplifier, ± at {}",
            coverage(List.of(StepResult::leadDropVolts, StepResult::leadWatts))),
        List.of(Column.words("Step"), Column.numbers("Voltage drop"), Column.numbers("Power lost")),
        rows);
  }

  private String coverage(List<Function<StepResult, Optional<Quantity>>> figures) {
    return ResultWords.coverage(
        result.steps().stream()
            .flatMap(step -> figures.stream().flatMap(figure -> figure.apply(step).stream()))
            .toList());
  }

  private static List<String> powerRow(StepResult r) {
    boolean idle = r.kind() == Target.Kind.IDLE;
    boolean impossible = r.marks().contains(Mark.IMPOSSIBLE);
    return List.of(
        r.stepId(),
        idle ? "none" : ResultWords.quantity(r.totalWatts()),
        ResultWords.quantity(r.inputWatts()),
        idle ? "" : impossible ? IMPOSSIBLE : efficiency(r),
        impossible ? IMPOSSIBLE : ResultWords.quantity(r.heatWatts()));
  }

  private static String efficiency(StepResult r) {
    return r.efficiency().map(ResultWords::percent).orElse(UNKNOWN);
  }

  private static List<String> leadRow(StepResult r) {
    return List.of(
        r.stepId(), ResultWords.quantity(r.leadDropVolts()), ResultWords.quantity(r.leadWatts()));
  }

  private List<Block> agreement() {
    List<String> lines = new ArrayList<>();
    result.outputFit().ifPresent(fit -> lines.add(fitSentence(fit)));
    result.bridges().forEach(b -> lines.add(ResultWords.sentence(b.text())));
    result.rechecks().forEach(r -> lines.add(ResultWords.sentence(r.text())));
    if (result.rechecks().isEmpty()) {
      lines.add("No recheck measured.");
    }
    Optional<Quantity> source = result.sourceResistance();
    source.ifPresent(q -> lines.add(Sentence.of("Source resistance: {}.", PRINTER.quantity(q))));
    result
        .dampingFactor()
        .ifPresent(
            factor ->
                lines.add(
                    Sentence.of(
                        "Damping factor: {}, {}.",
                        PRINTER.value(factor.value(), Unit.ONE, 3),
                        factor.range())));
    if (source.isEmpty()) {
      lines.add("These readings do not give source resistance or damping factor.");
    }
    return List.of(new Bullets(lines));
  }

  private static String fitSentence(OutputFit fit) {
    return Sentence.of(
        "At the limit, one channel behaves like a source of E = {} behind r = {}."
            + " The fit is V = E × R/(R + r), to {}. {}",
        PRINTER.quantity(fit.openVolts()),
        PRINTER.quantity(fit.seriesOhms()),
        String.join(", ", fit.stepIds()),
        ResultWords.closeness(fit));
  }
}
