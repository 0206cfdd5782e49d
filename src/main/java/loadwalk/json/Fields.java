package loadwalk.json;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Reads the keys of one object, collecting every fault instead of stopping at the first.
 *
 * <p>Ask for each known key, then call {@link #build}: it reports the keys that were not asked for
 * and makes the record only if there was no fault.
 */
public final class Fields {
  private static final int LONGEST_TEXT = 200;
  private static final int MOST_ITEMS = 1000;

  private final Node.Obj object;
  private final Faults faults;
  private final int faultsBefore;
  private final Set<String> known = new LinkedHashSet<>();

  private Fields(Node.Obj object, Faults faults) {
    this.object = object;
    this.faults = faults;
    this.faultsBefore = faults.count();
  }

  /**
   * Opens an object; any other value is a fault.
   *
   * @param node the value that should be an object
   * @param what what the object should describe, such as "an amplifier"
   * @param faults where faults go
   */
  public static Optional<Fields> of(Node node, String what, Faults faults) {
    Optional<Node.Obj> object = node.object();
    if (object.isPresent()) {
      return Optional.of(new Fields(object.get(), faults));
    }
    faults.add(node.place(), "", Sentence.of("{} must be an object, not {}", what, node.kind()));
    return Optional.empty();
  }

  /** Returns where the object starts. */
  Node.Place place() {
    return object.place();
  }

  /** Returns where the value of a key starts, or the object where the key is missing. */
  Node.Place place(String key) {
    return object.get(key).map(Node::place).orElse(object.place());
  }

  /** Returns where faults go. */
  public Faults faults() {
    return faults;
  }

  /** Finds the value of a key and makes the key known. */
  public Optional<Node> node(String key) {
    known.add(key);
    return object.get(key);
  }

  /** Adds a fault for the whole object. */
  void fault(String sentence) {
    faults.add(object.place(), "", sentence);
  }

  /** Adds a fault at the value of a key. */
  void fault(String key, String sentence) {
    faults.add(place(key), key, sentence);
  }

  /** Adds a fault if a required key is missing. */
  public void require(String key) {
    if (node(key).isEmpty()) {
      faults.add(object.place(), key, Sentence.of("key {} is missing", Visible.quoted(key)));
    }
  }

  /** Reads a number from least to most; empty where the key is missing. */
  OptionalDouble number(String key, double least, double most) {
    Optional<Node> node = node(key);
    return node.isEmpty() ? OptionalDouble.empty() : number(key, node.get(), least, most);
  }

  private OptionalDouble number(String key, Node node, double least, double most) {
    OptionalDouble number = node.number();
    if (number.isEmpty()) {
      wrongKind(key, node, "a number");
      return number;
    }
    double value = number.getAsDouble();
    if (!(value >= least && value <= most)) {
      String sentence =
          Sentence.of(
              "{} must be between {} and {}, not {}",
              Visible.quoted(key),
              Numbers.text(least),
              Numbers.text(most),
              Numbers.text(value));
      faults.add(node.place(), key, sentence);
      return OptionalDouble.empty();
    }
    return number;
  }

  /** Reads a whole number from least to most; empty where the key is missing. */
  OptionalLong whole(String key, long least, long most) {
    OptionalDouble number = number(key, least, most);
    if (number.isEmpty()) {
      return OptionalLong.empty();
    }
    double value = number.getAsDouble();
    if (value != Math.rint(value)) {
      String quoted = Visible.quoted(key);
      fault(key, Sentence.of("{} must be a whole number, not {}", quoted, Numbers.text(value)));
      return OptionalLong.empty();
    }
    return OptionalLong.of((long) value);
  }

  /** Reads a list of numbers, each from least to most; empty where the key is missing. */
  List<Double> numbers(String key, double least, double most) {
    List<Double> out = new ArrayList<>();
    for (Node item : items(key)) {
      number(key, item, least, most).ifPresent(out::add);
    }
    return out;
  }

  /**
   * Reads a one-line text, not blank, of at most 200 characters; empty where the key is missing.
   */
  Optional<String> text(String key) {
    return text(key, LONGEST_TEXT, false);
  }

  /**
   * Reads a text that is not blank; empty where the key is missing.
   *
   * @param key the key
   * @param longest the most characters
   * @param lines whether line breaks and tabs are allowed
   */
  Optional<String> text(String key, int longest, boolean lines) {
    Optional<Node> node = node(key);
    return node.isEmpty() ? Optional.empty() : text(key, node.get(), longest, lines);
  }

  private Optional<String> text(String key, Node node, int longest, boolean lines) {
    Optional<String> string = node.string();
    if (string.isEmpty()) {
      wrongKind(key, node, "text");
      return string;
    }
    Optional<String> problem = textProblem(Visible.quoted(key), string.get(), longest, lines);
    if (problem.isPresent()) {
      faults.add(node.place(), key, problem.get());
      return Optional.empty();
    }
    return string;
  }

  private static Optional<String> textProblem(String key, String text, int longest, boolean lines) {
    if (text.isBlank()) {
      return Optional.of(Sentence.of("{} must not be empty", key));
    }
    if (text.length() > longest) {
      return Optional.of(Sentence.of("{} must not be longer than {} characters", key, longest));
    }
    boolean visible =
        text.codePoints().allMatch(c -> Visible.is(c) || lines && (c == '\n' || c == '\t'));
    return visible
        ? Optional.empty()
        : Optional.of(
            Sentence.of("{} must not hold control characters: {}", key, Visible.quoted(text)));
  }

  /** Reads a list of one-line texts; empty where the key is missing. */
  List<String> texts(String key) {
    List<String> out = new ArrayList<>();
    for (Node item : items(key)) {
      text(key, item, LONGEST_TEXT, false).ifPresent(out::add);
    }
    return out;
  }

  /** Reads true or false; empty where the key is missing or null, which means unknown. */
  Optional<Boolean> flag(String key) {
    Optional<Node> node = node(key);
    if (node.isEmpty() || node.get().isNull()) {
      return Optional.empty();
    }
    Optional<Boolean> truth = node.get().truth();
    if (truth.isEmpty()) {
      wrongKind(key, node.get(), "true or false");
    }
    return truth;
  }

  /** Reads a word from a given set; empty where the key is missing. */
  <T> Optional<T> word(String key, Map<String, T> words) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    T value = words.get(text.get());
    if (value == null) {
      fault(
          key,
          Sentence.of(
              "{} cannot be {}; nearest known word: {}",
              Visible.quoted(key),
              Visible.quoted(text.get()),
              Visible.quoted(Nearest.of(text.get(), words.keySet()))));
    }
    return Optional.ofNullable(value);
  }

  /** Opens the object of a key; empty where the key is missing. */
  Optional<Fields> object(String key) {
    return node(key).flatMap(node -> of(node, Visible.quoted(key), faults));
  }

  /** Reads a list of objects, leaving out faulty ones; empty where the key is missing. */
  <T> List<T> objects(String key, Function<Fields, Optional<T>> reader) {
    List<T> out = new ArrayList<>();
    for (Node item : items(key)) {
      String what = Sentence.of("each of {}", Visible.quoted(key));
      of(item, what, faults).flatMap(reader).ifPresent(out::add);
    }
    return out;
  }

  private List<Node> items(String key) {
    Optional<Node> node = node(key);
    if (node.isEmpty()) {
      return List.of();
    }
    Optional<List<Node>> list = node.get().list();
    if (list.isEmpty()) {
      wrongKind(key, node.get(), "a list");
      return List.of();
    }
    if (list.get().size() > MOST_ITEMS) {
      String quoted = Visible.quoted(key);
      fault(key, Sentence.of("{} must not have more than {} entries", quoted, MOST_ITEMS));
      return List.of();
    }
    return list.get();
  }

  private void wrongKind(String key, Node node, String wanted) {
    String quoted = Visible.quoted(key);
    faults.add(
        node.place(), key, Sentence.of("{} must be {}, not {}", quoted, wanted, node.kind()));
  }

  /**
   * Reports the keys that were not asked for, then makes the record if the object has no fault. An
   * exception from the record becomes a fault of the object.
   */
  <T> Optional<T> build(Supplier<T> maker) {
    object.members().forEach(this::reportUnknown);
    if (faults.count() > faultsBefore) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      faults.add(object.place(), "", e.getMessage());
      return Optional.empty();
    }
  }

  private void reportUnknown(String key, Node.Member member) {
    if (!known.contains(key)) {
      String nearest = Visible.quoted(Nearest.of(key, known));
      String sentence =
          Sentence.of("unknown key {}; nearest known key: {}", Visible.quoted(key), nearest);
      faults.add(member.keyPlace(), key, sentence);
    }
  }
}
