package loadwalk.meter;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One entry of a meter's error queue, {@code -113,"Undefined header"} (SCPI-1999, 21.8); code 0
 * means that the queue is empty.
 *
 * @param code the code
 * @param text the text between the quotes
 */
record ScpiError(int code, String text) {
  private static final Pattern FORM = Pattern.compile("([+-]?\\d{1,6})\\s*,\\s*\"(.*)\"");

  /** Reads the reply to {@code SYST:ERR?}; empty if it has another form. */
  static Optional<ScpiError> of(String reply) {
    Matcher matcher = FORM.matcher(reply.strip());
    return matcher.matches()
        ? Optional.of(
            new ScpiError(
                Integer.parseInt(matcher.group(1)), matcher.group(2).replace("\"\"", "\"")))
        : Optional.empty();
  }

  /** Tells whether this is an error rather than an empty queue. */
  boolean isError() {
    return code != 0;
  }
}
