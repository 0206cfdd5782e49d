package loadwalk.wave.file;

import java.util.OptionalDouble;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.WaveReading;

/**
 * The operator's settings for the volts and the channel of a capture.
 *
 * @param fullScaleVolts peak volts at the input at full scale of a sound file
 * @param divider volts at the amplifier for one volt at the input
 * @param knownVolts the rms volts that a meter showed during the capture
 * @param calibrationPercent the standard uncertainty of the calibration, percent
 * @param channel counted from 1
 * @param given what a scope's file does not state itself
 */
public record CaptureSetup(
    OptionalDouble fullScaleVolts,
    OptionalDouble divider,
    OptionalDouble knownVolts,
    OptionalDouble calibrationPercent,
    int channel,
    ScopeCsv.Given given) {
  /** No settings; the first channel. */
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

  /** Returns the setup for full-scale volts and a divider. */
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
   * Returns the calibration of a source; {@link Calibration#NONE} where it needs the known voltage
   * or nothing was set.
   *
   * @throws CaptureException if a setting is missing, in a sentence
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

  /** Returns the calibration with which an uncalibrated reading shows the known voltage. */
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
