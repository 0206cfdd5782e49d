package loadwalk.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.text.Sentence;

/**
 * Reads a reading that an operator types.
 *
 * <p>It accepts a decimal point or comma ({@code 13.4}, {@code 13,4}, {@code .5}), an exponent
 * ({@code 1.2e3}), unambiguous thousands marks ({@code 1,234.5}, {@code 1.234,5}), a fraction
 * ({@code 1/2}, {@code 1 1/2}, {@code ½}), the letter-for-point code of IEC 60062 ({@code 1k2},
 * {@code 4R7}), a prefix ({@code 950m}), a unit in any case ({@code 13.4v}, {@code 16 amps}) and
 * temperatures in °F. A lone comma before exactly three digits is refused, since {@code 1,234}
 * reads as both 1.234 and 1234; mega is accepted for ohms and hertz only, since {@code 950MV} is
 * never meant.
 */
public final class EntryParser {
  /** The longest entry accepted, in characters. */
  public static final int LONGEST = 64;

  /** The largest number accepted, in SI units. */
  public static final double LARGEST = 1e12;

  private static final double FRACTION_RESOLUTION = 1e-3;
  private static final int LARGEST_EXPONENT = 30;
  private static final Set<String> OVERLOAD = Set.of("ol", "0l", "o.l", "0.l", "o.l.", "overload");
  private static final Set<String> NO_NUMBER =
      Set.of("nan", "inf", "infinity", "infinite", "∞", "-inf", "-infinity", "-∞", "+inf");

  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,9}) +)?(\\d{1,9}) ?/ ?(\\d{1,9})(?!\\d)(.*)");
  private static final Pattern LETTER_FOR_POINT =
      Pattern.compile("(?:(\\d+)([kKMm])|(\\d*)[RrΩ])(\\d+)(.*)");
  private static final Pattern DECIMAL = Pattern.compile("([\\d.,]+)(?:[eE]([+-]?\\d+))?(.*)");

  private static final Pattern PEAK =
      Pattern.compile("(?i)[mk]? ?[VA] ?(?:p|pp|p-p|pk|pk-pk|pkpk|peak|peak-to-peak)");

  private final String typed;
  private final Unit expected;
  private final Set<Unit> wanted;

  private EntryParser(String typed, Unit expected, Set<Unit> wanted) {
    this.typed = typed;
    this.expected = expected;
    this.wanted = wanted;
  }

  /**
   * Reads one entry; never throws, whatever the text.
   *
   * <p>The resolution of the number is one step of the last digit typed: 13.40 gives 0.01, 950m
   * gives 0.001, 1k2 gives 100. For a fraction it is a thousandth of the value.
   *
   * @param text what was typed, or null for nothing
   * @param expected the unit a bare number is in
   * @param alsoAccepted other units that may be typed with the number
   */
  public static Typed parse(String text, Unit expected, Unit... alsoAccepted) {
    Set<Unit> wanted = EnumSet.of(expected, alsoAccepted);
    String raw = text == null ? "" : text;
    EntryParser parser = new EntryParser(raw, expected, wanted);
    if (raw.length() > LONGEST) {
      return parser.problem(
          Sentence.of("{} is longer than {} characters", parser.quoted(), LONGEST));
    }
    return parser.read(EntryText.folded(raw));
  }

  private Typed read(String text) {
    if (text.isEmpty()) {
      return new Typed.Problem(Sentence.of("Nothing was typed; {}.", accepted()));
    }
    String lower = text.toLowerCase(Locale.ROOT);
    if (OVERLOAD.contains(lower)) {
      return problem(Sentence.of("{} means that the meter is over its range", quoted()));
    }
    if (NO_NUMBER.contains(lower)) {
      return problem(Sentence.of("{} cannot be measured", quoted()));
    }
    boolean negative = text.startsWith("-");
    String unsigned = negative || text.startsWith("+") ? text.substring(1).strip() : text;
    return unsignedNumber(unsigned, negative);
  }

  private Typed unsignedNumber(String text, boolean negative) {
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return fraction(fraction, negative);
    }
    Matcher lettered = LETTER_FOR_POINT.matcher(text);
    if (lettered.matches()) {
      return letterForPoint(lettered, negative);
    }
    Matcher decimal = DECIMAL.matcher(text);
    if (decimal.matches()) {
      return decimal(decimal, negative);
    }
    return notNumber();
  }

  private Typed fraction(Matcher m, boolean negative) {
    BigDecimal whole = m.group(1) == null ? BigDecimal.ZERO : new BigDecimal(m.group(1));
    BigDecimal divisor = new BigDecimal(m.group(3));
    if (divisor.signum() == 0) {
      return problem(Sentence.of("{} divides by zero", quoted()));
    }
    BigDecimal value = whole.add(new BigDecimal(m.group(2)).divide(divisor, MathContext.DECIMAL64));
    BigDecimal size = value.signum() == 0 ? BigDecimal.ONE : value;
    BigDecimal step = size.multiply(BigDecimal.valueOf(FRACTION_RESOLUTION));
    return withSuffix(new Numeral(value, step), m.group(4), negative);
  }

  private Typed letterForPoint(Matcher m, boolean negative) {
    boolean point = m.group(2) == null;
    String whole = point ? m.group(3) : m.group(1);
    String letter = point ? "R" : m.group(2);
    Numeral numeral = Numeral.ofDigits(whole, m.group(4), 0);
    String unit = m.group(5).strip();
    boolean unitIsWhole = unit.isEmpty() || Suffix.read(unit, wanted).isPresent();
    if (!unitIsWhole) {
      return unknownUnit();
    }
    if (point && !unit.isEmpty() && Suffix.read(unit, wanted).get().unit() != Unit.OHM) {
      return problem(Sentence.of("{} mixes ohms with another unit", quoted()));
    }
    return withSuffix(numeral, point ? "R" : letter + unit, negative);
  }

  private Typed decimal(Matcher m, boolean negative) {
    String mantissa = m.group(1);
    if (Numeral.isAmbiguous(mantissa)) {
      String sign = negative ? "-" : "";
      String point = sign + mantissa.replace(',', '.');
      String whole = sign + mantissa.replace(",", "");
      return new Typed.Problem(
          Sentence.of("{} can be read two ways; type {} or {}.", quoted(), point, whole));
    }
    int exponent = exponent(m.group(2));
    if (Math.abs(exponent) > LARGEST_EXPONENT) {
      return problem(Sentence.of("{} is out of range", quoted()));
    }
    Optional<Numeral> numeral = Numeral.ofMarked(mantissa, exponent);
    return numeral.isPresent() ? withSuffix(numeral.get(), m.group(3), negative) : notNumber();
  }

  private static int exponent(String digits) {
    if (digits == null) {
      return 0;
    }
    return digits.length() > 4 ? LARGEST_EXPONENT + 1 : Integer.parseInt(digits);
  }

  private Typed withSuffix(Numeral numeral, String suffixText, boolean negative) {
    String text = suffixText.strip();
    if (text.isEmpty()) {
      return number(numeral, Suffix.none(expected), negative);
    }
    Optional<Suffix> suffix = Suffix.read(text, wanted);
    if (suffix.isEmpty()) {
      return PEAK.matcher(text).matches()
          ? problem(Sentence.of("{} is a peak or peak-to-peak value, not rms", quoted()))
          : unknownUnit();
    }
    Unit unit = suffix.get().unit() == null ? expected : suffix.get().unit();
    if (!wanted.contains(unit)) {
      return problem(Sentence.of("{} is in {}", quoted(), UnitWords.of(unit)));
    }
    if (!suffix.get().mayStandBefore(unit)) {
      return problem(
          Sentence.of("{} has a prefix that does not go with {}", quoted(), UnitWords.of(unit)));
    }
    return number(numeral, suffix.get().withUnit(unit), negative);
  }

  private Typed number(Numeral numeral, Suffix suffix, boolean negative) {
    BigDecimal signed = negative ? numeral.value().negate() : numeral.value();
    double value = suffix.toSi(signed);
    double resolution = suffix.stepToSi(numeral.step());
    if (!(Math.abs(value) <= LARGEST) || !(resolution <= LARGEST)) {
      return problem(Sentence.of("{} is larger than anything on a bench", quoted()));
    }
    if (!(resolution > 0) || value == 0 && signed.signum() != 0 && suffix.isPlain()) {
      return problem(Sentence.of("{} is smaller than anything on a bench", quoted()));
    }
    return new Typed.Number(value + 0.0, suffix.unit(), resolution);
  }

  private Typed notNumber() {
    return problem(Sentence.of("{} is not a number", quoted()));
  }

  private Typed unknownUnit() {
    return problem(Sentence.of("{} is not a number with a known unit", quoted()));
  }

  /** Returns what is wrong, followed by what is accepted. */
  private Typed problem(String wrong) {
    return new Typed.Problem(Sentence.of("{}; {}.", wrong, accepted()));
  }

  private String quoted() {
    return "«" + EntryText.shown(typed) + "»";
  }

  private String accepted() {
    String said = Sentence.of("type {}", UnitWords.withExample(expected));
    for (Unit unit : wanted) {
      if (unit != expected) {
        said = Sentence.of("{}, or {}", said, UnitWords.withExample(unit));
      }
    }
    return said;
  }
}
