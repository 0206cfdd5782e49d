package loadwalk.forecast.doubt;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Words doubts: what is off and by how much, the likeliest slip, what to check. */
final class DoubtWords {
  /** Digits of an expected value in a sentence: as many as a reading has. */
  private static final int DIGITS = 3;

  /**
   * Ratio to the middle below which a sentence says "less than a thousandth of", which reads better
   * than zeros.
   */
  private static final double LEAST_RATIO = 1e-3;

  private static final String NO_SLIP = "No named slip fits.";
  private static final String MORE_OUT = "More comes out than goes in.";

  /** Ratio to the middle below which an entry is given as a part of it, not in percent. */
  private static final double SMALL = 0.2;

  /** Ratio to the middle above which an entry is given as a multiple of it, not in percent. */
  private static final double LARGE = 2;

  private static final int FEWEST_PARTS = 5;

  /** The parts in words, from one fifth down. */
  private static final List<String> PARTS =
      List.of(
          "one fifth of",
          "one sixth of",
          "one seventh of",
          "one eighth of",
          "one ninth of",
          "one tenth of",
          "one eleventh of",
          "one twelfth of",
          "one thirteenth of",
          "one fourteenth of",
          "one fifteenth of");

  private DoubtWords() {}

  /** The evidence that a doubt was judged by. */
  enum Witness {
    FORECAST("Judged by the forecast."),
    SUPPLY_AMPS("Judged by the forecast and the supply amps together."),
    OTHER_ENTRY("Judged by the other entry of this step.");

    private final String sentence;

    Witness(String sentence) {
      this.sentence = sentence;
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
        together(size(id, entered, band), likeliest(id, finding), witness.sentence),
        lookAt(id, finding.slip(), target));
  }

  /** Words a doubt of the output or the supply current of a loaded step. */
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
    boolean unnamed = finding.slip() == Slip.UNNAMED;
    boolean impossible = found.aboveInput() && finding.slip() != Slip.OUTPUT_ABOVE_INPUT;
    String text =
        together(
            size(id, entered, band),
            impossible ? MORE_OUT : "",
            unnamed && found.follows()
                ? "No named slip fits, here or earlier."
                : likeliest(id, finding),
            witness.sentence);
    String lookAt =
        unnamed && found.follows()
            ? Sentence.of(
                "Read the {} again and check the wiring of this step. If it stays, measure the"
                    + " steps before again.",
                id.label())
            : lookAt(id, finding.slip(), target);
    return new Doubt(id, finding.slip(), text, lookAt);
  }

  /** Words a doubt caused by an earlier step. */
  private static Doubt earlier(
      ReadingId id, double entered, Band band, EarlierSlips.Found found, Witness witness) {
    String step = found.target().stepId();
    String meant =
        Double.isNaN(found.meant())
            ? ""
            : Sentence.of("There, {} would fit.", value(found.reading(), found.meant()));
    return new Doubt(
        id,
        found.slip(),
        together(size(id, entered, band), blame(found), meant, witness.sentence),
        together(
            Sentence.of("Measure {} again.", step),
            lookAt(found.reading(), found.slip(), found.target())),
        Optional.of(step));
  }

  private static String blame(EarlierSlips.Found found) {
    String step = found.target().stepId();
    String reading = found.reading().label();
    return switch (found.slip()) {
      case UNNAMED ->
          Sentence.of(
              "It fits if something is off in the {} of {}; no named slip explains it.",
              reading,
              step);
      case LOAD_DOUBLE, LOAD_HALF ->
          Sentence.of("It fits if {} had {}.", step, found.slip().words());
      default ->
          Sentence.of(
              "It fits if {} has a slip in its {}: {}.", step, reading, found.slip().words());
    };
  }

  /** Words a doubt of the cold load check. */
  static Doubt load(ReadingId id, double entered, Band band, Slip slip) {
    String text =
        together(
            size(id, entered, band),
            slip == Slip.UNNAMED ? NO_SLIP : looksLike(slip),
            "Judged by the load's tolerance.");
    return new Doubt(
        id, slip, text, "Check how the load resistors are wired before you switch anything on.");
  }

  /** Words a doubt of a temperature that is none of a bench. */
  static Doubt temperature(
      ReadingId id, double celsius, Band possible, Slip slip, double meant, Target target) {
    String what =
        Sentence.of(
            "{} is no temperature of a bench, {}.",
            value(id, celsius),
            Printer.UTF8.range(possible.low(), possible.high(), id.unit()));
    String likeliest =
        slip == Slip.UNNAMED
            ? NO_SLIP
            : Double.isNaN(meant)
                ? looksLike(slip)
                : Sentence.of("It looks like {}: {} would fit.", slip.words(), value(id, meant));
    String look =
        slip == Slip.UNNAMED
            ? "Read the thermometer again: check its probe, its unit and its sign."
            : lookAt(id, slip, target);
    return new Doubt(id, slip, together(what, likeliest), look);
  }

  /** Words a doubt that follows from a rule, without a weighing. */
  static Doubt ruled(ReadingId id, Slip slip, String text, Target target) {
    return new Doubt(id, slip, text, lookAt(id, slip, target));
  }

  /** Joins whole sentences, leaving out empty ones. */
  private static String together(String... sentences) {
    return Arrays.stream(sentences).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
  }

  /** Says how far the entry is from its forecast. */
  private static String size(ReadingId id, double entered, Band band) {
    String value = value(id, entered);
    if (band == null) {
      return Sentence.of("{} was entered.", value);
    }
    String range = Printer.UTF8.range(band.low(), band.high(), id.unit());
    double middle = band.middle();
    if (band.holds(entered)) {
      return Sentence.of("{} is inside the forecast, {}.", value, range);
    }
    if (!(middle > 0)) {
      return Sentence.of("{} is outside the forecast, {}.", value, range);
    }
    double ratio = entered / middle;
    if (ratio < SMALL) {
      return Sentence.of("{} is {} the middle of the forecast, {}.", value, part(ratio), range);
    }
    if (ratio > LARGE) {
      return Sentence.of(
          "{} is {} times the middle of the forecast, {}.", value, times(ratio), range);
    }
    String percent = Printer.UTF8.value(Math.abs(100 * (ratio - 1)), Unit.PERCENT, 2);
    return Sentence.of(
        ratio > 1
            ? "{} is {} above the middle of the forecast, {}."
            : "{} is {} below the middle of the forecast, {}.",
        value,
        percent,
        range);
  }

  /** Words a large ratio with two digits, without an exponent. */
  private static String times(double ratio) {
    return new BigDecimal(ratio).round(new MathContext(2)).toPlainString();
  }

  /** Words a small ratio as a technician says it: "one fourteenth of". */
  private static String part(double ratio) {
    if (ratio < LEAST_RATIO) {
      return "less than a thousandth of";
    }
    int parts = (int) Math.round(1 / ratio);
    int named = parts - FEWEST_PARTS;
    return named < PARTS.size() ? PARTS.get(named) : Sentence.of("1/{} of", parts);
  }

  private static String likeliest(ReadingId id, Hypotheses.Finding finding) {
    return switch (finding.slip()) {
      case UNNAMED -> NO_SLIP;
      case OUTPUT_ABOVE_INPUT -> MORE_OUT;
      default ->
          Double.isNaN(finding.meant())
              ? looksLike(finding.slip())
              : Sentence.of(
                  "It looks like {}: {} would fit.",
                  finding.slip().words(),
                  value(id, finding.meant()));
    };
  }

  private static String looksLike(Slip slip) {
    return Sentence.of("It looks like {}.", slip.words());
  }

  private static String value(ReadingId id, double value) {
    return Printer.UTF8.value(value, id.unit(), DIGITS);
  }

  private static String lookAt(ReadingId id, Slip slip, Target target) {
    return switch (slip) {
      case DECIMAL_POINT -> "Read the meter again: check its range and the decimal point.";
      case PEAK_FOR_RMS -> "Check that the meter or scope shows rms, not peak.";
      case PEAK_TO_PEAK_FOR_RMS -> "Check that the scope shows rms, not peak-to-peak.";
      case BOTH_CHANNELS_FOR_ONE -> "Measure across one load only.";
      case ONE_CHANNEL_FOR_BOTH -> "Measure across the whole load, from terminal to terminal.";
      case STEREO_READING_IN_BRIDGED ->
          "Check that the amplifier is bridged and the meter is across both hot terminals.";
      case LOAD_DOUBLE, LOAD_HALF ->
          Sentence.of(
              "Switch off and check how the load resistors are wired: the step asks for {}.",
              Printer.UTF8.exact(target.ohms(), Unit.OHM));
      case SUPPLY_AMPS_TEN_TIMES -> "Check the range of the current clamp or shunt.";
      case DIGITS_SWAPPED -> "Read the meter again, digit by digit.";
      case COPIED_FROM_BEFORE -> "Make sure that the reading belongs to this step.";
      case OUTPUT_ABOVE_INPUT ->
          "Check output volts, supply amps and supply volts: one of them is wrong.";
      case TONE_OFF -> "Check the setting of the generator.";
      case THD_OFF_LIMIT -> "Check the range of the THD meter.";
      case FAHRENHEIT_FOR_CELSIUS -> "Set the thermometer to degrees Celsius and read it again.";
      case WRONG_ROW -> "Check which meter this was read from, and into which row it goes.";
      case RECORDER_CLIPPED -> "Turn down the input of the recorder and capture again.";
      case UNNAMED ->
          Sentence.of("Read the {} again and check the wiring of this step.", id.label());
    };
  }
}
