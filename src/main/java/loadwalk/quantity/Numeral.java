package loadwalk.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The digits of an entry before unit and prefix.
 *
 * @param value the number, 0 or more
 * @param step one step of its last digit, above 0
 */
record Numeral(BigDecimal value, BigDecimal step) {
  private static final Pattern AMBIGUOUS = Pattern.compile("(?!0+,)\\d{1,3},\\d{3}");
  private static final Pattern GROUPED_BY_COMMA = Pattern.compile("[1-9]\\d{0,2}(?:,\\d{3})+");
  private static final Pattern GROUPED_BY_POINT = Pattern.compile("[1-9]\\d{0,2}(?:\\.\\d{3})+");

  /** Tells whether a lone comma may be a decimal comma or a thousands mark. */
  static boolean isAmbiguous(String mantissa) {
    return AMBIGUOUS.matcher(mantissa).matches();
  }

  /** Reads digits with at most one decimal mark and well-formed thousands marks. */
  static Optional<Numeral> ofMarked(String mantissa, int exponent) {
    char mark = decimalMark(mantissa);
    int at = mark == 0 ? -1 : mantissa.lastIndexOf(mark);
    String whole = at < 0 ? mantissa : mantissa.substring(0, at);
    String decimals = at < 0 ? "" : mantissa.substring(at + 1);
    boolean marked = whole.indexOf(',') >= 0 || whole.indexOf('.') >= 0;
    boolean grouped =
        (mark != ',' && GROUPED_BY_COMMA.matcher(whole).matches())
            || (mark != '.' && GROUPED_BY_POINT.matcher(whole).matches());
    String digits = whole.replace(",", "").replace(".", "");
    if (marked && !grouped || digits.isEmpty() && decimals.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(ofDigits(digits, decimals, exponent));
  }

  /** Makes a number from the digits before and after the decimal mark and a power of ten. */
  static Numeral ofDigits(String whole, String decimals, int exponent) {
    int scale = decimals.length() - exponent;
    return new Numeral(
        new BigDecimal(new BigInteger("0" + whole + decimals), scale),
        new BigDecimal(BigInteger.ONE, scale));
  }

  /** Finds the decimal mark: the last kind of mark if it occurs once, otherwise 0. */
  private static char decimalMark(String mantissa) {
    int last = Math.max(mantissa.lastIndexOf(','), mantissa.lastIndexOf('.'));
    if (last < 0) {
      return 0;
    }
    char mark = mantissa.charAt(last);
    return mantissa.indexOf(mark) == last ? mark : 0;
  }
}
