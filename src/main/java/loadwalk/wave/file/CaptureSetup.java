package loadwalk.wave.file;

import java.util.OptionalDouble;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.WaveReading;

/**
 * How an operator says what a capture stands for.
 *
 * @param fullScaleVolts peak volts at the input that make full scale of a sound file
 * @param divider volts at the amplifier for one volt at the input
 * @param knownVolts the rms volts that a meter showed while this was captured
 * @param calibrationPercent the standard uncertainty of all that
 * @param channel counted from 1
 * @param given what a scope's file does not tell itself
 */
public record CaptureSetup(
    OptionalDouble fullScaleVolts,
    OptionalDouble divider,
    OptionalDouble knownVolts,
    OptionalDouble calibrationPercent,
    int channel,
    ScopeCsv.Given given) {
  /** Nothing is said; the first channel. */
  public static final CaptureSetup NONE =
      new CaptureSetup(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          1,
          ScopeCsv.Given.NOTHING);

  /** Checks the numbers. */
  public CaptureSetup {
    requirePositive(fullScaleVolts, "The volts of full scale");
    requirePositive(divider, "The divider ratio");
    requirePositive(knownVolts, "The known volts");
    requirePositive(calibrationPercent, "The uncertainty of the calibration");
    if (channel < 1) {
      throw new IllegalArgumentException("Channels are counted from 1, got " + channel + ".");
    }
    boolean both = fullScaleVolts.isPresent() || divider.isPresent();
    if (knownVolts.isPresent() && both) {
      throw new IllegalArgumentException(
          "Give one known voltage, or full scale and divider, not both.");
    }
  }

  /** Returns the setup of volts a sample and a divider. */
  public static CaptureSetup of(double fullScaleVolts, double divider) {
    return new CaptureSetup(
        OptionalDouble.of(fullScaleVolts),
        OptionalDouble.of(divider),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        1,
        ScopeCsv.Given.NOTHING);
  }

  /**
   * Returns the calibration of a source, {@link Calibration#NONE} where it rests on one known
   * voltage or nothing is said.
   *
   * @throws CaptureException if too little is said, in a sentence
   */
  public Calibration calibration(AudioSource source) throws CaptureException {
    if (knownVolts.isPresent()) {
      return Calibration.NONE;
    }
    if (source.isInVolts()) {
      return certain(Calibration.volts(divider.orElse(1)));
    }
    if (fullScaleVolts.isEmpty() && divider.isPresent()) {
      throw new CaptureException(
          "With a sound file, a divider also needs the volts of full scale.");
    }
    return fullScaleVolts.isPresent()
        ? certain(Calibration.fullScale(fullScaleVolts.getAsDouble(), divider.orElse(1)))
        : Calibration.NONE;
  }

  /** Returns the calibration that makes an uncalibrated reading show the known voltage. */
  public Calibration known(WaveReading uncalibrated) {
    double captured = uncalibrated.output().value() / uncalibrated.calibration().voltsPerUnit();
    return certain(Calibration.knownVoltage(knownVolts.orElseThrow(), captured));
  }

  private Calibration certain(Calibration calibration) {
    return calibrationPercent.isPresent()
        ? calibration.withRelativeU(calibrationPercent.getAsDouble() / 100)
        : calibration;
  }

  private static void requirePositive(OptionalDouble value, String what) {
    if (value.isPresent()
        && (!(value.getAsDouble() > 0) || Double.isInfinite(value.getAsDouble()))) {
      throw new IllegalArgumentException(
          what + " must be a number above 0, got " + value.getAsDouble() + ".");
    }
  }
}
