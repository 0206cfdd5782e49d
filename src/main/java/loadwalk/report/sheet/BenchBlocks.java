package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Battery;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Metal;
import loadwalk.bench.Meter;
import loadwalk.bench.Supply;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Words what the sequence of a walk asks for, and its bench. */
final class BenchBlocks {
  private static final Printer PRINTER = Printer.UTF8;

  private BenchBlocks() {}

  static List<Block> blocks(Sheet sheet) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(asked(sheet));
    Bench bench = sheet.bench();
    if (!bench.loads().isEmpty()) {
      blocks.add(loads(bench.loads()));
    }
    if (!bench.meters().isEmpty()) {
      blocks.add(meters(bench.meters()));
    }
    return blocks;
  }

  private static Terms asked(Sheet sheet) {
    Sequence sequence = sheet.sequence();
    Bench bench = sheet.bench();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "Sequence",
            Visible.name(sequence.name())
                + ": "
                + Visible.line(sequence.title(), 2 * Visible.NAME)));
    terms.add(new Term("Sequence SHA-256", sequence.contentHash()));
    terms.add(new Term("Tone asked for", PRINTER.exact(sequence.toneHertz(), Unit.HERTZ)));
    terms.add(
        new Term(
            "Limit asked for",
            Sentence.of("{} THD", PRINTER.exact(sequence.limitThdPercent(), Unit.PERCENT))));
    terms.add(
        new Term(
            "Supply asked for",
            Sentence.of(
                "{} at the amplifier's terminals",
                PRINTER.exact(sequence.supplyVolts(), Unit.VOLT))));
    terms.add(new Term("Bench", Visible.name(bench.name())));
    terms.add(new Term("Supplies", supplies(bench)));
    terms.add(new Term("Leads", leads(bench)));
    terms.add(
        new Term(
            "Fuse at the source",
            bench.fuseAmps().isPresent()
                ? PRINTER.exact(bench.fuseAmps().getAsDouble(), Unit.AMPERE)
                : "not given"));
    terms.add(new Term("Last record", ResultWords.moment(sheet.lastWallMillis())));
    terms.add(new Term("Started with", Sentence.of("Loadwalk {}", Visible.name(sheet.version()))));
    return new Terms(terms);
  }

  private static String supplies(Bench bench) {
    List<String> parts = new ArrayList<>();
    for (Supply s : bench.supplies()) {
      parts.add(s.battery().map(BenchBlocks::battery).orElseGet(() -> supply(s)));
    }
    if (parts.isEmpty()) {
      return "not given";
    }
    String usable = PRINTER.exact(bench.usableAmps().orElseThrow(), Unit.AMPERE);
    return parts.size() == 1
        ? Sentence.of("{}, {} usable", parts.get(0), usable)
        : Sentence.of("{} in parallel, {} usable", String.join(" + ", parts), usable);
  }

  private static String supply(Supply supply) {
    return PRINTER.exact(supply.volts(), Unit.VOLT)
        + " "
        + PRINTER.exact(supply.amps(), Unit.AMPERE);
  }

  private static String battery(Battery battery) {
    String made =
        Sentence.of(
            "battery of {}, {} inside",
            PRINTER.exact(battery.openVolts(), Unit.VOLT),
            PRINTER.value(battery.ohms(), Unit.OHM, 2));
    return battery.ampereHours().isEmpty()
        ? made
        : Sentence.of(
            "{}, {} Ah", made, PRINTER.exact(battery.ampereHours().getAsDouble(), Unit.ONE));
  }

  private static String leads(Bench bench) {
    List<String> parts = new ArrayList<>();
    for (Lead lead : bench.leads()) {
      parts.add(lead(lead));
    }
    return parts.isEmpty() ? "not given" : String.join("; ", parts);
  }

  private static String lead(Lead lead) {
    List<String> said = new ArrayList<>();
    String gauge = lead.gauge().text();
    said.add(lead.parallel() == 1 ? gauge : Sentence.of("{} × {}", lead.parallel(), gauge));
    said.add(
        Sentence.of(
            "{} {}", PRINTER.exact(lead.length().number(), Unit.ONE), lead.length().unit()));
    if (lead.metal() != Metal.COPPER) {
      said.add(lead.metal().text());
    }
    lead.insulationCelsius()
        .ifPresent(
            celsius ->
                said.add(Sentence.of("insulation for {}", PRINTER.exact(celsius, Unit.CELSIUS))));
    return Sentence.of("{}: {}", Visible.name(lead.label()), String.join(", ", said));
  }

  private static Table loads(List<LoadResistor> loads) {
    List<List<String>> rows = new ArrayList<>();
    for (LoadResistor load : loads) {
      rows.add(
          List.of(
              Visible.name(load.label()),
              PRINTER.exact(load.ohms(), Unit.OHM),
              "±" + PRINTER.exact(load.tolerancePercent(), Unit.PERCENT),
              PRINTER.exact(load.watts(), Unit.WATT),
              String.valueOf(load.count())));
    }
    return new Table(
        "Load resistors",
        List.of(
            Column.words("Load"),
            Column.numbers("Value"),
            Column.numbers("Tolerance"),
            Column.numbers("Rated"),
            Column.numbers("Count")),
        rows);
  }

  private static Table meters(List<Meter> meters) {
    List<List<String>> rows = new ArrayList<>();
    for (Meter meter : meters) {
      Unit unit = meter.reads().unit();
      rows.add(
          List.of(
              Visible.name(meter.label()),
              meter.reads().label(),
              accuracy(meter),
              meter.resolution() > 0 ? PRINTER.exact(meter.resolution(), unit) : "not stated",
              meter.band().map(BenchBlocks::band).orElse("not stated")));
    }
    return new Table(
        "Meters",
        List.of(
            Column.words("Meter"),
            Column.words("Reads"),
            Column.words("Accuracy"),
            Column.numbers("Resolution"),
            Column.numbers("AC band")),
        rows);
  }

  /**
   * Words a band as two exact figures: they are often three decades apart, and a range would round
   * off the low one.
   */
  private static String band(Meter.Band band) {
    return Sentence.of(
        "{} to {}",
        PRINTER.exact(band.lowHertz(), Unit.HERTZ),
        PRINTER.exact(band.highHertz(), Unit.HERTZ));
  }

  private static String accuracy(Meter meter) {
    String percent = PRINTER.exact(meter.percent(), Unit.PERCENT);
    return meter.digits() == 1
        ? Sentence.of("±({} + 1 digit)", percent)
        : Sentence.of("±({} + {} digits)", percent, PRINTER.exact(meter.digits(), Unit.ONE));
  }
}
