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
  private static final int MOST_ROUNDS = 30;

  /** A sum of sine, cosine and, where the frequency is free, its derivative about the middle. */
  private record Solution(double[] c, double residualRms, double[][] covariance) {}

  /**
   * Fits amplitude, phase and offset at a known frequency.
   *
   * @param samplesPerSecond above twice the frequency
   */
  public static SineFit threeParameter(
      double[] samples, double samplesPerSecond, double frequencyHertz) {
    double omega = omega(samples, samplesPerSecond, frequencyHertz);
    return record(
        solve(samples, omega, 0, 0), omega, samplesPerSecond, (samples.length - 1) / 2.0, false);
  }

  /**
   * Fits the frequency too.
   *
   * @param startHertz a frequency that drifts from the true one by less than half a period over the
   *     samples
   * @throws IllegalArgumentException if the search does not settle on a frequency between 0 and
   *     half the sample rate
   */
  public static SineFit fourParameter(
      double[] samples, double samplesPerSecond, double startHertz) {
    double omega = omega(samples, samplesPerSecond, startHertz);
    double middle = (samples.length - 1) / 2.0;
    Solution three = solve(samples, omega, 0, 0);
    double a = three.c[0];
    double b = three.c[1];
    if (a == 0 && b == 0) {
      throw new IllegalArgumentException("the samples hold no sine near " + startHertz + " Hz");
    }
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Solution four = solve(samples, omega, a, b);
      double step = four.c[3] / middle;
      omega += step;
      a = four.c[0];
      b = four.c[1];
      if (!(omega > 0 && omega < Math.PI)) {
        break;
      }
      if (Math.abs(step) * middle < 1e-11) {
        return record(solve(samples, omega, a, b), omega, samplesPerSecond, middle, true);
      }
    }
    throw new IllegalArgumentException("no sine near " + startHertz + " Hz settles on the samples");
  }

  /** Returns the rms of the fitted sine, A/√2. */
  public double rms() {
    return amplitude / Math.sqrt(2);
  }

  /** Returns the fitted value some seconds after the first sample. */
  public double at(double seconds) {
    return offset + amplitude * Math.cos(2 * Math.PI * frequencyHertz * seconds + phaseRadians);
  }

  private static double omega(double[] samples, double samplesPerSecond, double hertz) {
    Samples.finite(samples, 5, "samples");
    Samples.positive(samplesPerSecond, "samples per second");
    Samples.positive(hertz, "frequency");
    double omega = 2 * Math.PI * hertz / samplesPerSecond;
    if (omega >= Math.PI) {
      throw new IllegalArgumentException(
          hertz + " Hz is beyond half of " + samplesPerSecond + " samples per second");
    }
    return omega;
  }

  private static SineFit record(
      Solution s, double omega, double samplesPerSecond, double middle, boolean free) {
    double amplitude = Math.hypot(s.c[0], s.c[1]);
    double phase = Math.atan2(-s.c[1], s.c[0]) - omega * middle;
    double toHertz = samplesPerSecond / (2 * Math.PI);
    double[] gradient = new double[s.c.length];
    gradient[0] = amplitude == 0 ? 1 : s.c[0] / amplitude;
    gradient[1] = amplitude == 0 ? 0 : s.c[1] / amplitude;
    return new SineFit(
        omega * toHertz,
        free ? Math.sqrt(s.covariance[3][3]) / middle * toHertz : 0,
        amplitude,
        Propagation.u(gradient, s.covariance),
        Math.IEEEremainder(phase, 2 * Math.PI),
        s.c[2],
        s.residualRms);
  }

  /**
   * Solves for the columns cos, sin, 1 and, where a or b is not 0, the change of a·cos + b·sin with
   * frequency, all about the middle sample, where they hardly depend on one another.
   */
  private static Solution solve(double[] samples, double omega, double a, double b) {
    int n = a == 0 && b == 0 ? 3 : 4;
    double middle = (samples.length - 1) / 2.0;
    double[][] normal = new double[n][n];
    double[] right = new double[n];
    double[] row = new double[n];
    for (int k = 0; k < samples.length; k++) {
      fillRow(row, (k - middle) / middle, omega * (k - middle), a, b);
      for (int i = 0; i < n; i++) {
        right[i] += row[i] * samples[k];
        for (int j = 0; j <= i; j++) {
          normal[i][j] += row[i] * row[j];
        }
      }
    }
    double[][] inverse = invert(normal);
    double[] c = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        c[i] += inverse[i][j] * right[j];
      }
    }
    double squares = 0;
    for (int k = 0; k < samples.length; k++) {
      fillRow(row, (k - middle) / middle, omega * (k - middle), a, b);
      double residual = samples[k];
      for (int i = 0; i < n; i++) {
        residual -= c[i] * row[i];
      }
      squares += residual * residual;
    }
    double variance = squares / (samples.length - n);
    for (double[] line : inverse) {
      for (int j = 0; j < n; j++) {
        line[j] *= variance;
      }
    }
    return new Solution(c, Math.sqrt(variance), inverse);
  }

  private static void fillRow(double[] row, double place, double angle, double a, double b) {
    row[0] = Math.cos(angle);
    row[1] = Math.sin(angle);
    row[2] = 1;
    if (row.length == 4) {
      row[3] = place * (b * row[0] - a * row[1]);
    }
  }

  /** Inverts a symmetric matrix given by its lower half, by Cholesky decomposition. */
  private static double[][] invert(double[][] lower) {
    int n = lower.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = lower[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j && !(sum > 1e-12 * lower[i][i])) {
          throw new IllegalArgumentException("the samples are too short for a sine fit");
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    double[][] inverse = new double[n][n];
    for (int column = 0; column < n; column++) {
      double[] x = new double[n];
      for (int i = 0; i < n; i++) {
        double sum = i == column ? 1 : 0;
        for (int k = 0; k < i; k++) {
          sum -= l[i][k] * x[k];
        }
        x[i] = sum / l[i][i];
      }
      for (int i = n - 1; i >= 0; i--) {
        for (int k = i + 1; k < n; k++) {
          x[i] -= l[k][i] * x[k];
        }
        x[i] /= l[i][i];
        inverse[i][column] = x[i];
      }
    }
    return inverse;
  }
}
