package loadwalk.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.GivesFirst;
import loadwalk.forecast.Verdict;
import loadwalk.plan.BenchPlan;
import loadwalk.plan.NotSaid;
import loadwalk.plan.StepPlan;
import loadwalk.plan.wiring.WiringPicture;
import loadwalk.plan.wiring.WiringSummary;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Drawing;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Words a plan: a table of the steps, what each step needs, how each load is wired, what is
 * missing.
 */
public final class PlanPage {
  private static final String UNKNOWN = "?";

  private final BenchPlan plan;
  private final Tables tables;

  private PlanPage(BenchPlan plan, Tables tables) {
    this.plan = plan;
    this.tables = tables;
  }

  /**
   * Returns the page of a plan.
   *
   * @param plan the plan
   * @param tables resistor data for the bursts
   */
  public static Page of(BenchPlan plan, Tables tables) {
    return new PlanPage(plan, tables).page();
  }

  private Page page() {
    Evidence evidence = plan.evidence();
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("steps", "Steps", List.of(conditions(), table())));
    sections.add(new Section("asked", "Instructions", List.of(asked())));
    for (int i = 0; i < plan.steps().size(); i++) {
      sections.add(details("step-" + (i + 1), plan.steps().get(i)));
    }
    sections.addAll(wirings());
    if (!plan.needs().isEmpty()) {
      Bullets needs = new Bullets(plan.needs());
      sections.add(new Section("needs", "What the bench needs", List.of(needs)));
    }
    List<String> notSaid =
        NotSaid.sentences(evidence.amplifier(), evidence.bench(), new Wire(tables));
    if (!notSaid.isEmpty()) {
      sections.add(new Section("not-said", "What was not said", List.of(new Bullets(notSaid))));
    }
    return new Page(
        Sentence.of("Bench plan for {}", Visible.name(plan.sequence())),
        Sentence.of(
            "{} on {}",
            Visible.name(evidence.amplifier().name()),
            Visible.name(evidence.bench().name())),
        List.of(),
        sections);
  }

  private Paragraph conditions() {
    Evidence.Conditions conditions = plan.evidence().conditions();
    String measured =
        Sentence.plural(
            plan.evidence().observations().size(),
            "1 step measured so far.",
            "{} steps measured so far.");
    return new Paragraph(
        Sentence.of(
            "{} V at the amplifier, {} Hz tone, limit {} % THD. {}",
            Figures.three(conditions.supplyVolts()),
            Figures.three(conditions.toneHertz()),
            Figures.three(conditions.limitThdPercent()),
            measured));
  }

  private Terms asked() {
    return new Terms(
        plan.asked().stream()
            .map(asked -> new Term(asked.stepId(), Visible.sentence(asked.instruction())))
            .toList());
  }

  private Table table() {
    List<Column> columns =
        List.of(
            Column.words("Step"),
            Column.words("Verdict"),
            Column.numbers("Output V"),
            Column.numbers("Load W"),
            Column.numbers("Supply A"),
            Column.numbers("V at amp"),
            Column.words("First to give"));
    List<List<String>> rows = plan.steps().stream().map(PlanPage::row).toList();
    return new Table("Forecast for each step, expected/at worst", columns, rows);
  }

  private static List<String> row(StepPlan step) {
    return List.of(
        step.target().stepId(),
        step.forecast().verdict().word(),
        pair(step.output()),
        pair(step.forecast().demand().loadWatts()),
        pair(step.amps()),
        step.terminalVolts().map(v -> pair(v.middle(), v.low())).orElse(UNKNOWN),
        step.givesFirst()
            .map(s -> Sentence.of("{}, {} %", s.what(), Math.round(100 * s.share())))
            .orElse("unknown"));
  }

  private static String pair(Optional<Band> band) {
    return band.map(b -> pair(b.middle(), b.high())).orElse(UNKNOWN);
  }

  private static String pair(double expected, double worst) {
    return Figures.three(expected) + "/" + Figures.three(worst);
  }

  private Section details(String id, StepPlan step) {
    String title = step.target().stepId() + ": " + step.forecast().verdict().word();
    Optional<StepPlan> same = plan.sameBefore(step);
    if (same.isPresent()) {
      String as = Sentence.of("Same as {}.", same.get().target().stepId());
      return new Section(id, title, List.of(new Paragraph(as)));
    }
    List<Term> terms = terms(step);
    Block said = terms.isEmpty() ? new Paragraph("No cautions.") : new Terms(terms);
    return new Section(id, title, List.of(said));
  }

  private List<Term> terms(StepPlan step) {
    List<Term> terms = new ArrayList<>();
    for (Caution caution : step.forecast().cautions()) {
      terms.add(new Term(gravity(caution), caution.text()));
    }
    Optional<GivesFirst> opening = step.forecast().givesFirst();
    opening.ifPresent(first -> terms.add(new Term("first to give", first.line())));
    if (step.shares().size() > 1) {
      terms.add(new Term("supplies", shares(step)));
    }
    battery(step).ifPresent(text -> terms.add(new Term("battery", text)));
    if (!step.leads().isEmpty()) {
      terms.add(new Term("lead loss", leads(step)));
    }
    for (StepPlan.FuseTime fuse : step.fuses()) {
      // A fuse that holds even in the worst case needs no line.
      if (fuse.worst().span() != FuseCurve.Span.BELOW_TABLE) {
        terms.add(new Term(Sentence.of("{} fuse", fuse.label()), fuse(fuse)));
      }
    }
    Optional<Band> heat = step.forecast().demand().heatWatts();
    heat.ifPresent(h -> terms.add(new Term("heat", heat(h))));
    step.unwired().ifPresent(none -> terms.add(new Term("wiring", none.sentence())));
    return terms;
  }

  /** Names the gravity of a caution; one that leaves the step clear is a note. */
  private static String gravity(Caution caution) {
    return caution.gravity() == Verdict.CLEAR ? "note" : caution.gravity().word();
  }

  private static String shares(StepPlan step) {
    return step.shares().stream().map(PlanPage::share).collect(Collectors.joining("; "));
  }

  private static String share(StepPlan.SupplyShare share) {
    return Sentence.of(
        "supply {}: {} A, at worst {} of {} A",
        share.number(),
        Figures.three(share.amps()),
        Figures.three(share.worstAmps()),
        Figures.three(share.ratedAmps()));
  }

  private Optional<String> battery(StepPlan step) {
    Bench bench = plan.evidence().bench();
    Optional<Band> drawn = step.amps();
    if (!bench.onBattery() || drawn.isEmpty()) {
      return Optional.empty();
    }
    double amps = drawn.get().middle();
    double worst = drawn.get().high();
    String volts = Figures.three(bench.source().orElseThrow().voltsBehind(0, amps));
    OptionalDouble seconds = bench.batterySeconds(amps);
    OptionalDouble least = bench.batterySeconds(worst);
    return Optional.of(
        seconds.isPresent() && least.isPresent()
            ? Sentence.of(
                "{} V at its posts at {} A, from full for about {}; at worst {} A, {}",
                volts,
                Figures.three(amps),
                Figures.duration(seconds.getAsDouble()),
                Figures.three(worst),
                Figures.duration(least.getAsDouble()))
            : Sentence.of(
                "{} V at its posts at {} A; how long is not known without its ampere-hours",
                volts,
                Figures.three(amps)));
  }

  private static String leads(StepPlan step) {
    return step.leads().stream().map(PlanPage::lead).collect(Collectors.joining("; "));
  }

  private static String lead(StepPlan.LeadLoss lead) {
    return Sentence.of(
        "{} {} V, {} W (at worst {} V, {} W)",
        Visible.name(lead.label()),
        Figures.three(lead.volts().middle()),
        Figures.three(lead.watts().middle()),
        Figures.three(lead.volts().high()),
        Figures.three(lead.watts().high()));
  }

  private static String fuse(StepPlan.FuseTime fuse) {
    return Sentence.of(
        "{}; at worst {} (taken as {})", fuse.expected().text(), fuse.worst().text(), fuse.type());
  }

  private static String heat(Band watts) {
    return Sentence.of(
        "about {} W in the amplifier, at worst {} W",
        Figures.three(watts.middle()),
        Figures.three(watts.high()));
  }

  private List<Section> wirings() {
    List<Section> sections = new ArrayList<>();
    List<WiringSummary> wirings = plan.wirings(tables);
    for (int i = 0; i < wirings.size(); i++) {
      WiringSummary wiring = wirings.get(i);
      List<Block> blocks = new ArrayList<>();
      blocks.add(new Paragraph(wiring.choice()));
      wiring.loads().forEach(load -> blocks.addAll(load(wiring, load)));
      if (i == wirings.size() - 1) {
        blocks.add(new Paragraph(WiringSummary.rule(tables)));
        blocks.add(
            new Paragraph(
                Sentence.of("Note: {}.", new ResistorDerating(tables).burstAssumption())));
      }
      sections.add(
          new Section("wiring-" + (i + 1), Sentence.of("Wiring of {}", wiring.title()), blocks));
    }
    return sections;
  }

  private static List<Block> load(WiringSummary wiring, WiringSummary.Load load) {
    List<String> drawn = WiringPicture.lines(load.network(), load.plus(), load.minus());
    return List.of(
        new Drawing(wiring.words(load), drawn, load.network().formula()),
        new Paragraph(String.join("; ", WiringPicture.legend(load.network())) + "."),
        new Bullets(WiringPicture.joints(load.network(), load.plus(), load.minus())));
  }
}
