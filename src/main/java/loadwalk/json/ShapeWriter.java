package loadwalk.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** Writes the fields of a record into the object that is open. */
public final class ShapeWriter implements Shape {
  private final JsonGenerator out;

  private ShapeWriter(JsonGenerator out) {
    this.out = out;
  }

  /** Writes a record as one object. */
  public static void write(JsonGenerator out, Shaped<?> value) throws IOException {
    out.writeStartObject();
    fields(out, value);
    out.writeEndObject();
  }

  /** Writes the fields of a record into the object that is open. */
  static void fields(JsonGenerator out, Shaped<?> value) throws IOException {
    try {
      value.shape(new ShapeWriter(out));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void write(JsonOut.Body body) {
    try {
      body.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String text(String key, String value, int longest, boolean lines) {
    write(to -> to.writeStringField(key, value));
    return value;
  }

  @Override
  public double number(String key, double value, double least, double most) {
    write(to -> JsonOut.number(to, key, value));
    return value;
  }

  @Override
  public long whole(String key, long value, long least, long most) {
    write(to -> to.writeNumberField(key, value));
    return value;
  }

  @Override
  public boolean flag(String key, boolean value) {
    write(to -> to.writeBooleanField(key, value));
    return value;
  }

  @Override
  public <E> E word(String key, E value, Words<E> words) {
    write(to -> to.writeStringField(key, words.word().apply(value)));
    return value;
  }

  @Override
  public List<Double> numbers(String key, List<Double> values, double least, double most) {
    write(to -> JsonOut.numbers(to, key, values));
    return values;
  }

  @Override
  public List<String> texts(String key, List<String> values) {
    write(
        to -> {
          to.writeArrayFieldStart(key);
          for (String text : values) {
            to.writeString(text);
          }
          to.writeEndArray();
        });
    return values;
  }

  @Override
  public long moment(String key, long wallMillis) {
    write(to -> to.writeStringField(key, Instant.ofEpochMilli(wallMillis).toString()));
    return wallMillis;
  }

  @Override
  public <T extends Shaped<T>> T part(String key, T value) {
    write(to -> to.writeFieldName(key));
    object(value);
    return value;
  }

  @Override
  public <T extends Shaped<T>> List<T> list(String key, List<T> values, T blank) {
    write(to -> to.writeArrayFieldStart(key));
    values.forEach(this::object);
    write(JsonGenerator::writeEndArray);
    return values;
  }

  private void object(Shaped<?> value) {
    write(JsonGenerator::writeStartObject);
    value.shape(this);
    write(JsonGenerator::writeEndObject);
  }

  @Override
  public <T extends Shaped<T>> T kind(String tag, T value, Words<T> kinds) {
    return word(tag, value, kinds).shape(this);
  }

  @Override
  public <T extends Shaped<T>> T embedded(String key, T value, FileShape<T> file) {
    write(
        to -> {
          to.writeFieldName(key);
          file.write(to, value);
        });
    return value;
  }

  @Override
  public <E> Set<E> keys(Words<E> words, Set<E> given) {
    return given;
  }

  @Override
  public boolean has(String key, boolean given) {
    return given;
  }

  @Override
  public boolean isText(String key, boolean given) {
    return given;
  }

  @Override
  public void refuse(String sentence) {
    // The record checked its values when it was made.
  }

  @Override
  public void refuse(String key, String sentence) {
    refuse(sentence);
  }
}
