package loadwalk.view.form;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.Battery;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Metal;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.ThdKind;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.ScreenWords;

/** The form of a bench: its lines, and the way to and from a record. */
public final class BenchForm {
  /** What each line of the form is called. */
  public static final List<String> LABELS =
      List.of("name", "supplies", "leads", "fuse at the source", "load resistors", "meters");

  /** What to type into each line. */
  public static final List<String> HINTS =
      List.of(
          "required, for example North bench",
          "for example 13.8 V 60 A; 13.8 V 40 A, or battery 12.7 V 600 CCA 60 Ah",
          "for example plus AWG 4 6 ft 105 C; minus 25 mm2 1.5 m cca x2",
          "amperes, for example 100",
          "for example 4 ohm 5 % 100 W x4 heatsink 0.5 K/W; 2 ohm 1 % 50 W x2 free-air;"
              + " mounts: heatsink, metal, free-air, fan, oil",
          "for example DMM outputVolts 0.8 % 3 digits 0.01 45-1000 Hz;"
              + " box thdPercent 5 % 1 digits 0.01 thd+n to 80000 Hz");

  private static final String NUMBER = "([^\\s;]+?)";
  private static final Pattern SUPPLY =
      Pattern.compile(
          "(?i)battery\\s+(?<open>[^\\s;]+?)\\s*V\\s+"
              + "(?:(?<milliohms>[^\\s;]+?)\\s*(?:mohms?|mΩ)|(?<cranking>[^\\s;]+?)\\s*(?:A\\s*)?CCA)"
              + "(?:\\s+(?<hours>[^\\s;]+?)\\s*Ah)?"
              + "|(?<volts>[^\\s;]+?)\\s*V\\s+(?<amps>[^\\s;]+?)\\s*A");
  private static final Pattern LEAD =
      Pattern.compile(
          "(?i)(?<label>.+?)\\s+(?:AWG\\s*(?<awg>[1-4]/0|[0-9]+)|"
              + "(?<size>[1-4]/0|[0-9]+)\\s*(?:AWG|ga(?:uge)?)|(?<area>[^\\s;]+?)\\s*mm(?:2|²))"
              + "\\s+(?<length>[^\\s;]+?)\\s*(?<unit>m|ft|foot|feet|')"
              + "(?:\\s+(?<metal>copper|cca))?(?:\\s+(?<celsius>[^\\s;]+?)\\s*°?C)?"
              + "(?:\\s+x\\s*(?<count>[0-9]+))?");
  private static final Pattern LOAD =
      Pattern.compile(
          "(?i)"
              + NUMBER
              + "\\s*(?:ohms?|Ω)\\s+"
              + NUMBER
              + "\\s*%\\s+"
              + NUMBER
              + "\\s*W(?:\\s+x\\s*([0-9]+))?"
              + "(?:\\s+(metal|free-air|fan|oil|heatsink\\s+"
              + NUMBER
              + "\\s*K/W))?");
  private static final Pattern METER =
      Pattern.compile(
          "(?i)(.+?)\\s+([a-z]+)\\s+"
              + NUMBER
              + "\\s*%\\s+"
              + NUMBER
              + "\\s*digits?\\s+"
              + NUMBER
              + "(?:\\s+([0-9.]+)\\s*-\\s*([0-9.]+)\\s*Hz)?"
              + "(?:\\s+(thd-f|thd-r|thd\\+n))?(?:\\s+to\\s+([0-9.]+)\\s*Hz)?");

  private static final int SUPPLIES = 1;
  private static final int LEADS = 2;
  private static final int FUSE = 3;
  private static final int LOADS = 4;
  private static final int METERS = 5;

  private BenchForm() {}

  /** Returns the lines of an empty form. */
  public static List<String> blank() {
    return Collections.nCopies(LABELS.size(), "");
  }

  /** Reads the bench from its lines. */
  public static FormRead<Bench> read(List<String> texts) {
    return FormLines.read(texts, 1, BenchForm::bench, BenchFiles.BENCH::faults);
  }

  private static Bench bench(FormLines lines) {
    return new Bench(
        lines.requiredText(0, "The name is required."),
        lines.parts(SUPPLIES, SUPPLY, HINTS.get(SUPPLIES), BenchForm::supply),
        lines.parts(LEADS, LEAD, HINTS.get(LEADS), BenchForm::lead),
        lines.optionalNumber(FUSE, Unit.AMPERE),
        lines.parts(LOADS, LOAD, HINTS.get(LOADS), BenchForm::load),
        lines.parts(METERS, METER, HINTS.get(METERS), BenchForm::meter),
        Bench.DEFAULT_USABLE_FRACTION);
  }

  private static Supply supply(Matcher m) {
    if (m.group("open") != null) {
      return Supply.of(battery(m));
    }
    return new Supply(
        FormLines.number(SUPPLIES, m.group("volts"), Unit.VOLT),
        FormLines.number(SUPPLIES, m.group("amps"), Unit.AMPERE));
  }

  private static Battery battery(Matcher m) {
    String milliohms = m.group("milliohms");
    String hours = m.group("hours");
    return new Battery(
        FormLines.number(SUPPLIES, m.group("open"), Unit.VOLT),
        milliohms != null
            ? new Battery.Milliohms(FormLines.number(SUPPLIES, milliohms, Unit.ONE))
            : new Battery.ColdCranking(
                FormLines.number(SUPPLIES, m.group("cranking"), Unit.AMPERE)),
        hours == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(FormLines.number(SUPPLIES, hours, Unit.ONE)));
  }

  private static Lead lead(Matcher m) {
    String celsius = m.group("celsius");
    return new Lead(
        m.group("label"),
        gauge(m),
        length(m),
        count(LEADS, m.group("count")),
        "cca".equalsIgnoreCase(m.group("metal")) ? Metal.CCA : Metal.COPPER,
        celsius == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(FormLines.number(LEADS, celsius, Unit.CELSIUS)));
  }

  private static Lead.Gauge gauge(Matcher m) {
    if (m.group("area") != null) {
      return new Lead.Mm2(FormLines.number(LEADS, m.group("area"), Unit.ONE));
    }
    return Lead.Awg.of(m.group("awg") != null ? m.group("awg") : m.group("size"));
  }

  private static Lead.Length length(Matcher m) {
    return m.group("unit").equalsIgnoreCase("m")
        ? new Lead.Length.Metres(FormLines.number(LEADS, m.group("length"), Unit.METRE))
        : new Lead.Length.Feet(FormLines.number(LEADS, m.group("length"), Unit.ONE));
  }

  private static LoadResistor load(Matcher m) {
    double ohms = FormLines.number(LOADS, m.group(1), Unit.OHM);
    return new LoadResistor(
        LoadResistor.valueName(ohms),
        ohms,
        FormLines.number(LOADS, m.group(2), Unit.PERCENT),
        FormLines.number(LOADS, m.group(3), Unit.WATT),
        count(LOADS, m.group(4)),
        OptionalDouble.empty(),
        Optional.ofNullable(m.group(5)).map(words -> mount(words, m.group(6))));
  }

  private static Mount mount(String words, String kelvinPerWatt) {
    return kelvinPerWatt == null
        ? Mount.of(Mount.Kind.ofWord(words))
        : Mount.heatsink(FormLines.number(LOADS, kelvinPerWatt, Unit.ONE));
  }

  private static Meter meter(Matcher m) {
    ReadingId reads =
        ReadingId.ofKey(m.group(2))
            .orElseThrow(
                () ->
                    new FormProblem(
                        METERS,
                        Sentence.of(
                            "«{}» is not a reading. Type a name like outputVolts,"
                                + " supplyVolts, supplyAmps, sinkCelsius, loadOhms, thdPercent.",
                            m.group(2))));
    Optional<Meter.Band> band =
        m.group(6) == null
            ? Optional.empty()
            : Optional.of(
                new Meter.Band(
                    FormLines.number(METERS, m.group(6), Unit.HERTZ),
                    FormLines.number(METERS, m.group(7), Unit.HERTZ)));
    return distortion(
        m,
        new Meter(
            m.group(1),
            reads,
            FormLines.number(METERS, m.group(3), Unit.PERCENT),
            FormLines.number(METERS, m.group(4), Unit.ONE),
            FormLines.number(METERS, m.group(5), reads.unit()),
            band));
  }

  private static Meter distortion(Matcher m, Meter meter) {
    Optional<ThdKind> kind =
        Stream.of(ThdKind.values()).filter(k -> k.word().equals(m.group(8))).findFirst();
    OptionalDouble hertz =
        m.group(9) == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(FormLines.number(METERS, m.group(9), Unit.HERTZ));
    boolean said = kind.isPresent() || hertz.isPresent();
    if (said && meter.reads() != ReadingId.THD_PERCENT) {
      throw new FormProblem(
          METERS, "Only a meter that reads thdPercent has a kind of THD and a band up to «to».");
    }
    return meter.counting(kind, hertz);
  }

  private static int count(int line, String text) {
    if (text == null) {
      return 1;
    }
    if (text.length() > 4) {
      throw new FormProblem(line, Sentence.of("«{}» is too large a number here.", text));
    }
    return Integer.parseInt(text);
  }

  /** Returns the lines that describe this bench. */
  public static List<String> texts(Bench b) {
    return List.of(
        b.name(),
        joined(b.supplies().stream().map(BenchForm::text).toList()),
        joined(b.leads().stream().map(BenchForm::text).toList()),
        b.fuseAmps().isPresent() ? n(b.fuseAmps().getAsDouble()) : "",
        joined(b.loads().stream().map(BenchForm::text).toList()),
        joined(b.meters().stream().map(BenchForm::text).toList()));
  }

  private static String text(Supply supply) {
    return supply
        .battery()
        .map(BenchForm::text)
        .orElseGet(() -> Sentence.of("{} V {} A", n(supply.volts()), n(supply.amps())));
  }

  private static String text(Battery battery) {
    Battery.Resistance resistance = battery.resistance();
    String text =
        Sentence.of(
            "battery {} V {} {}",
            n(battery.openVolts()),
            n(resistance.number()),
            resistance.unit());
    return battery.ampereHours().isEmpty()
        ? text
        : Sentence.of("{} {} Ah", text, n(battery.ampereHours().getAsDouble()));
  }

  private static String text(Lead lead) {
    String run =
        Sentence.of(
            "{} {} {} {}",
            lead.label(),
            lead.gauge().text().replace("²", "2"),
            n(lead.length().number()),
            lead.length().unit());
    String made =
        lead.metal() == Metal.COPPER ? run : Sentence.of("{} {}", run, lead.metal().word());
    String insulated =
        lead.insulationCelsius().isEmpty()
            ? made
            : Sentence.of("{} {} C", made, n(lead.insulationCelsius().getAsDouble()));
    return Sentence.of("{} x{}", insulated, lead.parallel());
  }

  private static String text(LoadResistor load) {
    String kind =
        Sentence.of(
            "{} ohm {} % {} W x{}",
            n(load.ohms()), n(load.tolerancePercent()), n(load.watts()), load.count());
    return load.mount().map(mount -> kind + " " + text(mount)).orElse(kind);
  }

  private static String text(Mount mount) {
    return mount.kelvinPerWatt().isPresent()
        ? Sentence.of("{} {} K/W", mount.kind().word(), n(mount.kelvinPerWatt().getAsDouble()))
        : mount.kind().word();
  }

  private static String text(Meter m) {
    String meter =
        Sentence.of(
            "{} {} {} % {} digits {}",
            m.label(), m.reads().key(), n(m.percent()), n(m.digits()), n(m.resolution()));
    String band =
        m.band()
            .map(b -> Sentence.of("{} {}-{} Hz", meter, n(b.lowHertz()), n(b.highHertz())))
            .orElse(meter);
    String kind = m.thdKind().map(k -> band + " " + k.word()).orElse(band);
    return m.bandwidthHertz().isPresent()
        ? Sentence.of("{} to {} Hz", kind, n(m.bandwidthHertz().getAsDouble()))
        : kind;
  }

  private static String n(double value) {
    return ScreenWords.number(value);
  }

  private static String joined(List<String> parts) {
    return parts.stream().collect(Collectors.joining("; "));
  }
}
