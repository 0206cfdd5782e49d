package loadwalk.meter;

import java.util.Optional;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** What is known of a meter's reading at one moment; only a {@link Value} may be entered. */
public sealed interface MeterReading {
  /** Returns it in a few words, as told beside the reading. */
  String words();

  /** Returns one sentence that says why this cannot be entered; empty for a value. */
  String refusal(String meter);

  /** Returns the number where it may be entered. */
  default Optional<Value> fresh() {
    return Optional.empty();
  }

  /** Returns the number that a warning rests on: one that may be held is still believed. */
  default Optional<Value> believed() {
    return fresh();
  }

  /** Tells whether the meter shows more than its range holds. */
  default boolean isOverload() {
    return false;
  }

  /** Tells whether it answers an earlier question. */
  default boolean isLate() {
    return false;
  }

  /** Tells whether the reply can be read, a number or not. */
  default boolean isUnderstood() {
    return true;
  }

  /**
   * Returns the same, a number printed as finely as its meter shows it.
   *
   * @param resolution the value of one digit, in the reading's unit; 0 where it is not known
   */
  default String words(double resolution) {
    return words();
  }

  /**
   * A number.
   *
   * @param value the reading in its unit, finite
   * @param unit the unit
   * @param raw the reply as it came, fit to be shown
   */
  record Value(double value, Unit unit, String raw) implements MeterReading {
    private static final int DIGITS = 5;

    /** Checks that it is a number. */
    public Value {
      if (!(Math.abs(value) <= EntryParser.LARGEST)) {
        throw new IllegalArgumentException("a reading must be a number of the bench, got " + value);
      }
    }

    @Override
    public String words() {
      return Printer.UTF8.value(value, unit, DIGITS);
    }

    @Override
    public String words(double resolution) {
      return resolution > 0 ? Printer.UTF8.reading(value, unit, resolution) : words();
    }

    @Override
    public String refusal(String meter) {
      return "";
    }

    @Override
    public Optional<Value> fresh() {
      return Optional.of(this);
    }
  }

  /** More than the range holds. */
  record Overload(String raw) implements MeterReading {
    @Override
    public String words() {
      return "overload";
    }

    @Override
    public String refusal(String meter) {
      return Sentence.of(
          "{} shows overload: switch to a higher range. Nothing was entered.", meter);
    }

    @Override
    public boolean isOverload() {
      return true;
    }
  }

  /** The meter says that it has no number. */
  record NotANumber(String raw) implements MeterReading {
    @Override
    public String words() {
      return "not a number";
    }

    @Override
    public String refusal(String meter) {
      return noNumber(meter);
    }
  }

  /**
   * A number that is the same to its last digit for too long: the meter's hold may be on.
   *
   * @param value the number
   * @param replies how many replies in a row were the same
   */
  record Held(Value value, int replies) implements MeterReading {
    @Override
    public String words() {
      return "held? " + value.words();
    }

    @Override
    public String words(double resolution) {
      return "held? " + value.words(resolution);
    }

    @Override
    public String refusal(String meter) {
      return Sentence.of(
          "{} has shown {} {} times in a row: is its hold on? Release it, or type the reading.",
          meter,
          value.raw(),
          replies);
    }

    @Override
    public Optional<Value> believed() {
      return Optional.of(value);
    }
  }

  /**
   * A number that is too old.
   *
   * @param value the number
   * @param ageMillis its age, ms
   */
  record Stale(Value value, long ageMillis) implements MeterReading {
    @Override
    public String words() {
      return Sentence.of("stale, {} s old", ageMillis / 1000);
    }

    @Override
    public String refusal(String meter) {
      return Sentence.of(
          "{} last answered {} s ago. Nothing was entered.", meter, ageMillis / 1000);
    }
  }

  /** A reply to an earlier question; dropped. */
  record Late(String raw) implements MeterReading {
    @Override
    public String words() {
      return "late reply dropped";
    }

    @Override
    public String refusal(String meter) {
      return noNumber(meter);
    }

    @Override
    public boolean isLate() {
      return true;
    }
  }

  /**
   * A reply that is no reading.
   *
   * @param raw the reply as it came, fit to be shown
   * @param sentence what is wrong with it
   */
  record Garbage(String raw, String sentence) implements MeterReading {
    @Override
    public String words() {
      return "unreadable reply";
    }

    @Override
    public String refusal(String meter) {
      return Sentence.of("{}: {}. Nothing was entered.", meter, sentence);
    }

    @Override
    public boolean isUnderstood() {
      return false;
    }
  }

  /**
   * No reply.
   *
   * @param why why, in words
   */
  record Silent(String why) implements MeterReading {
    @Override
    public String words() {
      return "no answer";
    }

    @Override
    public String refusal(String meter) {
      return Sentence.of("{}: {}. Nothing was entered.", meter, why);
    }
  }

  private static String noNumber(String meter) {
    return Sentence.of("{} shows no number. Nothing was entered.", meter);
  }

  /** Returns what a reply means for a question. */
  static MeterReading of(Question question, String raw) {
    String shown = ScpiReply.shown(raw);
    return ScpiReply.of(raw).reading(question, shown);
  }
}
