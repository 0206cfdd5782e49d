package loadwalk.sequence;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import loadwalk.json.Faults;
import loadwalk.json.Fields;
import loadwalk.json.Format;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.text.Visible;

/** Reads a sequence and checks its meaning; comments in the file are passed over. */
public final class SequenceReader {
  /** The format of a sequence file. */
  public static final Format FORMAT = new Format("sequence", 1);

  private static final int MOST_STEPS = 200;
  private static final int LONGEST_NAME = 64;
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");

  private SequenceReader() {}

  /**
   * Reads the text of a sequence file.
   *
   * @param text the file's content
   * @param file the name used in faults
   */
  public static Read<Sequence> read(String text, String file) {
    return read(text.getBytes(StandardCharsets.UTF_8), file);
  }

  /**
   * Reads the bytes of a sequence file.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  public static Read<Sequence> read(byte[] bytes, String file) {
    return read(bytes, file, Optional.empty());
  }

  /**
   * Reads the bytes of a sequence file that is found by its name, so that both must be one.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   * @param name the file's name without folder and ending
   */
  public static Read<Sequence> readNamed(byte[] bytes, String file, String name) {
    return read(bytes, file, Optional.of(name));
  }

  private static Read<Sequence> read(byte[] bytes, String file, Optional<String> name) {
    Read<Node> tree = JsonText.commented(file).read(bytes);
    Faults faults = new Faults(file);
    Optional<Sequence> found =
        tree.found()
            .flatMap(node -> Fields.of(node, "a sequence", faults))
            .filter(fields -> FORMAT.check(fields, true))
            .flatMap(fields -> sequence(fields, hash(bytes), name));
    return Read.of(found, tree.found().isPresent() ? faults.list() : tree.faults());
  }

  private static Optional<Sequence> sequence(Fields fields, String hash, Optional<String> wanted) {
    String name = name(fields, wanted);
    String title = fields.requiredText("title");
    double hertz = inner(fields, "tone", "hertz", 1, 100_000);
    double thd = inner(fields, "limit", "thdPercent", 0.001, 50);
    double volts = fields.requiredNumber("supplyVolts", 1, 100);
    fields.require("steps");
    StepReader reader = new StepReader();
    int before = fields.faults().count();
    List<Step> steps = fields.objects("steps", reader::read);
    checkSize(fields, steps.size(), fields.faults().count() > before);
    return fields.build(() -> new Sequence(name, title, hertz, thd, volts, steps, hash));
  }

  private static String name(Fields fields, Optional<String> wanted) {
    String name = fields.requiredText("name");
    if (!name.isEmpty() && !NAME.matcher(name).matches()) {
      fields.fault("name", "«name» must be small letters, digits and hyphens, at most 64");
    } else if (!name.isEmpty() && !name.equals(wanted.orElse(name))) {
      String file = Visible.line(wanted.get(), LONGEST_NAME);
      String both = "«name» is «%s» where the file is named «%s»; a sequence is found by it";
      fields.fault("name", String.format(both, name, file));
    }
    return name;
  }

  private static void checkSize(Fields fields, int size, boolean faulty) {
    boolean isList = fields.node("steps").flatMap(Node::list).isPresent();
    if (isList && !faulty && size == 0) {
      fields.fault("steps", "«steps» must have at least one step");
    }
    if (size > MOST_STEPS) {
      fields.fault("steps", "«steps» must not have more than " + MOST_STEPS + " steps");
    }
  }

  private static double inner(Fields fields, String key, String part, double least, double most) {
    fields.require(key);
    Optional<Double> value =
        fields
            .object(key)
            .flatMap(
                object -> {
                  OptionalDouble number =
                      OptionalDouble.of(object.requiredNumber(part, least, most));
                  return object.build(number::getAsDouble);
                });
    return value.orElse(Double.NaN);
  }

  static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
