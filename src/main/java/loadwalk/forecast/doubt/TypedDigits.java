package loadwalk.forecast.doubt;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Works with the digits of a number as typed. */
final class TypedDigits {
  /** Most digits in which swaps are looked for; nobody types more. Chosen by hand. */
  private static final int MOST_DIGITS = 7;

  private TypedDigits() {}

  /** Returns how many decimals a number needs when typed without trailing zeros. */
  static int decimals(double value) {
    if (!Double.isFinite(value)) {
      return 0;
    }
    return Math.max(0, BigDecimal.valueOf(value).stripTrailingZeros().scale());
  }

  /** Returns how many significant digits a number needs, trailing zeros not counted. */
  static int significant(double value) {
    if (!Double.isFinite(value) || value == 0) {
      return 1;
    }
    return BigDecimal.valueOf(value).stripTrailingZeros().precision();
  }

  /**
   * Returns the numbers that become this one when two neighbouring digits are swapped.
   *
   * @param value the number typed
   * @param decimals the number of decimals with which numbers of its kind are typed
   */
  static List<Double> swapped(double value, int decimals) {
    List<Double> found = new ArrayList<>();
    int scale = Math.max(decimals, decimals(value));
    String digits = digits(value, scale);
    for (int i = 0; i + 1 < digits.length(); i++) {
      if (digits.charAt(i) != digits.charAt(i + 1)) {
        found.add(swapped(digits, i, scale));
      }
    }
    return found;
  }

  /**
   * Returns the number that becomes this one when its first digit and the zero after it are
   * swapped: 30.49 typed as 03.49. Empty where this one begins with a zero anyway.
   *
   * @param value the number typed
   * @param decimals the number of decimals with which numbers of its kind are typed
   */
  static OptionalDouble behindZero(double value, int decimals) {
    int scale = Math.max(decimals, decimals(value));
    String digits = digits(value, scale);
    return digits.isEmpty() || digits.charAt(0) == '0'
        ? OptionalDouble.empty()
        : OptionalDouble.of(swapped("0" + digits, 0, scale));
  }

  /** Returns the digits of a number with the given decimals; empty for a number nobody types. */
  private static String digits(double value, int scale) {
    if (!Double.isFinite(value) || !(value > 0)) {
      return "";
    }
    String digits = BigDecimal.valueOf(value).setScale(scale).unscaledValue().toString();
    return digits.length() > MOST_DIGITS
        ? ""
        : "0".repeat(Math.max(0, scale + 1 - digits.length())) + digits;
  }

  private static double swapped(String digits, int first, int scale) {
    String other =
        digits.substring(0, first)
            + digits.charAt(first + 1)
            + digits.charAt(first)
            + digits.substring(first + 2);
    return new BigDecimal(other).scaleByPowerOfTen(-scale).doubleValue();
  }
}
