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

/** Reads an amplifier from its file, or from the object inside another text. */
public final class AmplifierReader {
  /** The format of an amplifier file. */
  public static final Format FORMAT = new Format("amplifier", 1);

  private static final Map<String, Mode> MODES = modes();

  private AmplifierReader() {}

  private static Map<String, Mode> modes() {
    Map<String, Mode> modes = new LinkedHashMap<>();
    for (Mode mode : Mode.values()) {
      modes.put(mode.word(), mode);
    }
    return modes;
  }

  /**
   * Reads the bytes of an amplifier file, which must state its format.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  public static Read<Amplifier> read(byte[] bytes, String file) {
    Read<Node> tree = JsonText.strict(file).read(bytes);
    Faults faults = new Faults(file);
    Optional<Amplifier> found = tree.found().flatMap(node -> read(node, true, faults));
    return Read.of(found, tree.found().isPresent() ? faults.list() : tree.faults());
  }

  /**
   * Reads an amplifier inside another text, where the format may be left out.
   *
   * @param node the object
   * @param faults where faults go; nothing is found exactly when one is added
   */
  public static Optional<Amplifier> embedded(Node node, Faults faults) {
    return read(node, false, faults);
  }

  /** Returns all that would keep an amplifier, once written, from being read again. */
  public static List<Fault> faults(Amplifier amplifier) {
    return read(AmplifierWriter.text(amplifier).getBytes(StandardCharsets.UTF_8), "").faults();
  }

  private static Optional<Amplifier> read(Node node, boolean formatRequired, Faults faults) {
    return Fields.of(node, "an amplifier", faults)
        .filter(fields -> FORMAT.check(fields, formatRequired))
        .flatMap(AmplifierReader::amplifier);
  }

  private static Optional<Amplifier> amplifier(Fields fields) {
    String maker = fields.requiredText("maker");
    String model = fields.requiredText("model");
    Optional<String> serial = fields.text("serial");
    var year = fields.integer("year", 1900, 2200);
    Optional<String> amplifierClass = fields.text("class");
    var channels = fields.integer("channels", 1, 64);
    List<Rating> ratings = fields.objects("ratings", AmplifierReader::rating);
    Optional<Minimum> minimum = fields.object("minimumOhms").flatMap(AmplifierReader::minimum);
    List<Double> fuses = fields.numbers("fuses", 0.1, 10_000);
    Optional<Boolean> regulated = fields.flag("regulated");
    return fields.build(
        () ->
            new Amplifier(
                maker,
                model,
                serial,
                year,
                amplifierClass,
                channels,
                ratings,
                minimum.map(Minimum::stereoOhms).orElse(OptionalDouble.empty()),
                minimum.map(Minimum::bridgedOhms).orElse(OptionalDouble.empty()),
                fuses,
                regulated));
  }

  private record Minimum(OptionalDouble stereoOhms, OptionalDouble bridgedOhms) {}

  private static Optional<Minimum> minimum(Fields fields) {
    OptionalDouble stereo = fields.number("stereo", 0.01, 10_000);
    OptionalDouble bridged = fields.number("bridged", 0.01, 10_000);
    return fields.build(() -> new Minimum(stereo, bridged));
  }

  private static Optional<Rating> rating(Fields fields) {
    Optional<Mode> mode = fields.requiredWord("mode", MODES);
    double ohms = fields.requiredNumber("ohms", 0.01, 10_000);
    double watts = fields.requiredNumber("watts", 0.001, 1e6);
    OptionalDouble supplyVolts = fields.number("supplyVolts", 1, 1000);
    OptionalDouble thdPercent = fields.number("thdPercent", 1e-6, 100);
    return fields.build(() -> new Rating(mode.orElseThrow(), ohms, watts, supplyVolts, thdPercent));
  }
}
