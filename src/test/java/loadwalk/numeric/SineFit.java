package loadwalk.numeric;

/**
 * Fits y(t) = A·cos(2πft + φ) + C to evenly sampled values by least squares (IEEE Std 1057, three
 * and four parameters).
 *
 * <p>The uncertainties take the residual as white noise; with distortion in the residual they are
 * an order of size, not a bound.
 *
 * @param frequencyHertz f
 * @param frequencyU its standard uncertainty, 0 where f was given
 * @param amplitude A, 0 or more, peak, in the unit of the samples
 * @param amplitudeU its standard uncertainty
 * @param phaseRadians φ at the first sample, from −π to π
 * @param offset C
 * @param residualRms the root mean square of what is left, divided by samples minus parameters
 */
public record SineFit(
    double frequencyHertz,
    double frequencyU,
    double amplitude,
    double amplitudeU,
    double phaseRadians,
    double offset,
    double residualRms) {
  /**
   * Fits amplitude, phase and offset at a known frequency.
   *
   * @param samplesPerSecond above twice the frequency
   * @throws IllegalArgumentException if the samples are too short or not finite
   */
  public static SineFit threeParameter(
      double[] samples, double samplesPerSecond, double frequencyHertz) {
    return of(
        HarmonicFit.at(frequencyHertz, 1, samples, samplesPerSecond), samples, samplesPerSecond);
  }

  /**
   * Fits the frequency too.
   *
   * @param startHertz a frequency that drifts from the true one by less than half a period over the
   *     samples
   * @throws IllegalArgumentException if the samples are too short or not finite, or the search does
   *     not settle on a frequency between 0 and half the sample rate
   */
  public static SineFit fourParameter(
      double[] samples, double samplesPerSecond, double startHertz) {
    return of(
        HarmonicFit.near(startHertz, 1, samples, samplesPerSecond), samples, samplesPerSecond);
  }

  /** Returns the rms of the fitted sine, A/√2. */
  public double rms() {
    return amplitude / Math.sqrt(2);
  }

  /** Returns the fitted value some seconds after the first sample. */
  public double at(double seconds) {
    return offset + amplitude * Math.cos(2 * Math.PI * frequencyHertz * seconds + phaseRadians);
  }

  private static SineFit of(HarmonicFit fit, double[] samples, double samplesPerSecond) {
    double middleSeconds = (samples.length - 1) / 2.0 / samplesPerSecond;
    double phase = fit.phaseInMiddle(1) - 2 * Math.PI * fit.hertz() * middleSeconds;
    return new SineFit(
        fit.hertz(),
        fit.hertzU(),
        fit.amplitude(1),
        fit.amplitudeU(1),
        Math.IEEEremainder(phase, 2 * Math.PI),
        fit.offset(),
        fit.residualRms());
  }
}
