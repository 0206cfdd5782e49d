package loadwalk.json;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Reads the fields of a record from one object of a file, and collects every fault. */
final class ShapeReader implements Shape {
  private final Fields fields;
  private boolean nameless;

  private ShapeReader(Fields fields) {
    this.fields = fields;
  }

  /**
   * Reads a record from an object.
   *
   * @param fields the object
   * @param blank holds the defaults
   * @return the record; empty exactly when a fault was added
   */
  static <T> Optional<T> read(Fields fields, Shaped<T> blank) {
    ShapeReader reader = new ShapeReader(fields);
    try {
      T value = blank.shape(reader);
      return reader.nameless ? Optional.empty() : fields.build(() -> value);
    } catch (IllegalArgumentException refused) {
      return fields.build(
          () -> {
            throw refused;
          });
    }
  }

  @Override
  public String text(String key, String value, int longest, boolean lines) {
    fields.require(key);
    return fields.text(key, longest, lines).orElse(value);
  }

  @Override
  public double number(String key, double value, double least, double most) {
    fields.require(key);
    return fields.number(key, least, most).orElse(value);
  }

  @Override
  public long whole(String key, long value, long least, long most) {
    fields.require(key);
    return fields.whole(key, least, most).orElse(value);
  }

  @Override
  public boolean flag(String key, boolean value) {
    fields.require(key);
    return fields.flag(key).orElse(value);
  }

  @Override
  public Optional<Boolean> flag(String key, Optional<Boolean> value) {
    return fields.flag(key);
  }

  @Override
  public <E> E word(String key, E value, Words<E> words) {
    fields.require(key);
    return fields.word(key, words.all()).orElse(value);
  }

  @Override
  public List<Double> numbers(String key, List<Double> values, double least, double most) {
    int before = fields.faults().count();
    fields.require(key);
    List<Double> read = fields.numbers(key, least, most);
    return fields.faults().count() > before ? values : read;
  }

  @Override
  public List<String> texts(String key, List<String> values) {
    int before = fields.faults().count();
    fields.require(key);
    List<String> read = fields.texts(key);
    return fields.faults().count() > before ? values : read;
  }

  @Override
  public long moment(String key, long wallMillis) {
    Optional<String> text = Optional.of(text(key, "")).filter(t -> !t.isEmpty());
    try {
      return text.isEmpty() ? wallMillis : Instant.parse(text.get()).toEpochMilli();
    } catch (DateTimeParseException | ArithmeticException e) {
      String quoted = Visible.quoted(key);
      fields.fault(key, Sentence.of("{} must be a time such as 2026-11-30T17:30:00Z", quoted));
      return wallMillis;
    }
  }

  @Override
  public <T extends Shaped<T>> T part(String key, T value) {
    fields.require(key);
    return fields.object(key).flatMap(part -> read(part, value)).orElse(value);
  }

  @Override
  public <T extends Shaped<T>> List<T> list(String key, List<T> values, T blank) {
    int before = fields.faults().count();
    fields.require(key);
    List<T> read = fields.objects(key, item -> read(item, blank));
    return fields.faults().count() > before ? values : read;
  }

  /** Reports no further faults of an object whose word is unknown. */
  @Override
  public <T extends Shaped<T>> T kind(String tag, T value, Words<T> kinds) {
    fields.require(tag);
    Optional<T> blank = fields.word(tag, kinds.all());
    nameless = blank.isEmpty();
    return nameless ? value : blank.get().shape(this);
  }

  @Override
  public <T extends Shaped<T>> T embedded(String key, T value, FileShape<T> file) {
    fields.require(key);
    return fields.node(key).flatMap(node -> file.embedded(node, fields.faults())).orElse(value);
  }

  @Override
  public <E> Set<E> keys(Words<E> words, Set<E> given) {
    Set<E> found = new LinkedHashSet<>();
    words.all().forEach((word, meaning) -> add(found, word, meaning));
    return found;
  }

  private <E> void add(Set<E> found, String word, E meaning) {
    if (fields.node(word).isPresent()) {
      found.add(meaning);
    }
  }

  @Override
  public boolean has(String key, boolean given) {
    return fields.node(key).isPresent();
  }

  @Override
  public boolean isText(String key, boolean given) {
    return fields.node(key).flatMap(Node::string).isPresent();
  }

  @Override
  public void refuse(String sentence) {
    fields.fault(sentence);
  }

  @Override
  public void refuse(String key, String sentence) {
    fields.fault(key, sentence);
  }
}
