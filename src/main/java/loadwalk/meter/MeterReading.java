package loadwalk.meter;

import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;

/** What is known of a meter's reading at one moment; only a {@link Value} may be entered. */
public sealed interface MeterReading {
  /** Returns it in a few words, as told beside the reading. */
  String words();

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
  }

  /** More than the range holds. */
  record Overload(String raw) implements MeterReading {
    @Override
    public String words() {
      return "overload";
    }
  }

  /** The meter says that it has no number. */
  record NotANumber(String raw) implements MeterReading {
    @Override
    public String words() {
      return "not a number";
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
      return "stale, " + ageMillis / 1000 + " s old";
    }
  }

  /** A reply to an earlier question; dropped. */
  record Late(String raw) implements MeterReading {
    @Override
    public String words() {
      return "late reply dropped";
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
  }

  /** Returns what a reply means for a question. */
  static MeterReading of(Question question, String raw) {
    String shown = ScpiReply.shown(raw);
    ScpiReply reply = ScpiReply.of(raw);
    if (reply instanceof ScpiReply.Number number) {
      double value = number.value() * question.scale() + 0.0;
      return Math.abs(value) <= EntryParser.LARGEST
          ? new Value(value, question.unit(), shown)
          : new Garbage(shown, "the reply is too large for a reading: " + shown);
    }
    if (reply instanceof ScpiReply.Overload) {
      return new Overload(shown);
    }
    return reply instanceof ScpiReply.NotANumber
        ? new NotANumber(shown)
        : new Garbage(shown, ((ScpiReply.Garbage) reply).sentence());
  }

  /** Returns one sentence that says why this cannot be entered; empty for a value. */
  default String refusal(String meter) {
    if (this instanceof Value) {
      return "";
    }
    if (this instanceof Held held) {
      return meter
          + " has shown "
          + held.value().raw()
          + " "
          + held.replies()
          + " times in a row: is its hold on? Release it, or type the reading.";
    }
    if (this instanceof Stale stale) {
      return meter + " last answered " + stale.ageMillis() / 1000 + " s ago; nothing was entered.";
    }
    if (this instanceof Garbage garbage) {
      return meter + ": " + garbage.sentence() + "; nothing was entered.";
    }
    if (this instanceof Silent silent) {
      return meter + ": " + silent.why() + "; nothing was entered.";
    }
    return this instanceof Overload
        ? meter + " shows overload: choose a higher range; nothing was entered."
        : meter + " has no number to give; nothing was entered.";
  }
}
