package loadwalk.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * How a record is kept in a file of its own, or embedded in another JSON text.
 *
 * @param format the format that the file states
 * @param what what the file describes, such as "an amplifier"
 * @param comments whether the file may contain comments
 * @param blank holds the defaults
 * @param <T> the record
 */
public record FileShape<T extends Shaped<T>>(
    Format format, String what, boolean comments, T blank) {

  /**
   * Reads the bytes of a file, which must state its format.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  public Read<T> read(byte[] bytes, String file) {
    return read(bytes, file, blank);
  }

  /**
   * Reads the bytes of a file, which must state its format.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   * @param own holds the defaults for this file
   */
  public Read<T> read(byte[] bytes, String file, T own) {
    JsonText text = comments ? JsonText.commented(file) : JsonText.strict(file);
    Read<Node> tree = text.read(bytes);
    Faults faults = new Faults(file);
    Optional<T> found = tree.found().flatMap(node -> read(node, true, own, faults));
    return Read.of(found, tree.found().isPresent() ? faults.list() : tree.faults());
  }

  /**
   * Reads the record inside another text, where the format may be left out.
   *
   * @param node the object
   * @param faults where faults go; the result is empty exactly when one is added
   */
  public Optional<T> embedded(Node node, Faults faults) {
    return read(node, false, blank, faults);
  }

  private Optional<T> read(Node node, boolean formatRequired, T own, Faults faults) {
    return Fields.of(node, what, faults)
        .filter(fields -> format.check(fields, formatRequired))
        .flatMap(fields -> ShapeReader.read(fields, own));
  }

  /** Returns the faults that would stop a record from being read back once it is written. */
  public List<Fault> faults(T value) {
    return read(text(value).getBytes(StandardCharsets.UTF_8), "").faults();
  }

  /** Returns the text of a file. */
  public String text(T value) {
    return JsonOut.pretty(out -> write(out, value));
  }

  /** Writes a record as one object with its format. */
  public void write(JsonGenerator out, T value) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, format.text());
    ShapeWriter.fields(out, value);
    out.writeEndObject();
  }
}
