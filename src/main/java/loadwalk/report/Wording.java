package loadwalk.report;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.bench.Mode;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.result.BudgetLine;

/** Words numbers the same way in every format. */
final class Wording {
  static final String UNKNOWN = "unknown";

  private static final Printer PRINTER = Printer.UTF8;
  private static final double COMMON_FACTOR = Quantity.COVERAGE_FACTOR;
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withZone(ZoneOffset.UTC);

  private Wording() {}

  static String load(Mode mode, double ohms) {
    return mode.word() + " " + PRINTER.exact(ohms, Unit.OHM);
  }

  static String quantity(Optional<Quantity> quantity) {
    return quantity.map(PRINTER::quantity).orElse(UNKNOWN);
  }

  /** Names the coverage factor of quantities that stand in one table. */
  static String coverage(List<Quantity> quantities) {
    double most =
        quantities.stream().mapToDouble(Quantity::coverageFactor).max().orElse(COMMON_FACTOR);
    return most > COMMON_FACTOR
        ? "k = 2 to " + factor(most) + " for 95 %, by the scatter of the readings"
        : "k = 2";
  }

  /** Returns a coverage factor with as many digits as matter. */
  static String factor(double k) {
    return k == COMMON_FACTOR ? "2" : PRINTER.value(k, Unit.ONE, k < 10 ? 3 : 4);
  }

  /** Returns degrees of freedom, cut to the next lower whole number (JCGM 100:2008, G.4.1). */
  static String degrees(double degreesOfFreedom) {
    return Double.isInfinite(degreesOfFreedom)
        ? "∞"
        : String.valueOf((long) Math.floor(degreesOfFreedom + 1e-9));
  }

  /** Returns a fraction in percent. */
  static String percent(Quantity fraction) {
    return PRINTER.quantity(fraction.mapped(100 * fraction.value(), 100, Unit.PERCENT));
  }

  /** Returns decibels with their sign; silence is said so. */
  static String decibels(double decibels) {
    return Double.isInfinite(decibels)
        ? "no output"
        : String.format(Locale.ROOT, "%+.2f", decibels);
  }

  static String sensitivity(BudgetLine line) {
    String per = line.inputUnit() == Unit.WATT ? "" : " W/" + line.inputUnit().symbol();
    return PRINTER.value(line.sensitivity(), Unit.ONE, 3) + per;
  }

  /** Returns the resolution of a reading, or one that shows nine digits where none was typed. */
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
    return whole / 60 + " min " + whole % 60 + " s";
  }

  static String moment(long wallMillis) {
    return MINUTE.format(Instant.ofEpochMilli(wallMillis));
  }

  static String day(long wallMillis) {
    return DAY.format(Instant.ofEpochMilli(wallMillis));
  }

  /** Returns a remark as a sentence: a capital first unless it opens with an id, a stop last. */
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
