package loadwalk.bench;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.json.Fault;
import loadwalk.json.Faults;
import loadwalk.json.Fields;
import loadwalk.json.Format;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;

/**
 * Reads a bench from its file, or from the object inside another text.
 *
 * <p>Labels and the bench's name may be left out. A load without a tolerance is taken as ±5 %, as
 * wirewound resistors are sold (common practice, no source), never as exact.
 */
public final class BenchReader {
  /** The format of a bench file. */
  public static final Format FORMAT = new Format("bench", 1);

  /** The tolerance of a load that states none, percent. */
  public static final double DEFAULT_TOLERANCE_PERCENT = 5;

  private static final Map<String, ReadingId> READINGS = readings();
  private static final Map<String, Integer> LARGE_GAUGES = largeGauges();

  private BenchReader() {}

  private static Map<String, ReadingId> readings() {
    Map<String, ReadingId> readings = new LinkedHashMap<>();
    for (ReadingId id : ReadingId.values()) {
      readings.put(id.key(), id);
    }
    return readings;
  }

  private static Map<String, Integer> largeGauges() {
    Map<String, Integer> gauges = new LinkedHashMap<>();
    for (int number = -3; number <= 40; number++) {
      gauges.put(new Lead.Awg(number).text().substring("AWG ".length()), number);
    }
    return gauges;
  }

  /**
   * Reads the bytes of a bench file, which must state its format.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  public static Read<Bench> read(byte[] bytes, String file) {
    Read<Node> tree = JsonText.strict(file).read(bytes);
    Faults faults = new Faults(file);
    Optional<Bench> found = tree.found().flatMap(node -> read(node, true, faults));
    return Read.of(found, tree.found().isPresent() ? faults.list() : tree.faults());
  }

  /**
   * Reads a bench inside another text, where the format may be left out.
   *
   * @param node the object
   * @param faults where faults go; nothing is found exactly when one is added
   */
  public static Optional<Bench> embedded(Node node, Faults faults) {
    return read(node, false, faults);
  }

  /** Returns all that would keep a bench, once written, from being read again. */
  public static List<Fault> faults(Bench bench) {
    return read(BenchWriter.text(bench).getBytes(StandardCharsets.UTF_8), "").faults();
  }

  private static Optional<Bench> read(Node node, boolean formatRequired, Faults faults) {
    return Fields.of(node, "a bench", faults)
        .filter(fields -> FORMAT.check(fields, formatRequired))
        .flatMap(BenchReader::bench);
  }

  private static Optional<Bench> bench(Fields fields) {
    Optional<String> name = fields.text("name");
    List<Supply> supplies = fields.objects("supplies", BenchReader::supply);
    List<Lead> leads = fields.objects("leads", BenchReader::lead);
    Optional<Double> fuseAmps = fields.object("fuse").flatMap(BenchReader::fuse);
    List<LoadResistor> loads = fields.objects("loads", BenchReader::load);
    List<Meter> meters = fields.objects("meters", BenchReader::meter);
    OptionalDouble usable = fields.number("usableFraction", 0.01, 1);
    return fields.build(
        () ->
            new Bench(
                name.orElse("bench without a name"),
                supplies,
                leads,
                fuseAmps.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                loads,
                meters,
                usable.orElse(Bench.DEFAULT_USABLE_FRACTION)));
  }

  private static Optional<Supply> supply(Fields fields) {
    double volts = fields.requiredNumber("volts", 0.1, 1000);
    double amps = fields.requiredNumber("amps", 0.01, 100_000);
    return fields.build(() -> new Supply(volts, amps));
  }

  private static Optional<Double> fuse(Fields fields) {
    double amps = fields.requiredNumber("amps", 0.1, 100_000);
    return fields.build(() -> amps);
  }

  private static Optional<Lead> lead(Fields fields) {
    Optional<String> label = fields.text("label");
    Optional<Lead.Gauge> gauge = gauge(fields);
    double metres = fields.requiredNumber("metres", 0.001, 1000);
    int parallel = fields.integer("parallel", 1, 1000).orElse(1);
    return fields.build(
        () -> new Lead(label.orElse("lead"), gauge.orElseThrow(), metres, parallel));
  }

  private static Optional<Lead.Gauge> gauge(Fields fields) {
    boolean awg = fields.node("awg").isPresent();
    boolean mm2 = fields.node("mm2").isPresent();
    if (awg == mm2) {
      fields.fault("a lead needs exactly one of «awg» and «mm2»");
      return Optional.empty();
    }
    if (mm2) {
      OptionalDouble area = fields.number("mm2", 0.01, 10_000);
      return area.isPresent() ? Optional.of(new Lead.Mm2(area.getAsDouble())) : Optional.empty();
    }
    if (fields.node("awg").orElseThrow() instanceof Node.Str) {
      return fields.word("awg", LARGE_GAUGES).map(Lead.Awg::new);
    }
    var number = fields.integer("awg", -3, 40);
    return number.isPresent() ? Optional.of(new Lead.Awg(number.getAsInt())) : Optional.empty();
  }

  private static Optional<LoadResistor> load(Fields fields) {
    Optional<String> label = fields.text("label");
    double ohms = fields.requiredNumber("ohms", 0.001, 1e6);
    double tolerance = fields.number("tolerancePercent", 0, 100).orElse(DEFAULT_TOLERANCE_PERCENT);
    double watts = fields.requiredNumber("watts", 0.01, 1e6);
    int count = fields.integer("count", 1, 1000).orElse(1);
    OptionalDouble ppm = fields.number("ppmPerKelvin", -100_000, 100_000);
    return fields.build(
        () -> new LoadResistor(label.orElse("load"), ohms, tolerance, watts, count, ppm));
  }

  private static Optional<Meter> meter(Fields fields) {
    Optional<String> label = fields.text("label");
    Optional<ReadingId> reads = fields.requiredWord("reads", READINGS);
    OptionalDouble percent = fields.number("percent", 0, 100);
    OptionalDouble digits = fields.number("digits", 0, 100_000);
    OptionalDouble resolution = fields.number("resolution", 0, 1e6);
    if (fields.node("percent").isEmpty() && fields.node("digits").isEmpty()) {
      fields.fault("a meter needs «percent», or «digits» with «resolution», or both");
    }
    if (digits.orElse(0) > 0 && !(resolution.orElse(0) > 0)) {
      fields.fault("digits", "«digits» needs a «resolution» above 0");
    }
    Optional<Meter.Band> band = band(fields);
    Optional<Connection> connection =
        reads.flatMap(id -> fields.object("connection").flatMap(c -> ConnectionReader.read(c, id)));
    return fields.build(
        () ->
            new Meter(
                label.orElse(reads.orElseThrow().label() + " meter"),
                reads.orElseThrow(),
                percent.orElse(0),
                digits.orElse(0),
                resolution.orElse(0),
                band,
                connection));
  }

  private static Optional<Meter.Band> band(Fields fields) {
    int before = fields.faults().count();
    List<Double> hertz = fields.numbers("hertz", 0, 1e9);
    if (fields.node("hertz").isEmpty() || fields.faults().count() > before) {
      return Optional.empty();
    }
    if (hertz.size() != 2 || hertz.get(0) > hertz.get(1)) {
      fields.fault("hertz", "«hertz» must be [low, high]");
      return Optional.empty();
    }
    return Optional.of(new Meter.Band(hertz.get(0), hertz.get(1)));
  }
}
