package loadwalk.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Writes JSON text, on one line or indented for people. */
public final class JsonOut {
  private static final JsonFactory FACTORY = new JsonFactory();

  private JsonOut() {}

  /** Writes the content of a JSON text. */
  @FunctionalInterface
  public interface Body {
    /** Writes to the generator. */
    void write(JsonGenerator out) throws IOException;
  }

  /** Returns what the body writes on one line, with no line break at the end. */
  public static String line(Body body) {
    return written(body, false);
  }

  /** Returns what the body writes, indented, with a line break at the end. */
  public static String pretty(Body body) {
    return written(body, true) + "\n";
  }

  private static String written(Body body, boolean indented) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      if (indented) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        out.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
      }
      body.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return text.toString();
  }

  /** Writes a number as a value, without decimals if it is whole. */
  public static void number(JsonGenerator out, double value) throws IOException {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("JSON has no number for " + value);
    }
    if (Numbers.isWhole(value)) {
      out.writeNumber((long) value);
    } else {
      out.writeNumber(value);
    }
  }

  /** Writes a key with a number, without decimals if it is whole. */
  public static void number(JsonGenerator out, String key, double value) throws IOException {
    out.writeFieldName(key);
    number(out, value);
  }

  /** Writes a key with an array of numbers. */
  public static void numbers(JsonGenerator out, String key, List<Double> values)
      throws IOException {
    out.writeArrayFieldStart(key);
    for (double value : values) {
      number(out, value);
    }
    out.writeEndArray();
  }

  /** Writes a key with an array of texts. */
  public static void texts(JsonGenerator out, String key, Iterable<String> texts)
      throws IOException {
    out.writeArrayFieldStart(key);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }

  /** The content of one object in an array. */
  @FunctionalInterface
  public interface Content<T> {
    /** Writes the keys of one item. */
    void of(T item) throws IOException;
  }

  /** Writes a key with an array of objects, one for each item. */
  public static <T> void objects(
      JsonGenerator out, String key, Iterable<T> items, Content<? super T> content)
      throws IOException {
    out.writeArrayFieldStart(key);
    for (T item : items) {
      out.writeStartObject();
      content.of(item);
      out.writeEndObject();
    }
    out.writeEndArray();
  }
}
