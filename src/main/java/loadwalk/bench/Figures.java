package loadwalk.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import loadwalk.text.Sentence;

/** Prints numbers for sentences. */
public final class Figures {
  private static final MathContext TWO = new MathContext(2);
  private static final MathContext THREE = new MathContext(3);

  private Figures() {}

  /**
   * Returns a number rounded down to what a dial shows: two digits, the second 0 or 5 from 5 on.
   */
  public static double down(double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      return value;
    }
    double digit = Math.pow(10, Math.floor(Math.log10(value)) - 1);
    double step = value / digit >= 50 ? 5 * digit : digit;
    return Math.floor(value / step * (1 + 1e-12)) * step;
  }

  /** Returns a number with up to two significant digits. */
  public static String two(double value) {
    return rounded(value, TWO);
  }

  /** Returns a number with up to three significant digits, no exponent below 10⁹. */
  public static String three(double value) {
    return rounded(value, THREE);
  }

  private static String rounded(double value, MathContext digits) {
    if (!Double.isFinite(value)) {
      return "unknown";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
    return Math.abs(value) >= 1e9 || Math.abs(value) < 1e-6
        ? rounded.toString()
        : rounded.toPlainString();
  }

  /** Returns a time in seconds in the unit people would say: "18 min", "60 s". */
  public static String duration(double seconds) {
    if (seconds >= 7200) {
      return Sentence.of("{} h", three(seconds / 3600));
    }
    return seconds >= 120
        ? Sentence.of("{} min", three(seconds / 60))
        : Sentence.of("{} s", three(seconds));
  }
}
