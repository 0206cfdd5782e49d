package loadwalk.wave;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.AudioSource;

/** Makes sources and signals for tests. */
public final class Rows {
  private Rows() {}

  /** Serves rows in memory as a source, in uneven blocks. */
  public static AudioSource source(double rate, double[]... rows) {
    return new AudioSource() {
      private int at;
      private int turn;

      @Override
      public double samplesPerSecond() {
        return rate;
      }

      @Override
      public int channels() {
        return rows.length;
      }

      @Override
      public int read(double[][] block) {
        if (at >= rows[0].length) {
          return -1;
        }
        turn++;
        int most = Math.max(1, block[0].length - 7 * (turn % 5));
        int count = Math.min(most, rows[0].length - at);
        for (int c = 0; c < rows.length; c++) {
          System.arraycopy(rows[c], at, block[c], 0, count);
        }
        at += count;
        return count;
      }
    };
  }

  /** Returns shape(phase in radians) at a frequency. */
  public static double[] wave(
      double rate, double seconds, double hertz, DoubleUnaryOperator shape) {
    double[] row = new double[(int) Math.round(rate * seconds)];
    for (int i = 0; i < row.length; i++) {
      row[i] = shape.applyAsDouble(2 * Math.PI * (hertz * i / rate + 0.123));
    }
    return row;
  }

  /** Swings the frequency by a part, at a slow rate, and adds noise of an rms. */
  public static double[] swingingWave(
      double rate,
      double seconds,
      double hertz,
      double part,
      double swingHertz,
      double noise,
      long seed,
      DoubleUnaryOperator shape) {
    Random random = new Random(seed);
    double[] row = new double[(int) Math.round(rate * seconds)];
    for (int i = 0; i < row.length; i++) {
      double t = i / rate;
      double turns =
          hertz * t
              + part * hertz / (2 * Math.PI * swingHertz) * Math.sin(2 * Math.PI * swingHertz * t)
              + 0.37;
      row[i] = shape.applyAsDouble(2 * Math.PI * turns) + noise * random.nextGaussian();
    }
    return row;
  }

  public static WaveReading reading(double rate, double[] row) throws Exception {
    return WaveAnalysis.of(source(rate, row), 1, Calibration.NONE);
  }

  public static double clip(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
