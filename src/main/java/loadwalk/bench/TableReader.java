package loadwalk.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.text.Sentence;

/** Reads the data tables from text. */
final class TableReader {
  private static final String WIRE = "wire.csv";
  private static final String AMPACITY = "ampacity.csv";
  private static final String FUSE = "fuse.csv";
  private static final String LIMITS = "limits.csv";
  private static final String INSULATION = "insulation.csv";
  static final List<String> FILE_NAMES = List.of(WIRE, AMPACITY, FUSE, LIMITS, INSULATION);

  private static final Pattern AWG = Pattern.compile("AWG (\\d{1,4}|[1-4]/0)");
  private static final Pattern MM2 = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?) mm(?:2|²)");

  private TableReader() {}

  static Tables stock() {
    Tables tables = new Tables(Map.of(), Map.of(), List.of(), Map.of(), Map.of());
    for (String name : FILE_NAMES) {
      tables = with(tables, name, resource(name));
    }
    return tables;
  }

  static Tables with(Tables tables, String fileName, String text) {
    switch (fileName) {
      case WIRE:
        return tables.withWires(gauges(tables.wires(), fileName, text, "ohmsPerKilometre"));
      case AMPACITY:
        return tables.withAmpacities(gauges(tables.ampacities(), fileName, text, "amps"));
      case FUSE:
        return tables.withFuses(fuses(tables.fuses(), text));
      case LIMITS:
        return tables.withLimits(limits(tables.limits(), text));
      case INSULATION:
        return tables.withInsulations(insulations(tables.insulations(), text));
      default:
        throw new IllegalArgumentException(
            fileName + " is not a data table; the tables are " + String.join(", ", FILE_NAMES));
    }
  }

  static Lead.Gauge gauge(String text) {
    Matcher awg = AWG.matcher(text);
    if (awg.matches()) {
      return Lead.Awg.of(awg.group(1));
    }
    Matcher mm2 = MM2.matcher(text);
    if (mm2.matches()) {
      return new Lead.Mm2(Double.parseDouble(mm2.group(1)));
    }
    throw new IllegalArgumentException(
        Sentence.of("gauge must read like \"AWG 4\", \"AWG 2/0\" or \"25 mm2\", got \"{}\"", text));
  }

  private static Map<Lead.Gauge, SourcedNumber> gauges(
      Map<Lead.Gauge, SourcedNumber> before, String fileName, String text, String column) {
    Map<Lead.Gauge, SourcedNumber> after = new LinkedHashMap<>(before);
    for (Csv.Row row : Csv.rows(fileName, text, List.of("gauge", column, "source", "how"))) {
      String size = row.text("gauge");
      after.put(row.make(() -> gauge(size)), row.sourced(row.positive(column)));
    }
    return after;
  }

  private static Map<Tables.Insulated, SourcedNumber> insulations(
      Map<Tables.Insulated, SourcedNumber> before, String text) {
    Map<Tables.Insulated, SourcedNumber> after = new LinkedHashMap<>(before);
    List<String> columns = List.of("gauge", "celsius", "amps", "source", "how");
    for (Csv.Row row : Csv.rows(INSULATION, text, columns)) {
      String size = row.text("gauge");
      double celsius = row.positive("celsius");
      Tables.Insulated key = row.make(() -> new Tables.Insulated(gauge(size), celsius));
      after.put(key, row.sourced(row.positive("amps")));
    }
    return after;
  }

  private static Map<String, SourcedNumber> limits(Map<String, SourcedNumber> before, String text) {
    Map<String, SourcedNumber> after = new LinkedHashMap<>(before);
    Map<String, Csv.Row> rows = new HashMap<>();
    boolean stock = before.isEmpty();
    for (Csv.Row row : Csv.rows(LIMITS, text, List.of("key", "value", "unit", "source", "how"))) {
      String key = row.text("key");
      if (!stock && !before.containsKey(key)) {
        throw new IllegalArgumentException(
            row.where()
                + ": unknown key \""
                + key
                + "\"; the keys are "
                + String.join(", ", before.keySet()));
      }
      boolean celsius = key.endsWith("-celsius");
      after.put(key, row.sourced(celsius ? row.number("value") : row.positive("value")));
      rows.put(key, row);
    }
    rising(after, rows, "copper-zero-celsius", "lead-celsius");
    rising(after, rows, "cca-zero-celsius", "lead-celsius");
    rising(after, rows, "resistor-full-celsius", "resistor-zero-celsius");
    return after;
  }

  /** Rejects a row after which the lower of two temperatures is not below the higher. */
  private static void rising(
      Map<String, SourcedNumber> limits, Map<String, Csv.Row> rows, String lower, String higher) {
    Csv.Row row = rows.getOrDefault(higher, rows.get(lower));
    if (row != null && limits.get(lower).value() >= limits.get(higher).value()) {
      throw new IllegalArgumentException(
          Sentence.of("{}: {} must be below {}", row.where(), lower, higher));
    }
  }

  /**
   * Reads the kinds of fuse. Of two made up to the same rating, the operator's comes first and is
   * used.
   */
  private static List<FuseCurve> fuses(List<FuseCurve> before, String text) {
    Map<String, FuseCurve> after = new LinkedHashMap<>();
    Map<String, List<FuseCurve.Point>> points = new LinkedHashMap<>();
    List<String> columns =
        List.of("type", "upToAmps", "percentOfRating", "minSeconds", "maxSeconds", "source", "how");
    for (Csv.Row row : Csv.rows(FUSE, text, columns)) {
      String type = row.text("type");
      List<FuseCurve.Point> ofType = points.computeIfAbsent(type, t -> new ArrayList<>());
      double upToAmps = row.positive("upToAmps");
      ofType.add(point(row));
      after.put(type, row.make(() -> new FuseCurve(type, upToAmps, ofType)));
    }
    before.forEach(fuse -> after.putIfAbsent(fuse.type(), fuse));
    return after.values().stream().sorted(Comparator.comparingDouble(FuseCurve::upToAmps)).toList();
  }

  private static FuseCurve.Point point(Csv.Row row) {
    OptionalDouble longest =
        row.has("maxSeconds")
            ? OptionalDouble.of(row.positive("maxSeconds"))
            : OptionalDouble.empty();
    double multiple = row.positive("percentOfRating") / 100;
    double least = row.positive("minSeconds");
    String source = row.text("source");
    String how = row.text("how");
    return row.make(() -> new FuseCurve.Point(multiple, least, longest, source, how));
  }

  private static String resource(String name) {
    String path = "/loadwalk/data/" + name;
    try (InputStream in = TableReader.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the jar lacks " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(Sentence.of("cannot read {} from the jar", path), e);
    }
  }
}
