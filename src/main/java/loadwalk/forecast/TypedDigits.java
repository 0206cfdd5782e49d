package loadwalk.forecast;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Works on the digits of a number as somebody would have typed it. */
final class TypedDigits {
  private static final int MOST_DIGITS = 7;

  private TypedDigits() {}

  /** Returns how many decimals a number needs, as typed without trailing zeros. */
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
   * @param decimals with how many decimals numbers of its kind are typed
   */
  static List<Double> swapped(double value, int decimals) {
    List<Double> found = new ArrayList<>();
    if (!Double.isFinite(value) || !(value > 0)) {
      return found;
    }
    int scale = Math.max(decimals, decimals(value));
    String digits = BigDecimal.valueOf(value).setScale(scale).unscaledValue().toString();
    if (digits.length() > MOST_DIGITS) {
      return found;
    }
    if (digits.length() <= scale) {
      digits = "0".repeat(scale + 1 - digits.length()) + digits;
    }
    for (int i = 0; i + 1 < digits.length(); i++) {
      char first = digits.charAt(i);
      char second = digits.charAt(i + 1);
      if (first != second) {
        String other = digits.substring(0, i) + second + first + digits.substring(i + 2);
        found.add(new BigDecimal(other).scaleByPowerOfTen(-scale).doubleValue());
      }
    }
    return found;
  }
}
