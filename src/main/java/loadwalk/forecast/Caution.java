package loadwalk.forecast;

import java.util.Objects;

/**
 * One thing a brief warns of.
 *
 * @param code a fixed word for programs, such as {@code supply-amps}
 * @param gravity what the caution alone makes of the step
 * @param text one sentence with its number
 * @param severity how near the limit, used to sort worst first: demand over what is borne, 1 at the
 *     limit; infinite where it cannot be told
 */
public record Caution(String code, Verdict gravity, String text, double severity) {
  /** Checks that nothing is missing. */
  public Caution {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(gravity, "gravity");
    Objects.requireNonNull(text, "text");
    if (Double.isNaN(severity)) {
      throw new IllegalArgumentException("severity of " + code + " is NaN");
    }
  }
}
