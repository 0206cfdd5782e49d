package loadwalk.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import loadwalk.text.Sentence;

/**
 * Reads or writes a record field by field, in the order of the file.
 *
 * <pre>
 * writing:  value ──> key and value in the file; the value comes back unchanged
 * reading:  what the file holds ──> comes back; the given value where the key is missing
 * </pre>
 *
 * <p>Fields are required unless their method says otherwise. Whatever breaks a limit is a fault;
 * the given value then comes back instead, so that the rest is read too.
 */
public interface Shape {
  /** The most characters of a text unless stated otherwise. */
  int LONGEST_TEXT = 200;

  /**
   * Goes through a text that is not blank.
   *
   * @param longest the most characters
   * @param lines whether line breaks and tabs are allowed
   */
  String text(String key, String value, int longest, boolean lines);

  /** Goes through a number from least to most. */
  double number(String key, double value, double least, double most);

  /** Goes through a whole number from least to most. */
  long whole(String key, long value, long least, long most);

  /** Goes through true or false. */
  boolean flag(String key, boolean value);

  /** Goes through a word from a set. */
  <E> E word(String key, E value, Words<E> words);

  /** Goes through a list of numbers, each from least to most. */
  List<Double> numbers(String key, List<Double> values, double least, double most);

  /** Goes through a list of one-line texts. */
  List<String> texts(String key, List<String> values);

  /** Goes through a moment, milliseconds since 1970. */
  long moment(String key, long wallMillis);

  /** Goes through an object within this one. */
  <T extends Shaped<T>> T part(String key, T value);

  /**
   * Goes through a list of objects of one shape.
   *
   * @param blank holds the defaults of each object
   */
  <T extends Shaped<T>> List<T> list(String key, List<T> values, T blank);

  /**
   * Goes through the rest of this object, whose fields depend on a word in it.
   *
   * @param tag the key of the word
   * @param value the value to write; it comes back where the file's word is unknown
   * @param kinds a blank of each kind by its word
   */
  <T extends Shaped<T>> T kind(String tag, T value, Words<T> kinds);

  /** Goes through an object that could stand in a file of its own. */
  <T extends Shaped<T>> T embedded(String key, T value, FileShape<T> file);

  /**
   * Goes through the keys of an object, each a word from a set.
   *
   * @param given the keys to write
   * @return the keys written or found
   */
  <E> Set<E> keys(Words<E> words, Set<E> given);

  /** Tells whether the file holds a key; when writing, returns {@code given}. */
  boolean has(String key, boolean given);

  /** Tells whether the file holds a text under a key; when writing, returns {@code given}. */
  boolean isText(String key, boolean given);

  /** Reports a fault of the whole object that was read. */
  void refuse(String sentence);

  /** Reports a fault of the value that was read under a key. */
  void refuse(String key, String sentence);

  /** Goes through a one-line text that is not blank. */
  default String text(String key, String value) {
    return text(key, value, LONGEST_TEXT, false);
  }

  /** Goes through a one-line text that may be missing. */
  default Optional<String> text(String key, Optional<String> value) {
    return has(key, value.isPresent()) ? Optional.of(text(key, value.orElse(""))) : value;
  }

  /** Goes through a one-line text with a default. */
  default String textOr(String key, String value) {
    return has(key, true) ? text(key, value) : value;
  }

  /** Goes through any number. */
  default double number(String key, double value) {
    return number(key, value, -Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** Goes through any number that may be missing. */
  default OptionalDouble number(String key, OptionalDouble value) {
    return number(key, value, -Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** Goes through a number from least to most that may be missing. */
  default OptionalDouble number(String key, OptionalDouble value, double least, double most) {
    return has(key, value.isPresent())
        ? OptionalDouble.of(number(key, value.orElse(least), least, most))
        : value;
  }

  /** Goes through a number from least to most with a default. */
  default double numberOr(String key, double value, double least, double most) {
    return has(key, true) ? number(key, value, least, most) : value;
  }

  /** Goes through a whole number that an int holds. */
  default int whole(String key, int value) {
    return whole(key, value, Integer.MIN_VALUE, Integer.MAX_VALUE);
  }

  /** Goes through a whole number from least to most. */
  default int whole(String key, int value, int least, int most) {
    long read = whole(key, (long) value, least, most);
    return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, read));
  }

  /** Goes through a whole number from least to most that may be missing. */
  default OptionalInt whole(String key, OptionalInt value, int least, int most) {
    return has(key, value.isPresent())
        ? OptionalInt.of(whole(key, value.orElse(least), least, most))
        : value;
  }

  /** Goes through a whole number from least to most that may be missing. */
  default OptionalLong whole(String key, OptionalLong value, long least, long most) {
    return has(key, value.isPresent())
        ? OptionalLong.of(whole(key, value.orElse(least), least, most))
        : value;
  }

  /** Goes through a whole number from least to most with a default. */
  default int wholeOr(String key, int value, int least, int most) {
    return has(key, true) ? whole(key, value, least, most) : value;
  }

  /** Goes through true, false, or null for unknown; it may be missing. */
  default Optional<Boolean> flag(String key, Optional<Boolean> value) {
    return has(key, value.isPresent()) ? Optional.of(flag(key, value.orElse(false))) : value;
  }

  /** Goes through a flag that is written only when true. */
  default boolean flagOr(String key, boolean value) {
    return has(key, value) ? flag(key, value) : value;
  }

  /** Goes through a list of numbers that is written only if not empty. */
  default List<Double> numbersOr(String key, List<Double> values, double least, double most) {
    return has(key, !values.isEmpty()) ? numbers(key, values, least, most) : values;
  }

  /** Goes through an object within this one that may be missing. */
  default <T extends Shaped<T>> Optional<T> part(String key, Optional<T> value, T blank) {
    return has(key, value.isPresent()) ? Optional.of(part(key, value.orElse(blank))) : value;
  }

  /** Goes through a list of objects that is written only if not empty. */
  default <T extends Shaped<T>> List<T> listOr(String key, List<T> values, T blank) {
    return has(key, !values.isEmpty()) ? list(key, values, blank) : values;
  }

  /**
   * Goes through the fields of one of several kinds, told apart by which key is there.
   *
   * @param what what needs the key, such as "a lead"
   * @param value the value to write; it comes back where the file does not show which kind it is
   * @param own the key of the value's kind
   * @param blanks a blank of each kind by its key
   */
  default <T extends Shaped<T>> T oneOf(String what, T value, String own, Map<String, T> blanks) {
    String found = "";
    int count = 0;
    for (String key : blanks.keySet()) {
      if (has(key, key.equals(own))) {
        found = key;
        count++;
      }
    }
    if (count == 1) {
      return found.equals(own) ? value.shape(this) : blanks.get(found).shape(this);
    }
    String keys = String.join("» and «", blanks.keySet());
    refuse(Sentence.of("{} needs exactly one of «{}»", what, keys));
    return value;
  }
}
