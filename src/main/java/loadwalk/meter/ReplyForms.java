package loadwalk.meter;

import java.util.regex.Pattern;
import loadwalk.text.Sentence;

/** Recognises the forms of replies. */
final class ReplyForms {
  private static final String NRF =
      "[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?";
  private static final Pattern NUMBER = Pattern.compile(NRF);
  private static final Pattern NUMBERS = Pattern.compile(NRF + "(\\s*,\\s*" + NRF + ")+");
  private static final Pattern INFINITY =
      Pattern.compile("[+-]?INF(INITY)?|NINF(INITY)?", Pattern.CASE_INSENSITIVE);
  private static final double NOT_A_NUMBER = 9.91e37;

  /**
   * Relative tolerance that separates 9.91E37 from 9.9E37, however many digits the meter cuts off.
   */
  private static final double CODE_TOLERANCE = 2e-4;

  private ReplyForms() {}

  static ScpiReply read(String text) {
    if (NUMBER.matcher(text).matches()) {
      return ofNumber(Double.parseDouble(text));
    }
    if (INFINITY.matcher(text).matches()) {
      return new ScpiReply.Overload();
    }
    return text.equalsIgnoreCase("NAN")
        ? new ScpiReply.NotANumber()
        : new ScpiReply.Garbage(problem(text));
  }

  private static ScpiReply ofNumber(double value) {
    double size = Math.abs(value);
    if (size < ScpiReply.CODES_FROM) {
      return new ScpiReply.Number(value);
    }
    return Math.abs(size / NOT_A_NUMBER - 1) < CODE_TOLERANCE
        ? new ScpiReply.NotANumber()
        : new ScpiReply.Overload();
  }

  private static String problem(String text) {
    if (text.isEmpty()) {
      return "the reply is empty";
    }
    if (ScpiError.of(text).isPresent()) {
      return Sentence.of("the meter answers with the error {}", ScpiReply.shown(text));
    }
    return Sentence.of(
        NUMBERS.matcher(text).matches()
            ? "the reply holds several numbers, not one: {}"
            : "the reply is not a number: {}",
        ScpiReply.shown(text));
  }
}
