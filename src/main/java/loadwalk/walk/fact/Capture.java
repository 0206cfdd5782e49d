package loadwalk.walk.fact;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;
import loadwalk.wave.Calibration;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinding;

/**
 * The values of a captured wave as a walk keeps them: small enough for a journal, with the name and
 * hash of the file.
 *
 * @param file the file's name, without its folder
 * @param sha256 the hash of all its bytes, in hexadecimal
 * @param channel counted from 1
 * @param hertz the fundamental
 * @param volts the output, rms without DC
 * @param scatterVolts its standard uncertainty without the calibration's
 * @param voltsPerUnit volts at the amplifier for a sample of 1
 * @param calibrationU the relative standard uncertainty of {@code voltsPerUnit}, if stated
 * @param calibration how samples became volts, a few words
 * @param thdPercent harmonics 2 to 10 over the fundamental; empty if none can be seen
 * @param atLimit whether the output was found on a rising tone at that THD
 * @param method how it was found, a few words
 * @param shape what kind of distortion it looks like
 * @param overdriven whether the capturing input was overdriven, in words
 * @param cycle one averaged period in volts, from the rising zero crossing of the fundamental
 * @param harmonics harmonic 2, 3, … in percent of the fundamental
 */
public record Capture(
    String file,
    String sha256,
    int channel,
    double hertz,
    double volts,
    double scatterVolts,
    double voltsPerUnit,
    OptionalDouble calibrationU,
    String calibration,
    OptionalDouble thdPercent,
    boolean atLimit,
    String method,
    String shape,
    String overdriven,
    List<Double> cycle,
    List<Double> harmonics)
    implements Shaped<Capture> {
  /** The highest harmonic that the analysis of a wave counts in its THD. */
  public static final int HARMONICS = 10;

  private static final double MOST = Double.MAX_VALUE;
  private static final int CYCLE_POINTS = 128;
  private static final MathContext KEPT_DIGITS = new MathContext(5);
  private static final MathContext TYPED_DIGITS = new MathContext(7);
  private static final String HASH = "sha256 ";

  /** Checks the numbers and copies the lists. */
  public Capture {
    requirePositive(hertz, "hertz");
    requirePositive(volts, "volts");
    requirePositive(voltsPerUnit, "voltsPerUnit");
    requireNotNegative(scatterVolts, "scatterVolts");
    requireNotNegative(calibrationU.orElse(0), "calibrationU");
    requireNotNegative(thdPercent.orElse(0), "thdPercent");
    cycle = List.copyOf(cycle);
    harmonics = List.copyOf(harmonics);
    cycle.forEach(y -> requireFinite(y, "cycle"));
    harmonics.forEach(y -> requireNotNegative(y, "harmonics"));
  }

  static Capture blank() {
    OptionalDouble none = OptionalDouble.empty();
    List<Double> no = List.of();
    return new Capture("", "", 1, 1, 1, 0, 1, none, "", none, false, "", "", "", no, no);
  }

  @Override
  public Capture shape(Shape in) {
    return new Capture(
        in.text("file", file),
        in.text("sha256", sha256),
        in.whole("channel", channel),
        in.number("frequencyHertz", hertz),
        in.number("outputVolts", volts),
        in.number("scatterVolts", scatterVolts),
        in.number("voltsPerUnit", voltsPerUnit),
        in.number("calibrationU", calibrationU),
        in.text("calibration", calibration),
        in.number("thdPercent", thdPercent),
        in.flag("atLimit", atLimit),
        in.text("method", method),
        in.text("shape", shape),
        in.text("overdriven", overdriven),
        in.numbers("cycleVolts", cycle, -MOST, MOST),
        in.numbers("harmonicPercents", harmonics, 0, MOST));
  }

  /**
   * The file and channel that a capture came from.
   *
   * @param name its name without its folder
   * @param sha256 the hash of all its bytes
   * @param channel counted from 1
   */
  public record Source(String name, String sha256, int channel) {}

  /** Makes the capture of a tone at a steady level. */
  public static Capture of(Source source, WaveReading reading) {
    return of(source, reading, reading.output().value(), reading.output().u());
  }

  private static Capture of(Source source, WaveReading reading, double volts, double u) {
    Calibration calibration = reading.calibration();
    double gain = volts * calibration.relativeU();
    OptionalDouble thd =
        reading.thd().isPresent()
            ? OptionalDouble.of(reading.thd().get().value())
            : OptionalDouble.empty();
    return new Capture(
        source.name(),
        source.sha256(),
        source.channel(),
        reading.frequency().value(),
        volts,
        Math.sqrt(Math.max(0, u * u - gain * gain)),
        calibration.voltsPerUnit(),
        calibration.relativeU() > 0
            ? OptionalDouble.of(calibration.relativeU())
            : OptionalDouble.empty(),
        calibration.how(),
        thd,
        false,
        reading.method(),
        reading.shape().words(),
        reading.clipping().capture().words(),
        decimated(reading.cycle()),
        percents(reading.harmonics()));
  }

  /** Makes the capture of a rising tone, at the limit found on it. */
  public static Capture of(Source source, WaveReading reading, LimitFinding.Found found) {
    Capture c = of(source, reading, found.output().value(), found.output().u());
    return new Capture(
        c.file,
        c.sha256,
        c.channel,
        c.hertz,
        c.volts,
        c.scatterVolts,
        c.voltsPerUnit,
        c.calibrationU,
        c.calibration,
        OptionalDouble.of(found.limitPercent()),
        true,
        found.method(),
        c.shape,
        c.overdriven,
        decimated(found.cycle()),
        percents(found.harmonics()));
  }

  private static List<Double> decimated(List<Double> cycle) {
    List<Double> kept = new ArrayList<>();
    int step = Math.max(1, cycle.size() / CYCLE_POINTS);
    for (int i = 0; i + step <= cycle.size(); i += step) {
      double sum = 0;
      for (int k = 0; k < step; k++) {
        sum += cycle.get(i + k);
      }
      kept.add(rounded(sum / step));
    }
    return kept;
  }

  private static List<Double> percents(List<Harmonic> harmonics) {
    return harmonics.stream().map(h -> rounded(h.percent())).toList();
  }

  private static double rounded(double value) {
    return new BigDecimal(value).round(KEPT_DIGITS).doubleValue();
  }

  /** Tells whether the recorder's own input was driven to its end. */
  public boolean isOverdriven() {
    return overdriven.equals(Clipping.Overdriven.YES.words());
  }

  /** Returns the output as an operator would type it. */
  public String voltsText() {
    return plain(volts) + " V";
  }

  /** Returns the tone as an operator would type it. */
  public String hertzText() {
    return Sentence.of("{} Hz", plain(hertz));
  }

  /** Returns a THD as an operator would type it. */
  public static String percentText(double percent) {
    return new BigDecimal(percent).round(KEPT_DIGITS).toPlainString() + " %";
  }

  private static String plain(double value) {
    return new BigDecimal(value).round(TYPED_DIGITS).stripTrailingZeros().toPlainString();
  }

  /** Returns the instrument kept with a reading taken from this capture. */
  public Instrument instrument(String typed, long wallMillis) {
    return new Instrument(meter(), HASH + sha256, typed, wallMillis, 1, 0);
  }

  private String meter() {
    return Sentence.of("capture {}", file);
  }

  /** Tells whether a reading was taken from this capture. */
  boolean isSourceOf(Instrument instrument) {
    return instrument.identity().equals(HASH + sha256) && instrument.meter().equals(meter());
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be a number above 0, got " + value);
    }
  }

  private static void requireNotNegative(double value, String what) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be a number from 0 up, got " + value);
    }
  }

  private static void requireFinite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must hold finite numbers, got " + value);
    }
  }
}
