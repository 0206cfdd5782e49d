package loadwalk.meter;

import loadwalk.quantity.EntryParser;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * The meaning of one line of reply to a question that asks for a number.
 *
 * <p>Numbers come as NR1 {@code 12}, NR2 {@code 12.5} or NR3 {@code 1.25E+1} (IEEE 488.2, 8.7.2 to
 * 8.7.4). Not-a-number is 9.91E37 and infinity, which meters send on overload, ±9.9E37 (SCPI-1999
 * volume 1, 7.2.1.4 and 7.2.1.5); so nothing of 9E37 or more is ever a reading.
 */
sealed interface ScpiReply {
  /** A number of this size or more is a code, whatever its digits. */
  double CODES_FROM = 9e37;

  /** The longest part of a raw reply that is kept or shown, characters. */
  int LONGEST = 120;

  /**
   * Returns the reading that it gives for a question.
   *
   * @param shown the reply as received, made safe to show
   */
  MeterReading reading(Question question, String shown);

  /** Tells whether it is a valid answer to a question that asks for a number. */
  default boolean isAnswer() {
    return true;
  }

  /** A number. */
  record Number(double value) implements ScpiReply {
    @Override
    public MeterReading reading(Question question, String shown) {
      double reading = value * question.scale() + 0.0;
      return Math.abs(reading) <= EntryParser.LARGEST
          ? new MeterReading.Value(reading, question.unit(), shown)
          : new MeterReading.Garbage(
              shown, Sentence.of("the reply is too large for a reading: {}", shown));
    }
  }

  /** A signal over the meter's range. */
  record Overload() implements ScpiReply {
    @Override
    public MeterReading reading(Question question, String shown) {
      return new MeterReading.Overload(shown);
    }
  }

  /** The meter says that it has no number. */
  record NotANumber() implements ScpiReply {
    @Override
    public MeterReading reading(Question question, String shown) {
      return new MeterReading.NotANumber(shown);
    }
  }

  /** A reply that does not answer a question for a number. */
  record Garbage(String sentence) implements ScpiReply {
    @Override
    public MeterReading reading(Question question, String shown) {
      return new MeterReading.Garbage(shown, sentence);
    }

    @Override
    public boolean isAnswer() {
      return false;
    }
  }

  /** Reads a reply; leading and trailing blanks and line ends are ignored. */
  static ScpiReply of(String reply) {
    return ReplyForms.read(reply.strip());
  }

  /**
   * Returns a raw reply made safe to show and keep: visible characters only, up to {@link
   * #LONGEST}.
   */
  static String shown(String raw) {
    return Visible.line(raw.strip(), LONGEST);
  }
}
