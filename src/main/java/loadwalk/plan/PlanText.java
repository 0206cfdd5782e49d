package loadwalk.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.bench.Figures;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.ReadingId;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Stress;
import loadwalk.forecast.Verdict;

/** Writes a plan for a terminal of 80 columns. */
public final class PlanText {
  private static final int COLUMNS = 80;
  private static final String ROW = "%-12s %-7s %-9s %-9s %-9s %-9s %s";

  private final BenchPlan plan;
  private final Tables tables;
  private final List<String> out = new ArrayList<>();

  private PlanText(BenchPlan plan, Tables tables) {
    this.plan = plan;
    this.tables = tables;
  }

  /**
   * Returns the plan as lines.
   *
   * @param plan the plan
   * @param tables resistor data for the bursts
   * @param ascii whether only plain ASCII may be used
   */
  public static List<String> lines(BenchPlan plan, Tables tables, boolean ascii) {
    PlanText text = new PlanText(plan, tables);
    text.write();
    return ascii ? text.out.stream().map(PlanText::ascii).toList() : List.copyOf(text.out);
  }

  /** Returns the wirings that the steps use, each load once, at its worst watts. */
  static List<WiringSummary> wirings(BenchPlan plan, Tables tables) {
    Map<String, WiringSummary> byTitle = new LinkedHashMap<>();
    for (StepPlan step : plan.steps()) {
      if (step.wiring().orElse(null) instanceof WiringAnswer.Found found) {
        double watts = step.forecast().demand().loadWatts().map(Band::high).orElse(0.0);
        WiringSummary summary =
            WiringSummary.of(step.target().mode(), Math.max(0, watts), found, tables);
        byTitle.merge(summary.title(), summary, (a, b) -> b.watts() > a.watts() ? b : a);
      }
    }
    return List.copyOf(byTitle.values());
  }

  private void write() {
    Evidence evidence = plan.evidence();
    out.add("Bench plan for " + plan.sequence());
    wrapped("", evidence.amplifier().name() + " on " + evidence.bench().name());
    wrapped(
        "",
        Figures.three(evidence.conditions().supplyVolts())
            + " V at the terminals, tone "
            + Figures.three(evidence.conditions().toneHertz())
            + " Hz, limit "
            + Figures.three(evidence.conditions().limitThdPercent())
            + " % THD; measured so far: "
            + evidence.observations().size()
            + " steps. Numbers are expected/at worst.");
    out.add("");
    out.add(row("step", "verdict", "out V", "load W", "supply A", "V in", "gives first"));
    plan.steps().forEach(this::tableRow);
    plan.steps().forEach(this::details);
    List<WiringSummary> wirings = wirings(plan, tables);
    wirings.forEach(this::wiring);
    if (!wirings.isEmpty()) {
      out.add("");
      wrapped("", "Note: " + ResistorDerating.BURST_ASSUMPTION + ".");
    }
    needs();
  }

  private void tableRow(StepPlan step) {
    String first =
        step.givesFirst()
            .map(s -> s.code() + " " + Math.round(100 * s.share()) + "%")
            .orElse("not known");
    out.add(
        row(
            step.target().stepId(),
            step.forecast().verdict().word(),
            pair(step.forecast().band(outputVolts(step))),
            pair(step.forecast().demand().loadWatts()),
            pair(step.amps()),
            step.terminalVolts()
                .map(v -> Figures.three(v.middle()) + "/" + Figures.three(v.low()))
                .orElse("?"),
            first));
  }

  static ReadingId outputVolts(StepPlan step) {
    boolean open = step.forecast().band(ReadingId.OPEN_VOLTS).isPresent();
    return open ? ReadingId.OPEN_VOLTS : ReadingId.OUTPUT_VOLTS;
  }

  private static String row(String... cells) {
    return String.format(Locale.ROOT, ROW, (Object[]) cells).stripTrailing();
  }

  private static String pair(Optional<Band> band) {
    return band.map(b -> Figures.three(b.middle()) + "/" + Figures.three(b.high())).orElse("?");
  }

  private void details(StepPlan step) {
    out.add("");
    Optional<StepPlan> same = plan.sameBefore(step);
    if (same.isPresent()) {
      out.add(step.target().stepId() + ": as " + same.get().target().stepId());
      return;
    }
    out.add(step.target().stepId() + ": " + step.forecast().verdict().word());
    for (Caution caution : step.forecast().cautions()) {
      wrapped("  " + gravity(caution) + ": ", caution.text());
    }
    step.givesFirst().ifPresent(stress -> wrapped("  gives first: ", first(stress)));
    shares(step);
    leads(step);
    fuses(step);
    step.forecast()
        .demand()
        .heatWatts()
        .ifPresent(heat -> wrapped("  heat in the amplifier: ", words(heat, "W")));
    if (step.wiring().orElse(null) instanceof WiringAnswer.None none) {
      wrapped("  wiring: ", none.sentence());
    }
  }

  /** What a caution that alone leaves the step clear is called. */
  static String gravity(Caution caution) {
    return caution.gravity() == Verdict.CLEAR ? "note" : caution.gravity().word();
  }

  static String first(Stress stress) {
    return stress.what()
        + ", at worst "
        + Figures.three(stress.demand().high())
        + " of "
        + Figures.three(stress.limit())
        + " "
        + stress.unit().symbol()
        + ", margin "
        + Math.round(stress.marginPercent())
        + " %";
  }

  private void shares(StepPlan step) {
    if (step.shares().size() > 1) {
      wrapped(
          "  supplies: ",
          step.shares().stream()
              .map(
                  s ->
                      "no. "
                          + s.number()
                          + " "
                          + Figures.three(s.amps())
                          + " A, at worst "
                          + Figures.three(s.worstAmps())
                          + " of "
                          + Figures.three(s.ratedAmps())
                          + " A")
              .collect(Collectors.joining("; ")));
    }
  }

  private void leads(StepPlan step) {
    if (!step.leads().isEmpty()) {
      wrapped(
          "  leads lose: ",
          step.leads().stream()
              .map(
                  lead ->
                      lead.label()
                          + " "
                          + Figures.three(lead.volts().middle())
                          + " V, "
                          + Figures.three(lead.watts().middle())
                          + " W (at worst "
                          + Figures.three(lead.volts().high())
                          + " V, "
                          + Figures.three(lead.watts().high())
                          + " W)")
              .collect(Collectors.joining("; ")));
    }
  }

  /** Tells only of fuses that may open: one that holds at worst needs no line. */
  private void fuses(StepPlan step) {
    for (StepPlan.FuseTime fuse : step.fuses()) {
      if (fuse.worst().span() != FuseCurve.Span.BELOW_TABLE) {
        wrapped(
            "  " + fuse.label() + " fuse: ",
            fuse.expected().text()
                + "; at worst "
                + fuse.worst().text()
                + " (taken as "
                + fuse.type()
                + ")");
      }
    }
  }

  static String words(Band band, String unit) {
    return "about "
        + Figures.three(band.middle())
        + " "
        + unit
        + ", at worst "
        + Figures.three(band.high())
        + " "
        + unit;
  }

  private void wiring(WiringSummary wiring) {
    out.add("");
    String fewest = wiring.fewest() ? "fewest resistors" : "fewest resistors found";
    wrapped("", "Wiring of " + wiring.title() + ", " + fewest + ", " + wiring.burstWords() + ":");
    for (WiringSummary.Load load : wiring.loads()) {
      wrapped("  ", wiring.words(load));
      List<String> picture = WiringPicture.lines(load.network(), load.plus(), load.minus());
      if (picture.stream().allMatch(line -> line.length() <= COLUMNS - 4)) {
        picture.forEach(line -> out.add("    " + line));
      } else {
        wrapped("    ", load.network().formula());
      }
      wrapped("    ", String.join(", ", WiringPicture.legend(load.network())));
      WiringPicture.joints(load.network(), load.plus(), load.minus())
          .forEach(joint -> wrapped("    ", joint));
    }
  }

  private void needs() {
    if (plan.needs().isEmpty()) {
      return;
    }
    out.add("");
    out.add("What the bench would need:");
    plan.needs().forEach(need -> wrapped("  - ", need));
  }

  /** Adds a text broken at blanks; the lines after the first stand under its text. */
  private void wrapped(String lead, String text) {
    String indent = " ".repeat(Math.min(lead.length(), 4));
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > COLUMNS) {
        out.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    out.add(line.toString());
  }

  private static String ascii(String line) {
    return line.replace("mΩ", "mohm")
        .replace("Ω", "ohm")
        .replace("°C", "degC")
        .replace("mm²", "mm2")
        .replace("±", "+-")
        .replace("×", "x");
  }
}
