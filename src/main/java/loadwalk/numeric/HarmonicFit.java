package loadwalk.numeric;

/**
 * Fits a sine and its harmonics, y(t) = C + Σ aₙ·cos(nωt) + bₙ·sin(nωt), to evenly sampled values
 * by least squares, with time counted from the middle sample.
 *
 * <p>With one harmonic and a given frequency this is the three-parameter fit of IEEE Std 1057, with
 * a free frequency the four-parameter one. Uncertainties take the residual as white noise.
 */
public final class HarmonicFit {
  private static final int MOST_ROUNDS = 40;
  private static final double SETTLED = 1e-11;

  /** The least independent part of a column for the samples to determine its coefficient. */
  private static final double SINGULAR = 1e-12;

  private final double hertz;
  private final double hertzU;
  private final double[] c;
  private final double[][] covariance;
  private final double residualRms;

  private HarmonicFit(
      double hertz, double hertzU, double[] c, double[][] covariance, double residualRms) {
    this.hertz = hertz;
    this.hertzU = hertzU;
    this.c = c;
    this.covariance = covariance;
    this.residualRms = residualRms;
  }

  /** The coefficients, unscaled inverse and residual of one linear solution. */
  private record Solution(double[] c, double[][] inverse, double variance) {}

  /**
   * Fits at a given frequency.
   *
   * @param harmonics how many, the fundamental counted, all below half the sample rate
   * @throws IllegalArgumentException if the samples are too short or not finite
   */
  static HarmonicFit at(double hertz, int harmonics, double[] samples, double samplesPerSecond) {
    double omega = omega(samples, samplesPerSecond, hertz, harmonics);
    Solution s = solve(samples, omega, harmonics, null);
    return new HarmonicFit(hertz, 0, s.c, scaled(s.inverse, s.variance), Math.sqrt(s.variance));
  }

  /**
   * Fits the frequency too.
   *
   * @param startHertz a first frequency, off by less than half a period over all the samples
   * @param harmonics how many, the fundamental counted, all below half the sample rate
   * @throws IllegalArgumentException if the samples are too short or not finite, or the search does
   *     not converge
   */
  public static HarmonicFit near(
      double startHertz, int harmonics, double[] samples, double samplesPerSecond) {
    double omega = omega(samples, samplesPerSecond, startHertz, harmonics);
    double middle = (samples.length - 1) / 2.0;
    double limit = Math.PI / harmonics;
    double[] before = solve(samples, omega, harmonics, null).c;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      if (before[1] == 0 && before[2] == 0) {
        break;
      }
      Solution s = solve(samples, omega, harmonics, before);
      double step = s.c[s.c.length - 1] / middle;
      omega += step;
      before = s.c;
      if (!(omega > 0 && omega < limit)) {
        break;
      }
      if (Math.abs(step) * middle < SETTLED) {
        double hertz = omega * samplesPerSecond / (2 * Math.PI);
        int last = s.c.length - 1;
        double u = Math.sqrt(s.variance * s.inverse[last][last]) / middle;
        return new HarmonicFit(
            hertz,
            u * samplesPerSecond / (2 * Math.PI),
            s.c,
            scaled(s.inverse, s.variance),
            Math.sqrt(s.variance));
      }
    }
    throw new IllegalArgumentException("no sine near " + startHertz + " Hz settles on the samples");
  }

  /** Returns the frequency of the fundamental. */
  public double hertz() {
    return hertz;
  }

  /** Returns the standard uncertainty of the frequency, 0 where it was given. */
  public double hertzU() {
    return hertzU;
  }

  /** Returns the constant part. */
  public double offset() {
    return c[0];
  }

  /** Returns the standard uncertainty of the constant part. */
  public double offsetU() {
    return Math.sqrt(covariance[0][0]);
  }

  /** Returns the peak of harmonic n, the fundamental being 1. */
  public double amplitude(int n) {
    return Math.hypot(c[2 * n - 1], c[2 * n]);
  }

  /** Returns the standard uncertainty of the peak of harmonic n. */
  public double amplitudeU(int n) {
    double amplitude = amplitude(n);
    double[] gradient = new double[c.length];
    gradient[2 * n - 1] = amplitude == 0 ? 1 : c[2 * n - 1] / amplitude;
    gradient[2 * n] = amplitude == 0 ? 0 : c[2 * n] / amplitude;
    return Propagation.u(gradient, covariance);
  }

  /** Returns φ of aₙ·cos + bₙ·sin = A·cos(nωt + φ) at the middle sample, from −π to π. */
  public double phaseInMiddle(int n) {
    return Math.atan2(-c[2 * n], c[2 * n - 1]);
  }

  /** Returns the rms of the residuals, with divisor samples minus parameters. */
  public double residualRms() {
    return residualRms;
  }

  private static double omega(
      double[] samples, double samplesPerSecond, double hertz, int harmonics) {
    Samples.finite(samples, 2 * harmonics + 3, "samples");
    Samples.positive(samplesPerSecond, "samples per second");
    Samples.positive(hertz, "frequency");
    double omega = 2 * Math.PI * hertz / samplesPerSecond;
    if (harmonics < 1 || omega * harmonics >= Math.PI) {
      throw new IllegalArgumentException(
          harmonics * hertz + " Hz is beyond half of " + samplesPerSecond + " samples per second");
    }
    return omega;
  }

  /**
   * Solves the normal equations; with time from the middle sample the columns are nearly
   * independent.
   *
   * @param before the coefficients to linearise the frequency about; null holds the frequency fixed
   */
  private static Solution solve(double[] samples, double omega, int harmonics, double[] before) {
    int n = 2 * harmonics + (before == null ? 1 : 2);
    double[][] normal = new double[n][n];
    double[] right = new double[n];
    double[] row = new double[n];
    for (int k = 0; k < samples.length; k++) {
      fillRow(row, k, samples.length, omega, before);
      for (int i = 0; i < n; i++) {
        right[i] += row[i] * samples[k];
        double[] line = normal[i];
        for (int j = 0; j <= i; j++) {
          line[j] += row[i] * row[j];
        }
      }
    }
    double[][] inverse = PositiveMatrix.of(normal, SINGULAR).inverse();
    double[] c = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        c[i] += inverse[i][j] * right[j];
      }
    }
    double squares = 0;
    for (int k = 0; k < samples.length; k++) {
      fillRow(row, k, samples.length, omega, before);
      double residual = samples[k];
      for (int i = 0; i < n; i++) {
        residual -= c[i] * row[i];
      }
      squares += residual * residual;
    }
    return new Solution(c, inverse, squares / (samples.length - n));
  }

  private static void fillRow(double[] row, int k, int length, double omega, double[] before) {
    double middle = (length - 1) / 2.0;
    double cos = Math.cos(omega * (k - middle));
    double sin = Math.sin(omega * (k - middle));
    int harmonics = (row.length - 1) / 2;
    row[0] = 1;
    double re = 1;
    double im = 0;
    double drift = 0;
    for (int n = 1; n <= harmonics; n++) {
      double next = re * cos - im * sin;
      im = re * sin + im * cos;
      re = next;
      row[2 * n - 1] = re;
      row[2 * n] = im;
      if (before != null) {
        drift += n * (before[2 * n] * re - before[2 * n - 1] * im);
      }
    }
    if (before != null) {
      row[row.length - 1] = (k - middle) / middle * drift;
    }
  }

  private static double[][] scaled(double[][] matrix, double factor) {
    for (double[] line : matrix) {
      for (int j = 0; j < line.length; j++) {
        line[j] *= factor;
      }
    }
    return matrix;
  }
}
