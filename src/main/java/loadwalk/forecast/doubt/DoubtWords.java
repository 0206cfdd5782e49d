package loadwalk.forecast.doubt;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.quantity.Printer;

/** Words doubts: what is off and by how much, how it was decided, what to look at. */
final class DoubtWords {
  /** The digits of an expected value in a sentence: as many as a reading has. */
  private static final int DIGITS = 3;

  /**
   * The ratio below which a sentence says "less than a thousandth", which reads better than zeros.
   */
  private static final double LEAST_RATIO = 1e-3;

  private DoubtWords() {}

  /** What a doubt was decided by. */
  enum Witness {
    FORECAST("the forecast"),
    SUPPLY_AMPS("the forecast and the supply amps together"),
    OTHER_ENTRY("the other entry of this step");

    private final String words;

    Witness(String words) {
      this.words = words;
    }
  }

  /** Words a doubt of an entry. */
  static Doubt of(
      ReadingId id,
      double entered,
      Band band,
      Hypotheses.Finding finding,
      Witness witness,
      Target target) {
    return new Doubt(
        id,
        finding.slip(),
        text(id, entered, band, reason(id, finding), witness),
        lookAt(id, finding.slip(), target));
  }

  /** Words a doubt of an output or a supply current of a loaded step. */
  static Doubt loaded(
      ReadingId id,
      double entered,
      Band band,
      LoadedSearch.Found found,
      Witness witness,
      Target target) {
    if (found.earlier().isPresent()) {
      return earlier(id, entered, band, found.earlier().get(), witness);
    }
    Hypotheses.Finding finding = found.finding();
    String impossible =
        found.aboveInput() && finding.slip() != Slip.OUTPUT_ABOVE_INPUT
            ? "more comes out than goes in, and "
            : "";
    boolean unexplained = found.follows() && finding.slip() == Slip.UNNAMED;
    String reason = impossible + reason(id, finding) + (unexplained ? ", here or earlier" : "");
    String lookAt =
        unexplained
            ? "Read the "
                + id.label()
                + " again, check the wiring of this step, and if it stays measure the steps before"
                + " again."
            : lookAt(id, finding.slip(), target);
    return new Doubt(id, finding.slip(), text(id, entered, band, reason, witness), lookAt);
  }

  /** Words a doubt that an earlier step is to blame for. */
  private static Doubt earlier(
      ReadingId id, double entered, Band band, EarlierSlips.Found found, Witness witness) {
    String step = found.target().stepId();
    boolean load = found.slip() == Slip.LOAD_DOUBLE || found.slip() == Slip.LOAD_HALF;
    String where = load ? step : "the " + found.reading().label() + " of " + step;
    String reason =
        found.slip() == Slip.UNNAMED
            ? "it fits if " + where + " is off, by no named slip"
            : "it fits if " + where + " carries a slip: " + found.slip().words();
    if (!Double.isNaN(found.meant())) {
      reason += " (" + value(found.reading(), found.meant()) + " would fit there)";
    }
    return new Doubt(
        id,
        found.slip(),
        text(id, entered, band, reason, witness),
        "Measure " + step + " again. " + lookAt(found.reading(), found.slip(), found.target()),
        Optional.of(step));
  }

  private static String text(
      ReadingId id, double entered, Band band, String reason, Witness witness) {
    String off = band == null ? "" : off(id, entered, band);
    return value(id, entered) + off + "; " + reason + ", decided by " + witness.words + ".";
  }

  /** Words a doubt of the cold load check. */
  static Doubt load(double entered, Band band, Slip slip) {
    String text =
        value(ReadingId.LOAD_OHMS, entered)
            + off(ReadingId.LOAD_OHMS, entered, band)
            + "; "
            + (slip == Slip.UNNAMED ? "no slip fits" : "it looks like a " + slip.words())
            + ", decided by the load's tolerance.";
    return new Doubt(
        ReadingId.LOAD_OHMS,
        slip,
        text,
        "Check how the load resistors are wired before anything is switched on.");
  }

  private static String off(ReadingId id, double entered, Band band) {
    String range = Printer.UTF8.range(band.low(), band.high(), id.unit());
    if (band.holds(entered)) {
      return " lies in the forecast " + range;
    }
    double middle = band.middle();
    String size =
        middle > 0
            ? entered > 2 * middle || entered < middle / 2
                ? times(entered / middle) + " the middle of"
                : String.format(
                    Locale.ROOT,
                    "%.0f %% %s the middle of",
                    Math.abs(100 * (entered / middle - 1)),
                    entered > middle ? "above" : "below")
            : "outside";
    return " is " + size + " the forecast " + range;
  }

  /** Words a ratio in two digits, without an exponent and without a zero that says nothing. */
  private static String times(double ratio) {
    return ratio < LEAST_RATIO
        ? "less than a thousandth of"
        : new BigDecimal(ratio).round(new MathContext(2)).toPlainString() + " times";
  }

  private static String reason(ReadingId id, Hypotheses.Finding finding) {
    if (finding.slip() == Slip.UNNAMED) {
      return "no named slip fits";
    }
    String words = "the likeliest slip is " + finding.slip().words();
    return Double.isNaN(finding.meant())
        ? words
        : words + " (" + value(id, finding.meant()) + " would fit)";
  }

  private static String value(ReadingId id, double value) {
    return Printer.UTF8.value(value, id.unit(), DIGITS);
  }

  private static String lookAt(ReadingId id, Slip slip, Target target) {
    return switch (slip) {
      case DECIMAL_POINT -> "Read the meter again and mind its range and decimal point.";
      case PEAK_FOR_RMS -> "Check that the meter or scope shows rms and not peak.";
      case PEAK_TO_PEAK_FOR_RMS -> "Check that the scope shows rms and not peak-to-peak.";
      case BOTH_CHANNELS_FOR_ONE -> "Measure across one load only.";
      case ONE_CHANNEL_FOR_BOTH -> "Measure across the whole load, from terminal to terminal.";
      case STEREO_READING_IN_BRIDGED ->
          "Check that the amplifier is bridged and the meter sits across both hot terminals.";
      case LOAD_DOUBLE, LOAD_HALF ->
          "Switch off and check how the load resistors are wired: "
              + Printer.UTF8.exact(target.ohms(), loadwalk.quantity.Unit.OHM)
              + " is wanted.";
      case SUPPLY_AMPS_TEN_TIMES -> "Check the range of the current clamp or shunt.";
      case DIGITS_SWAPPED -> "Read the meter again, digit by digit.";
      case COPIED_FROM_BEFORE -> "Make sure that the reading belongs to this step.";
      case OUTPUT_ABOVE_INPUT ->
          "Check output volts, supply amps and supply volts: more comes out than goes in.";
      case UNNAMED -> "Read the " + id.label() + " again and check the wiring of this step.";
    };
  }
}
