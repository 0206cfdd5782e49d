package loadwalk.forecast;

import java.util.Objects;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * One warning of a brief.
 *
 * @param code a fixed word for programs, such as {@code supply-amps}
 * @param about the part it is about where the code names several, such as a lead; else empty
 * @param gravity the verdict on the step from this caution alone
 * @param text one sentence with its number
 * @param severity demand over limit, 1 at the limit, infinite if unknown; sorts cautions worst
 *     first
 * @param number the number that it tells; empty if it is told at every step
 * @param gives whether something may give at this step; its verdict then stands, told before or not
 */
public record Caution(
    String code,
    String about,
    Verdict gravity,
    String text,
    double severity,
    OptionalDouble number,
    boolean gives)
    implements Shaped<Caution> {
  /** Checks that no field is null. */
  public Caution {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(gravity, "gravity");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(number, "number");
    if (Double.isNaN(severity)) {
      throw new IllegalArgumentException("severity of " + code + " is NaN");
    }
  }

  /** Creates a caution that is told at every step it applies to. */
  public Caution(String code, Verdict gravity, String text, double severity) {
    this(code, "", gravity, text, severity, OptionalDouble.empty(), true);
  }

  /**
   * Returns a caution that something may give.
   *
   * @param number what the part is asked for
   * @param severity that over what it bears
   */
  public static Caution giving(
      String code, String about, Verdict gravity, String text, double number, double severity) {
    return new Caution(code, about, gravity, text, severity, OptionalDouble.of(number), true);
  }

  /**
   * Returns a caution that is told once, and again when its number has grown.
   *
   * @param number the number that it tells, 1 where it has none
   */
  public static Caution once(
      String code, String about, Verdict gravity, String text, double number) {
    return new Caution(code, about, gravity, text, 1, OptionalDouble.of(number), false);
  }

  static Caution blank() {
    return new Caution("", Verdict.CLEAR, "", Double.POSITIVE_INFINITY);
  }

  @Override
  public Caution shape(Shape in) {
    boolean told = Double.isFinite(severity);
    String itsCode = in.text("code", code);
    String itsPart = in.has("about", !about.isEmpty()) ? in.text("about", about) : about;
    return new Caution(
        itsCode,
        itsPart,
        in.word("gravity", gravity, ForecastWords.VERDICTS),
        in.text("text", text),
        in.number("severity", told ? OptionalDouble.of(severity) : OptionalDouble.empty())
            .orElse(severity),
        in.number("number", number),
        !in.flagOr("notice", !gives));
  }
}
