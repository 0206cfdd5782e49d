package loadwalk.report.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.bench.Mode;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.result.BudgetLine;
import loadwalk.result.OutputFit;
import loadwalk.result.PublishedPower;
import loadwalk.result.Repeatability;
import loadwalk.text.Sentence;

/** Words numbers for all formats. */
public final class ResultWords {
  static final String UNKNOWN = "unknown";

  private static final Printer PRINTER = Printer.UTF8;
  private static final double COMMON_FACTOR = Quantity.COVERAGE_FACTOR;

  /** No meter is read more closely: below it a residual is the rounding of the computation. */
  private static final double CLOSEST_PERCENT = 0.001;

  private static final int MINUTE_DIGITS = "2026-01-31T09:30".length();

  private ResultWords() {}

  /** Returns mode and load: "stereo 4 Ω". */
  public static String load(Mode mode, double ohms) {
    return mode.word() + " " + PRINTER.exact(ohms, Unit.OHM);
  }

  /** Returns mode and load of a published power. */
  static String load(PublishedPower power) {
    return load(power.mode(), power.ohms());
  }

  /** Returns the lowest and the highest of values, or the one that all are. */
  static String range(List<Double> values, Unit unit) {
    double low = Collections.min(values);
    double high = Collections.max(values);
    return low == high
        ? PRINTER.exact(low, unit)
        : Sentence.of("{} to {}", PRINTER.exact(low, unit), PRINTER.exact(high, unit));
  }

  static String quantity(Optional<Quantity> quantity) {
    return quantity.map(PRINTER::quantity).orElse(UNKNOWN);
  }

  /** Names the coverage factors of the quantities in one table, all of which cover 95 %. */
  public static String coverage(List<Quantity> quantities) {
    DoubleSummaryStatistics k =
        quantities.stream().mapToDouble(Quantity::coverageFactor).summaryStatistics();
    if (k.getCount() == 0) {
      return "k = 2";
    }
    String least = roughly(k.getMin());
    String most = roughly(k.getMax());
    return least.equals(most)
        ? Sentence.of("k = {} for 95 %", most)
        : Sentence.of("k = {} to {} for 95 %", least, most);
  }

  private static String roughly(double k) {
    return Math.abs(k - COMMON_FACTOR) < 0.05 ? "2" : PRINTER.value(k, Unit.ONE, k < 10 ? 2 : 3);
  }

  /** Returns a coverage factor with no more digits than matter. */
  static String factor(double k) {
    return k == COMMON_FACTOR ? "2" : PRINTER.value(k, Unit.ONE, k < 10 ? 3 : 4);
  }

  /** Returns degrees of freedom, rounded down to a whole number (JCGM 100:2008, G.4.1). */
  static String degrees(double degreesOfFreedom) {
    return Double.isInfinite(degreesOfFreedom)
        ? "∞"
        : String.valueOf((long) Math.floor(degreesOfFreedom + 1e-9));
  }

  /** Returns a fraction in percent. */
  static String percent(Quantity fraction) {
    return PRINTER.quantity(fraction.mapped(100 * fraction.value(), 100, Unit.PERCENT));
  }

  /**
   * Returns decibels with their sign; silence is named. A format string would load the tables of
   * all languages.
   */
  static String decibels(double decibels) {
    if (!Double.isFinite(decibels)) {
      return Double.isInfinite(decibels) ? "no output" : UNKNOWN;
    }
    BigDecimal size = BigDecimal.valueOf(Math.abs(decibels)).setScale(2, RoundingMode.HALF_UP);
    return (decibels < 0 ? "-" : "+") + size.toPlainString();
  }

  /** Says how closely a fit follows its readings; a line through two readings always meets them. */
  static String closeness(OutputFit fit) {
    double percent = Math.max(100 * fit.worstResidual(), CLOSEST_PERCENT);
    return fit.stepIds().size() == 2
        ? "It rests on two readings alone, so nothing checks it."
        : Sentence.of("Every reading is within {} of it.", PRINTER.value(percent, Unit.PERCENT, 2));
  }

  static String sensitivity(BudgetLine line) {
    String per = line.inputUnit() == Unit.WATT ? "" : " W/" + line.inputUnit().symbol();
    return PRINTER.value(line.sensitivity(), Unit.ONE, 3) + per;
  }

  /** Returns the resolution of a reading; if none was typed, one that shows nine digits. */
  static double resolution(Sheet.ReadingLine reading) {
    boolean typed = reading.resolution() > 0 && Double.isFinite(reading.resolution());
    double size = Math.max(Math.abs(reading.value()), 1e-9);
    return typed ? reading.resolution() : Math.pow(10, Math.floor(Math.log10(size)) - 8);
  }

  static String fuses(List<Double> fuses, double sum) {
    String each =
        fuses.stream().map(f -> PRINTER.exact(f, Unit.AMPERE)).collect(Collectors.joining(" + "));
    return fuses.size() == 1 ? each : each + " = " + PRINTER.exact(sum, Unit.AMPERE);
  }

  static String minutes(double seconds) {
    long whole = Math.round(seconds);
    return Sentence.of("{} min {} s", whole / 60, whole % 60);
  }

  static String moment(long wallMillis) {
    return Sentence.of("{} UTC", utc(wallMillis).substring(0, MINUTE_DIGITS).replace('T', ' '));
  }

  static String day(long wallMillis) {
    return utc(wallMillis).substring(0, MINUTE_DIGITS - "T09:30".length());
  }

  /** Returns a time in ISO 8601, to the minute or finer; this form needs no pattern to load. */
  private static String utc(long wallMillis) {
    return LocalDateTime.ofEpochSecond(Math.floorDiv(wallMillis, 1000L), 0, ZoneOffset.UTC)
        .toString();
  }

  /** Returns what the operator typed, in quotes and not altered. */
  static String quoted(String text) {
    return Sentence.of("“{}”", text);
  }

  /** Returns what the operator typed, in quotes and not altered, as the end of a sentence. */
  static String typed(String text) {
    boolean ends = text.endsWith(".") || text.endsWith("!") || text.endsWith("?");
    return ends ? quoted(text) : Sentence.of("{}.", quoted(text));
  }

  /** Says how well the limit is taken to be set by hand, and on what that rests. */
  static String repeatability(Repeatability repeats) {
    String percent = PRINTER.value(100 * repeats.relativeVolts(), Unit.PERCENT, 2);
    return repeats.pairs() == 0
        ? Sentence.of(
            "Setting the limit by hand is taken to repeat to {} of volts (one standard deviation),"
                + " as is common. It is learned once {} pairs of runs are known.",
            percent,
            Repeatability.ENOUGH_PAIRS)
        : Sentence.of(
            "Setting the limit by hand repeats to {} of volts (one standard deviation), learned"
                + " from {} pairs of runs.",
            percent,
            repeats.pairs());
  }

  /**
   * Returns a remark as a sentence: it starts with a capital, unless it starts with an id, and ends
   * with a full stop.
   */
  static String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    boolean word = text.matches("(?s)\\p{L}+[ ,.].*");
    String capital =
        word ? text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) : text;
    return capital.endsWith(".") ? capital : capital + ".";
  }
}
