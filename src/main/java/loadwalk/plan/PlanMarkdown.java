package loadwalk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Figures;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;

/** Writes a plan as Markdown (CommonMark with tables). */
public final class PlanMarkdown {
  private final BenchPlan plan;
  private final Tables tables;
  private final List<String> out = new ArrayList<>();

  private PlanMarkdown(BenchPlan plan, Tables tables) {
    this.plan = plan;
    this.tables = tables;
  }

  /** Returns the plan as one text. */
  public static String text(BenchPlan plan, Tables tables) {
    PlanMarkdown markdown = new PlanMarkdown(plan, tables);
    markdown.write();
    return String.join("\n", markdown.out) + "\n";
  }

  private void write() {
    Evidence evidence = plan.evidence();
    out.add("# Bench plan for " + escaped(plan.sequence()));
    out.add("");
    out.add(
        escaped(evidence.amplifier().name())
            + " on "
            + escaped(evidence.bench().name())
            + ", "
            + Figures.three(evidence.conditions().supplyVolts())
            + " V at the terminals. Numbers are expected / at worst.");
    out.add("");
    out.add(
        "| step | verdict | output V | W in one load | supply A | V at the terminals | heat W |"
            + " gives first |");
    out.add("|---|---|---|---|---|---|---|---|");
    plan.steps().forEach(this::row);
    plan.steps().stream()
        .filter(step -> !step.forecast().cautions().isEmpty())
        .filter(step -> plan.sameBefore(step).isEmpty())
        .forEach(this::cautions);
    PlanText.wirings(plan, tables).forEach(this::wiring);
    if (!plan.needs().isEmpty()) {
      out.add("");
      out.add("## What the bench would need");
      out.add("");
      plan.needs().forEach(need -> out.add("- " + escaped(need)));
    }
  }

  private void row(StepPlan step) {
    String first = step.givesFirst().map(PlanText::first).orElse("not known");
    out.add(
        "| "
            + String.join(
                " | ",
                escaped(step.target().stepId()),
                step.forecast().verdict().word(),
                pair(step.forecast().band(PlanText.outputVolts(step))),
                pair(step.forecast().demand().loadWatts()),
                pair(step.amps()),
                step.terminalVolts()
                    .map(v -> Figures.three(v.middle()) + " / " + Figures.three(v.low()))
                    .orElse("?"),
                pair(step.forecast().demand().heatWatts()),
                escaped(first))
            + " |");
  }

  private static String pair(Optional<Band> band) {
    return band.map(b -> Figures.three(b.middle()) + " / " + Figures.three(b.high())).orElse("?");
  }

  private void cautions(StepPlan step) {
    out.add("");
    out.add("## " + escaped(step.target().stepId()));
    out.add("");
    for (Caution caution : step.forecast().cautions()) {
      out.add("- **" + PlanText.gravity(caution) + "**: " + escaped(caution.text()));
    }
  }

  private void wiring(WiringSummary wiring) {
    out.add("");
    out.add("## Wiring of " + escaped(wiring.title()));
    out.add("");
    out.add("Bears its worst " + escaped(wiring.burstWords()) + ".");
    for (WiringSummary.Load load : wiring.loads()) {
      out.add("");
      out.add(escaped(wiring.words(load)));
      out.add("");
      out.add("```");
      out.addAll(WiringPicture.lines(load.network(), load.plus(), load.minus()));
      out.add("");
      WiringPicture.legend(load.network()).forEach(line -> out.add(line.replace("`", "'")));
      out.addAll(WiringPicture.joints(load.network(), load.plus(), load.minus()));
      out.add("```");
    }
    out.add("");
    out.add("Note: " + ResistorDerating.BURST_ASSUMPTION + ".");
  }

  /** Makes names inert: what Markdown or HTML would read as markup is escaped. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (Character.getType(c) == Character.FORMAT || Character.isISOControl(c)) {
                safe.append(' ');
              } else if ("\\`*_{}[]<>#|!&~".indexOf(c) >= 0) {
                safe.append('\\').appendCodePoint(c);
              } else {
                safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }
}
