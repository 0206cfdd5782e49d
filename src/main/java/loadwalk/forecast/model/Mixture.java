package loadwalk.forecast.model;

import java.util.Arrays;
import loadwalk.numeric.Quantiles;

/**
 * A weighted sum of normal densities: the form of every predictive density here.
 *
 * <p>A mixture results when a posterior has a few discrete parameters and one on a grid, and the
 * linear parameters are integrated out in closed form. It can be skewed and heavy-tailed, and its
 * density costs one exponential per part.
 */
public final class Mixture {
  private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  /** Share of the total weight below which a part is left out: too little to affect a doubt. */
  private static final double LEAST_WEIGHT = 1e-7;

  /**
   * Half the squared distance from which e^−x is left out: the smallest normal double is near
   * e^−708.
   */
  private static final double FAR = 600;

  /**
   * Standard deviations beyond a bound at which the distance is capped: further out the formulas
   * lose their digits.
   */
  private static final double FAR_BEYOND = -6;

  /** Standard deviations below a bound from which the bound cuts off nothing, 1e-9. */
  private static final double FAR_BELOW = 6;

  /**
   * Height relative to the tallest part from which a part may contain the highest point. Chosen by
   * hand.
   */
  private static final double TALL = 0.5;

  /** Smallest part of the variance that a bound leaves, against rounding. Chosen by hand. */
  private static final double LEAST_VARIANCE_LEFT = 0.05;

  /** Accuracy of a quantile; the argument is a logarithm, so 0.01 %. */
  private static final double QUANTILE_WIDTH = 1e-4;

  /** Error in probability at which a quantile is close enough. */
  private static final double QUANTILE_PART = 2e-5;

  /** Initial capacity in parts. */
  private static final int USUAL_PARTS = 24;

  /** Number of cells, by position, into which a compressed mixture is merged. Chosen by hand. */
  private static final int BINS = 24;

  /**
   * Width classes relative to the narrowest part; parts are merged within a class. Chosen by hand.
   */
  private static final double[] WIDTH_CLASSES = {2.5, 8, Double.POSITIVE_INFINITY};

  /** Smallest width of a cell, for parts all in one place. */
  private static final double LEAST_STEP = 1e-9;

  private final double[] weights;
  private final double[] means;
  private final double[] deviations;

  private Mixture(double[] weights, double[] means, double[] deviations) {
    this.weights = weights;
    this.means = means;
    this.deviations = deviations;
  }

  /** Returns a single normal density. */
  static Mixture normal(double mean, double deviation) {
    return new Builder().add(1, mean, deviation).build();
  }

  /** Returns the natural logarithm of the density, valid far out in the tails too. */
  public double logDensity(double at) {
    double sum = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      double z = (at - means[i]) / deviations[i];
      double half = 0.5 * z * z;
      nearest = Math.min(nearest, half);
      if (half < FAR) {
        sum += weights[i] / deviations[i] * Math.exp(-half);
      }
    }
    return sum > 0 ? Math.log(sum) - LOG_ROOT_TWO_PI : logDensityFarOut(at, nearest);
  }

  /** Returns ln of the peak density, taken as the highest value at the middles of tall parts. */
  public double highest() {
    double tallest = 0;
    for (int i = 0; i < weights.length; i++) {
      tallest = Math.max(tallest, weights[i] / deviations[i]);
    }
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] / deviations[i] > TALL * tallest) {
        most = Math.max(most, logDensity(means[i]));
      }
    }
    return most;
  }

  private double logDensityFarOut(double at, double nearest) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      double z = (at - means[i]) / deviations[i];
      sum += weights[i] / deviations[i] * Math.exp(nearest - 0.5 * z * z);
    }
    return Math.log(sum) - nearest - LOG_ROOT_TWO_PI;
  }

  /** Returns the probability at or below a value. */
  double cumulative(double at) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * Normal.quickCumulative((at - means[i]) / deviations[i]);
    }
    return sum;
  }

  /**
   * Returns the p-quantile, to 1e-4.
   *
   * <p>Newton's method, because the density costs nothing beyond the distribution; a step that
   * leaves the bracket is replaced by the middle of the bracket.
   */
  double quantile(double p) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double z = Quantiles.normalQuantile(p);
    for (int i = 0; i < weights.length; i++) {
      low = Math.min(low, means[i] + z * deviations[i]);
      high = Math.max(high, means[i] + z * deviations[i]);
    }
    double at = Math.min(high, Math.max(low, mean() + z * deviation()));
    while (high - low > QUANTILE_WIDTH) {
      double off = -p;
      double density = 0;
      for (int i = 0; i < weights.length; i++) {
        double unit = (at - means[i]) / deviations[i];
        double height = Normal.density(unit);
        off += weights[i] * Normal.cumulative(unit, height);
        density += weights[i] / deviations[i] * height;
      }
      if (Math.abs(off) < QUANTILE_PART) {
        return at;
      }
      low = off < 0 ? at : low;
      high = off < 0 ? high : at;
      double next = at - off / density;
      at = next > low && next < high ? next : 0.5 * (low + high);
    }
    return at;
  }

  double mean() {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * means[i];
    }
    return sum;
  }

  double deviation() {
    double mean = mean();
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      double off = means[i] - mean;
      sum += weights[i] * (off * off + deviations[i] * deviations[i]);
    }
    return Math.sqrt(sum);
  }

  int size() {
    return weights.length;
  }

  /** Returns the density of {@code scale · X + shift + N(0, extra²)}. */
  public Mixture affine(double scale, double shift, double extra) {
    double[] moved = new double[means.length];
    double[] widened = new double[means.length];
    for (int i = 0; i < means.length; i++) {
      moved[i] = scale * means[i] + shift;
      double own = scale * deviations[i];
      widened[i] = Math.sqrt(own * own + extra * extra);
    }
    return new Mixture(weights, moved, widened);
  }

  /**
   * Returns the mixture with neighbouring parts of similar width merged, keeping mean and variance,
   * so that products of mixtures stay small.
   */
  Mixture compressed() {
    if (weights.length <= BINS) {
      return this;
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double narrow = Double.POSITIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      low = Math.min(low, means[i]);
      high = Math.max(high, means[i]);
      narrow = Math.min(narrow, deviations[i]);
    }
    int cells = BINS * WIDTH_CLASSES.length;
    double[] weight = new double[cells];
    double[] first = new double[cells];
    double[] second = new double[cells];
    double step = Math.max(LEAST_STEP, (high - low) / BINS);
    for (int i = 0; i < weights.length; i++) {
      int kind = 0;
      while (deviations[i] > WIDTH_CLASSES[kind] * narrow) {
        kind++;
      }
      int cell = kind * BINS + Math.min(BINS - 1, (int) ((means[i] - low) / step));
      double offset = means[i] - low;
      weight[cell] += weights[i];
      first[cell] += weights[i] * offset;
      second[cell] += weights[i] * (offset * offset + deviations[i] * deviations[i]);
    }
    Builder builder = new Builder();
    for (int cell = 0; cell < cells; cell++) {
      if (weight[cell] > 0) {
        double mean = first[cell] / weight[cell];
        double variance = Math.max(narrow * narrow, second[cell] / weight[cell] - mean * mean);
        builder.add(weight[cell], low + mean, Math.sqrt(variance));
      }
    }
    return builder.build();
  }

  /**
   * Returns the mixture cut off above a bound. Each part becomes the normal with the mean and
   * variance of its remainder (truncated normal, textbook form, from memory).
   *
   * @param bound where to cut
   * @param softness the standard deviation of the bound
   * @param certainty the share of the weight to which the bound applies; the rest is unchanged
   */
  Mixture heldBelow(double bound, double softness, double certainty) {
    Builder builder = new Builder();
    for (int i = 0; i < weights.length; i++) {
      double deviation = deviations[i];
      double whole = Math.sqrt(deviation * deviation + softness * softness);
      double z = Math.max(FAR_BEYOND, (bound - means[i]) / whole);
      if (z > FAR_BELOW) {
        builder.add(weights[i], means[i], deviation);
        continue;
      }
      double height = Normal.density(z);
      double left = Math.max(LEAST_WEIGHT, Normal.cumulative(z, height));
      double pull = height / left;
      double share = deviation / whole;
      double part = Math.max(LEAST_VARIANCE_LEFT, 1 - share * share * pull * (pull + z));
      builder.add(
          certainty * weights[i] * left,
          means[i] - share * deviation * pull,
          deviation * Math.sqrt(part));
      builder.add((1 - certainty) * weights[i], means[i], deviation);
    }
    return builder.build();
  }

  /** A receiver of parts: weight, mean and standard deviation. */
  interface PartTaker {
    void take(double weight, double mean, double deviation);
  }

  /** Passes all parts to a receiver, one by one. */
  void forEach(PartTaker taker) {
    for (int i = 0; i < weights.length; i++) {
      taker.take(weights[i], means[i], deviations[i]);
    }
  }

  /** Adds all parts, weighted, to a builder. */
  public void addTo(Builder builder, double weight) {
    for (int i = 0; i < weights.length; i++) {
      builder.add(weight * weights[i], means[i], deviations[i]);
    }
  }

  /** Adds all parts of {@code scale · X + shift + N(0, extra²)}, weighted, to a builder. */
  void addMoved(Builder builder, double weight, double scale, double shift, double extra) {
    for (int i = 0; i < weights.length; i++) {
      double deviation = scale * deviations[i];
      builder.add(
          weight * weights[i],
          scale * means[i] + shift,
          Math.sqrt(deviation * deviation + extra * extra));
    }
  }

  /** A builder that collects parts; weights need not sum to one. */
  public static final class Builder {
    private double[] weights;
    private double[] means;
    private double[] deviations;
    private int size;

    /** Creates a builder with the usual capacity. */
    public Builder() {
      this(USUAL_PARTS);
    }

    /** Creates a builder with a capacity in parts; it grows if needed. */
    public Builder(int parts) {
      weights = new double[parts];
      means = new double[parts];
      deviations = new double[parts];
    }

    /** Adds a part. */
    public Builder add(double weight, double mean, double deviation) {
      if (size == weights.length) {
        weights = Arrays.copyOf(weights, 2 * size);
        means = Arrays.copyOf(means, 2 * size);
        deviations = Arrays.copyOf(deviations, 2 * size);
      }
      weights[size] = weight;
      means[size] = mean;
      deviations[size++] = deviation;
      return this;
    }

    /** Returns the mixture with weights scaled to sum to one and negligible parts left out. */
    public Mixture build() {
      double total = 0;
      for (int i = 0; i < size; i++) {
        total += weights[i];
      }
      if (!(total > 0) || Double.isInfinite(total)) {
        throw new IllegalStateException("a mixture needs weight above 0, got " + total);
      }
      int kept = 0;
      for (int i = 0; i < size; i++) {
        if (weights[i] > LEAST_WEIGHT * total) {
          weights[kept] = weights[i] / total;
          means[kept] = means[i];
          deviations[kept++] = deviations[i];
        }
      }
      return new Mixture(
          Arrays.copyOf(weights, kept),
          Arrays.copyOf(means, kept),
          Arrays.copyOf(deviations, kept));
    }
  }
}
