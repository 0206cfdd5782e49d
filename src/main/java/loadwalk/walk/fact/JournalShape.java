package loadwalk.walk.fact;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import loadwalk.json.Faults;
import loadwalk.json.FileShape;
import loadwalk.json.Node;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.json.Words;
import loadwalk.text.Sentence;

/**
 * Reads the fields of a record from an object of a journal.
 *
 * <p>Loadwalk wrote the journal with checksums, so anything wrong in it comes from another version
 * or another program. The first field that is missing or of another kind makes the record
 * unreadable. Unknown keys are ignored, and no limits apply but those of the records.
 *
 * @param object the object
 */
record JournalShape(Node.Obj object) implements Shape {

  static JournalShape of(Node node) {
    return node.object()
        .map(JournalShape::new)
        .orElseThrow(
            () -> new UnreadableFact(Sentence.of("an object is expected, not {}", node.kind())));
  }

  private Node node(String key) {
    return object
        .get(key)
        .orElseThrow(() -> new UnreadableFact(Sentence.of("«{}» is missing", key)));
  }

  private List<Node> items(String key) {
    return node(key)
        .list()
        .orElseThrow(() -> new UnreadableFact(Sentence.of("«{}» must be a list", key)));
  }

  private static double number(String key, Node node) {
    return node.number()
        .orElseThrow(() -> new UnreadableFact(Sentence.of("«{}» must be a number", key)));
  }

  @Override
  public String text(String key, String value, int longest, boolean lines) {
    return node(key)
        .string()
        .orElseThrow(() -> new UnreadableFact(Sentence.of("«{}» must be a text", key)));
  }

  @Override
  public double number(String key, double value, double least, double most) {
    return number(key, node(key));
  }

  @Override
  public long whole(String key, long value, long least, long most) {
    return (long) number(key, node(key));
  }

  @Override
  public boolean flag(String key, boolean value) {
    return node(key)
        .truth()
        .orElseThrow(() -> new UnreadableFact(Sentence.of("«{}» must be true or false", key)));
  }

  @Override
  public <E> E word(String key, E value, Words<E> words) {
    return meaning(text(key, ""), words);
  }

  private static <E> E meaning(String word, Words<E> words) {
    E meaning = words.all().get(word);
    if (meaning == null) {
      throw new UnreadableFact(Sentence.of("«{}» {}", word, words.strange()));
    }
    return meaning;
  }

  @Override
  public List<Double> numbers(String key, List<Double> values, double least, double most) {
    return items(key).stream().map(item -> number(key, item)).toList();
  }

  @Override
  public List<String> texts(String key, List<String> values) {
    List<String> texts = new ArrayList<>();
    for (Node item : items(key)) {
      texts.add(item.string().orElseThrow(() -> new UnreadableFact("a list of texts is expected")));
    }
    return texts;
  }

  @Override
  public long moment(String key, long wallMillis) {
    String text = text(key, "");
    try {
      return MomentText.millis(text).orElseGet(() -> Instant.parse(text).toEpochMilli());
    } catch (DateTimeParseException | ArithmeticException e) {
      throw new UnreadableFact(Sentence.of("«{}» is not a time", key));
    }
  }

  @Override
  public <T extends Shaped<T>> T part(String key, T value) {
    return value.shape(of(node(key)));
  }

  @Override
  public <T extends Shaped<T>> List<T> list(String key, List<T> values, T blank) {
    return items(key).stream().map(item -> blank.shape(of(item))).toList();
  }

  @Override
  public <T extends Shaped<T>> T kind(String tag, T value, Words<T> kinds) {
    return word(tag, value, kinds).shape(this);
  }

  /** Reads an embedded file, which must keep to its own limits wherever it appears. */
  @Override
  public <T extends Shaped<T>> T embedded(String key, T value, FileShape<T> file) {
    Faults faults = new Faults("journal");
    return file.embedded(node(key), faults)
        .orElseThrow(() -> new UnreadableFact(faults.list().get(0).sentence()));
  }

  @Override
  public <E> Set<E> keys(Words<E> words, Set<E> given) {
    Set<E> found = new LinkedHashSet<>();
    object.members().keySet().forEach(key -> found.add(meaning(key, words)));
    return found;
  }

  @Override
  public boolean has(String key, boolean given) {
    return object.get(key).isPresent();
  }

  @Override
  public boolean isText(String key, boolean given) {
    return object.get(key).flatMap(Node::string).isPresent();
  }

  @Override
  public void refuse(String sentence) {
    throw new UnreadableFact(sentence);
  }

  @Override
  public void refuse(String key, String sentence) {
    refuse(sentence);
  }
}
