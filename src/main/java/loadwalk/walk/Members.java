package loadwalk.walk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.json.Node;

/**
 * Takes the members of an object of a journal record; what is missing makes the record unreadable.
 *
 * @param object the object
 */
record Members(Node.Obj object) {

  static Members of(Node node) {
    if (node instanceof Node.Obj object) {
      return new Members(object);
    }
    throw new UnreadableFact("an object is expected, not " + node.kind());
  }

  Node node(String key) {
    return object.get(key).orElseThrow(() -> new UnreadableFact("«" + key + "» is missing"));
  }

  Optional<Node> optional(String key) {
    return object.get(key);
  }

  String text(String key) {
    if (node(key) instanceof Node.Str text) {
      return text.text();
    }
    throw new UnreadableFact("«" + key + "» must be a text");
  }

  Optional<String> optionalText(String key) {
    return object.get(key).isPresent() ? Optional.of(text(key)) : Optional.empty();
  }

  double number(String key) {
    return number(node(key), key);
  }

  boolean truth(String key) {
    if (node(key) instanceof Node.Bool bool) {
      return bool.value();
    }
    throw new UnreadableFact("«" + key + "» must be true or false");
  }

  OptionalDouble optionalNumber(String key) {
    return object.get(key).isPresent() ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
  }

  List<Node> items(String key) {
    if (node(key) instanceof Node.Arr list) {
      return list.items();
    }
    throw new UnreadableFact("«" + key + "» must be a list");
  }

  Members object(String key) {
    return of(node(key));
  }

  ReadingId reading(String key) {
    return readingOf(text(key));
  }

  static ReadingId readingOf(String text) {
    return ReadingId.ofKey(text)
        .orElseThrow(() -> new UnreadableFact("«" + text + "» is no reading"));
  }

  static double number(Node node, String what) {
    if (node instanceof Node.Num number) {
      return number.value();
    }
    throw new UnreadableFact("«" + what + "» must be a number");
  }
}
