package loadwalk.meter;

import loadwalk.quantity.EntryParser;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * What one line of reply to a question for a number means.
 *
 * <p>Numbers come as NR1 {@code 12}, NR2 {@code 12.5} or NR3 {@code 1.25E+1} (IEEE 488.2, 8.7.2 to
 * 8.7.4). Not-a-number is 9.91E37 and infinity, which meters send on overload, ±9.9E37 (SCPI-1999
 * volume 1, 7.2.1.4 and 7.2.1.5); so nothing from 9E37 on is ever a reading.
 */
sealed interface ScpiReply {
  /** From here on a number is a code, whatever its digits. */
  double CODES_FROM = 9e37;

  /** The longest part of a raw reply that is kept or shown, characters. */
  int LONGEST = 120;

  /**
   * Returns what it means for a question.
   *
   * @param shown the reply as it came, fit to be shown
   */
  MeterReading reading(Question question, String shown);

  /** Tells whether it is what a question for a number may be answered with. */
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

  /** More than the range holds. */
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

  /** Nothing that a number was asked for. */
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

  /** Reads a reply; blanks and line ends around it do not matter. */
  static ScpiReply of(String reply) {
    return ReplyForms.read(reply.strip());
  }

  /** Returns a raw reply fit to be shown and kept: visible characters, not too many. */
  static String shown(String raw) {
    return Visible.line(raw.strip(), LONGEST);
  }
}
