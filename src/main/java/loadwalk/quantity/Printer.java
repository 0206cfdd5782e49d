package loadwalk.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import loadwalk.text.Sentence;

/**
 * Prints numbers with their unit, in engineering prefixes.
 *
 * <p>There is no prefix from 0.1 to below 1000 (watts: below 10 000), so that half an ohm is 0.50 Ω
 * and not 500 mΩ. A number that is not finite is printed as "unknown".
 *
 * @param ascii whether only ASCII may be used: "+-", "ohm", "degC"
 */
public record Printer(boolean ascii) {
  /** Prints with UTF-8 signs. */
  public static final Printer UTF8 = new Printer(false);

  /** Prints in ASCII only. */
  public static final Printer ASCII = new Printer(true);

  private static final String UNKNOWN = "unknown";
  private static final int EXACT_DIGITS = 9;
  private static final int FINEST_RANGE_DIGITS = 6;
  private static final int FINEST_PLACE = 12;
  private static final double SMALLEST_RANGE = 1e-12;
  private static final double EDGE = 1e-9;

  /**
   * Prints value ± U (k = 2, or more where it comes from few readings): two significant digits of
   * U, the value rounded to the same place (JCGM 100:2008, 7.2.6). A value without uncertainty is
   * printed alone.
   */
  public String quantity(Quantity quantity) {
    double expanded = quantity.expanded();
    if (!Double.isFinite(expanded)) {
      return UNKNOWN;
    }
    if (expanded == 0) {
      return exact(quantity.value(), quantity.unit());
    }
    BigDecimal u = rounded(expanded, 2);
    BigDecimal value = decimal(quantity.value()).setScale(u.scale(), RoundingMode.HALF_EVEN);
    int power = power(value.abs().max(u), quantity.unit());
    return scaled(value, power)
        + (ascii ? " +- " : " ± ")
        + scaled(u, power)
        + unit(power, quantity.unit());
  }

  /**
   * Prints a value to a number of significant digits, trailing zeros kept: "13.40 V".
   *
   * @param digits how many significant digits, 1 or more
   */
  public String value(double value, Unit unit, int digits) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    BigDecimal number = rounded(value, digits);
    int power = power(number.abs(), unit);
    return scaled(number, power) + unit(power, unit);
  }

  /** Prints a number that is exact, such as a nominal load, without trailing zeros: "4 Ω". */
  public String exact(double value, Unit unit) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    BigDecimal number = decimal(value).round(new MathContext(EXACT_DIGITS));
    int power = power(number.abs(), unit);
    BigDecimal shown = number.scaleByPowerOfTen(-power).stripTrailingZeros();
    return shown.toPlainString() + unit(power, unit);
  }

  /** Prints a reading to the resolution at which it was typed: 13.40 V typed is 13.40 V shown. */
  public String reading(double value, Unit unit, double resolution) {
    if (!Double.isFinite(value) || !(resolution > 0) || Double.isInfinite(resolution)) {
      return UNKNOWN;
    }
    int place = (int) Math.floor(Math.log10(resolution) + EDGE);
    int scale = Math.min(-place, FINEST_PLACE);
    BigDecimal number = decimal(value).setScale(scale, RoundingMode.HALF_EVEN);
    int power = power(number.abs(), unit);
    return scaled(number, power) + unit(power, unit);
  }

  /**
   * Prints a range as "12.6 to 13.9 V", to a tenth of the leading digit of its width and rounded
   * outwards, so that the printed range contains the whole range.
   */
  public String range(double low, double high, Unit unit) {
    if (!Double.isFinite(low) || !Double.isFinite(high) || !(low <= high)) {
      return UNKNOWN;
    }
    double size = Math.max(Math.abs(low), Math.abs(high));
    if (size < SMALLEST_RANGE) {
      return Sentence.of("0 to 0{}", unit(0, unit));
    }
    double width = Math.max(high - low, size * Math.pow(10, 2 - FINEST_RANGE_DIGITS));
    int scale = 1 - (int) Math.floor(Math.log10(width));
    BigDecimal step = BigDecimal.ONE.scaleByPowerOfTen(-scale);
    BigDecimal slack = step.multiply(BigDecimal.valueOf(EDGE));
    BigDecimal from = decimal(low).add(slack).setScale(scale, RoundingMode.FLOOR);
    BigDecimal to = decimal(high).subtract(slack).setScale(scale, RoundingMode.CEILING);
    int power = power(from.abs().max(to.abs()), unit);
    return Sentence.of("{} to {}{}", scaled(from, power), scaled(to, power), unit(power, unit));
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value + 0.0);
  }

  private static BigDecimal rounded(double value, int digits) {
    BigDecimal number = decimal(value);
    if (number.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal round = number.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    return round.setScale(round.scale() + digits - round.precision());
  }

  private static int power(BigDecimal size, Unit unit) {
    double magnitude = size.doubleValue();
    boolean prefixed =
        switch (unit) {
          case VOLT, AMPERE, WATT, OHM, HERTZ, SECOND, METRE -> true;
          case CELSIUS, PERCENT, DECIBEL, ONE -> false;
        };
    if (!prefixed || magnitude == 0) {
      return 0;
    }
    if (magnitude < 0.1) {
      return magnitude < 1e-4 ? -6 : -3;
    }
    if (magnitude < (unit == Unit.WATT ? 10_000 : 1000)) {
      return 0;
    }
    boolean mega = magnitude >= 1e6 && (unit == Unit.OHM || unit == Unit.HERTZ);
    return mega ? 6 : 3;
  }

  private static String scaled(BigDecimal number, int power) {
    return number.scaleByPowerOfTen(-power).toPlainString();
  }

  private String unit(int power, Unit unit) {
    String prefix =
        switch (power) {
          case -6 -> ascii ? "u" : "µ";
          case -3 -> "m";
          case 3 -> "k";
          case 6 -> "M";
          default -> "";
        };
    String symbol = prefix + (ascii ? unit.asciiSymbol() : unit.symbol());
    return symbol.isEmpty() ? "" : " " + symbol;
  }
}
