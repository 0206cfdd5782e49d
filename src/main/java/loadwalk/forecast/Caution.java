package loadwalk.forecast;

import java.util.Objects;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * One warning of a brief.
 *
 * @param code a fixed word for programs, such as {@code supply-amps}
 * @param gravity the verdict on the step from this caution alone
 * @param text one sentence with its number
 * @param severity demand over limit, 1 at the limit, infinite if unknown; sorts cautions worst
 *     first
 */
public record Caution(String code, Verdict gravity, String text, double severity)
    implements Shaped<Caution> {
  /** Checks that no field is null. */
  public Caution {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(gravity, "gravity");
    Objects.requireNonNull(text, "text");
    if (Double.isNaN(severity)) {
      throw new IllegalArgumentException("severity of " + code + " is NaN");
    }
  }

  static Caution blank() {
    return new Caution("", Verdict.CLEAR, "", Double.POSITIVE_INFINITY);
  }

  @Override
  public Caution shape(Shape in) {
    boolean told = Double.isFinite(severity);
    return new Caution(
        in.text("code", code),
        in.word("gravity", gravity, ForecastWords.VERDICTS),
        in.text("text", text),
        in.number("severity", told ? OptionalDouble.of(severity) : OptionalDouble.empty())
            .orElse(severity));
  }
}
