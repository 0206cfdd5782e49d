package loadwalk.wave.spectrum;

import java.util.Optional;

/** Finds the strongest line of a capture. */
public final class Peaks {
  private Peaks() {}

  /**
   * Returns the top of the parabola through the logarithms of a peak and its neighbours, in bins.
   */
  public static double interpolate(double[] power, int peak) {
    if (peak < 1 || peak >= power.length - 1 || !(power[peak - 1] > 0) || !(power[peak + 1] > 0)) {
      return peak;
    }
    double left = Math.log(power[peak - 1]);
    double top = Math.log(power[peak]);
    double right = Math.log(power[peak + 1]);
    double bend = left - 2 * top + right;
    return bend < 0 ? peak + 0.5 * (left - right) / bend : peak;
  }

  /**
   * Returns the frequency of the strongest line; empty where none stands out.
   *
   * @param count how many samples there are
   */
  public static Optional<Double> strongestHertz(double[] samples, int count, double rate) {
    double mean = 0;
    for (int i = 0; i < count; i++) {
      mean += samples[i] / count;
    }
    double squares = 0;
    double[] row = new double[Fft.sizeFor(2L * count)];
    for (int i = 0; i < count; i++) {
      row[i] = samples[i] - mean;
      squares += row[i] * row[i];
    }
    Fft fft = new Fft(row.length);
    fft.transform(row);
    double[] power = new double[row.length / 2 + 1];
    int peak = 1;
    for (int k = 1; k < power.length; k++) {
      power[k] = fft.squared(k);
      peak = power[k] > power[peak] ? k : peak;
    }
    // The line of a pure sine holds |X|² = n·Σx²/2; one with wow still holds a good part of it.
    boolean standsOut = power[peak] > 0.05 * count * squares / 2;
    if (!standsOut || !(squares > 0)) {
      return Optional.empty();
    }
    return Optional.of(interpolate(power, peak) * rate / row.length);
  }
}
