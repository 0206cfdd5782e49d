package loadwalk.meter;

import java.util.Optional;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** The reading of a meter at one moment; only a {@link Value} may be entered. */
public sealed interface MeterReading {
  /** Returns a short description to show beside the reading. */
  String words();

  /** Returns why this cannot be entered, in one sentence; empty for a value. */
  String refusal(String meter);

  /** Returns the number, if it may be entered. */
  default Optional<Value> fresh() {
    return Optional.empty();
  }

  /** Returns the number to use for warnings, which includes one that may be on hold. */
  default Optional<Value> believed() {
    return fresh();
  }

  /** Tells whether the meter is over its range. */
  default boolean isOverload() {
    return false;
  }

  /** Tells whether this answers an earlier question. */
  default boolean isLate() {
    return false;
  }

  /** Tells whether the reply is understood, whether or not it is a number. */
  default boolean isUnderstood() {
    return true;
  }

  /** Tells whether the meter has answered in words that are understood. */
  default boolean isAnswer() {
    return isUnderstood();
  }

  /**
   * Returns the short description, with a number printed to the resolution of its meter.
   *
   * @param resolution the value of one digit, in the reading's unit; 0 if unknown
   */
  default String words(double resolution) {
    return words();
  }

  /**
   * A number.
   *
   * @param value the reading in its unit, finite
   * @param unit the unit
   * @param raw the reply as received, made safe to show
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

  /** A signal over the meter's range. */
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
   * A number unchanged in every digit for too long; the meter may be on hold.
   *
   * @param value the number
   * @param replies how many consecutive replies were the same
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
   * A reply that is not a reading.
   *
   * @param raw the reply as received, made safe to show
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
   * @param why the reason, in words
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

    @Override
    public boolean isAnswer() {
      return false;
    }
  }

  private static String noNumber(String meter) {
    return Sentence.of("{} shows no number. Nothing was entered.", meter);
  }

  /** Returns the reading that a reply gives for a question. */
  static MeterReading of(Question question, String raw) {
    String shown = ScpiReply.shown(raw);
    return ScpiReply.of(raw).reading(question, shown);
  }
}
