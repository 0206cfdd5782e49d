package loadwalk.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One JSON value that remembers its place in the text. */
public sealed interface Node {
  /** Returns where the value starts. */
  Place place();

  /** Returns what it is, in words: "an object", "a number". */
  String kind();

  /** Returns the object where it is one. */
  default Optional<Obj> object() {
    return Optional.empty();
  }

  /** Returns the items where it is a list. */
  default Optional<List<Node>> list() {
    return Optional.empty();
  }

  /** Returns the text where it is one. */
  default Optional<String> string() {
    return Optional.empty();
  }

  /** Returns the number where it is one. */
  default OptionalDouble number() {
    return OptionalDouble.empty();
  }

  /** Returns the truth value where it is one. */
  default Optional<Boolean> truth() {
    return Optional.empty();
  }

  /** Tells whether it is null. */
  default boolean isNull() {
    return false;
  }

  /**
   * A place in a text, both numbers from 1; columns count UTF-16 units.
   *
   * @param line the line
   * @param column the column
   */
  record Place(int line, int column) {}

  /**
   * A key of an object with its value.
   *
   * @param keyPlace where the key starts
   * @param value the value
   */
  record Member(Place keyPlace, Node value) {}

  /**
   * An object.
   *
   * @param place where it starts
   * @param members its keys and values in the order of the text
   */
  record Obj(Place place, Map<String, Member> members) implements Node {
    /** Copies the members, order kept. */
    public Obj {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    /** Finds the value of a key. */
    public Optional<Node> get(String key) {
      return Optional.ofNullable(members.get(key)).map(Member::value);
    }

    @Override
    public Optional<Obj> object() {
      return Optional.of(this);
    }

    @Override
    public String kind() {
      return "an object";
    }
  }

  /**
   * A list.
   *
   * @param place where it starts
   * @param items its values
   */
  record Arr(Place place, List<Node> items) implements Node {
    /** Copies the items. */
    public Arr {
      items = List.copyOf(items);
    }

    @Override
    public Optional<List<Node>> list() {
      return Optional.of(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * A text.
   *
   * @param place where it starts
   * @param text the text, without lone surrogates
   */
  record Str(Place place, String text) implements Node {
    @Override
    public Optional<String> string() {
      return Optional.of(text);
    }

    @Override
    public String kind() {
      return "text";
    }
  }

  /**
   * A number.
   *
   * @param place where it starts
   * @param value the value, finite, never negative zero
   */
  record Num(Place place, double value) implements Node {
    @Override
    public OptionalDouble number() {
      return OptionalDouble.of(value);
    }

    @Override
    public String kind() {
      return "a number";
    }
  }

  /**
   * A truth value.
   *
   * @param place where it starts
   * @param value true or false
   */
  record Bool(Place place, boolean value) implements Node {
    @Override
    public Optional<Boolean> truth() {
      return Optional.of(value);
    }

    @Override
    public String kind() {
      return value ? "true" : "false";
    }
  }

  /**
   * A null.
   *
   * @param place where it starts
   */
  record Null(Place place) implements Node {
    @Override
    public boolean isNull() {
      return true;
    }

    @Override
    public String kind() {
      return "null";
    }
  }
}
