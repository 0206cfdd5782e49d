package loadwalk.forecast;

import java.util.List;
import java.util.Optional;
import loadwalk.json.Shape;
import loadwalk.numeric.Quantiles;

/**
 * A predicted range of one reading, at the forecast's level.
 *
 * @param low the lower end, in the reading's unit
 * @param middle the likeliest value
 * @param high the upper end
 */
public record Band(double low, double middle, double high) {
  /** The probability that a reading falls in its band. */
  public static final double LEVEL = 0.95;

  private static final double END_QUANTILE = Quantiles.normalQuantile((1 + LEVEL) / 2);

  static final Band BLANK = new Band(0, 0, 0);

  private static final double MOST = Double.MAX_VALUE;

  /** Checks that the ends are finite and in order. */
  public Band {
    boolean ordered = low <= middle && middle <= high;
    if (!ordered || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "a band needs finite ends in order, got " + low + ", " + middle + ", " + high);
    }
  }

  /** Reads or writes a band under a key: {@code [low, middle, high]}. */
  static Band shape(Shape in, String key, Band band) {
    List<Double> ends = in.numbers(key, List.of(band.low, band.middle, band.high), -MOST, MOST);
    if (ends.size() != 3) {
      in.refuse(key, "a band must be a list of three numbers");
      return band;
    }
    return new Band(ends.get(0), ends.get(1), ends.get(2));
  }

  static Optional<Band> shape(Shape in, String key, Optional<Band> band) {
    return in.has(key, band.isPresent()) ? Optional.of(shape(in, key, band.orElse(BLANK))) : band;
  }

  /**
   * Returns the value that is exceeded with a chance below one half: a normal above the middle
   * whose end is that of the band, in logarithms where the middle lies above zero.
   *
   * @param chance above 0, up to 0.5
   */
  public double exceededWith(double chance) {
    double share = Quantiles.normalQuantile(1 - chance) / END_QUANTILE;
    return middle > 0 ? middle * Math.pow(high / middle, share) : middle + share * (high - middle);
  }

  /** Returns whether a value lies inside, ends included; NaN never does. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
