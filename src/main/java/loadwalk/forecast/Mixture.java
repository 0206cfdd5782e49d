package loadwalk.forecast;

import java.util.Arrays;

/**
 * A weighted sum of normal densities: the form of every predictive density here.
 *
 * <p>A mixture is what a posterior over a few discrete and one gridded parameter leaves behind once
 * the linear parameters are integrated out in closed form. It can be skewed and heavy tailed, and
 * its density costs one exponential per part.
 */
final class Mixture {
  private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);
  private static final double LEAST_WEIGHT = 1e-7;

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

  /** Returns the natural logarithm of the density. */
  double logDensity(double at) {
    double best = Double.NEGATIVE_INFINITY;
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      double z = (at - means[i]) / deviations[i];
      double term = Math.log(weights[i] / deviations[i]) - 0.5 * z * z;
      if (term > best) {
        sum = sum * Math.exp(best - term) + 1;
        best = term;
      } else {
        sum += Math.exp(term - best);
      }
    }
    return best + Math.log(sum) - LOG_ROOT_TWO_PI;
  }

  /** Returns the probability of lying at or below a value. */
  double cumulative(double at) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * Normal.cumulative((at - means[i]) / deviations[i]);
    }
    return sum;
  }

  /** Returns the value below which a part p of the probability lies, by bisection to 1e-6. */
  double quantile(double p) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double z = Normal.quantile(p);
    for (int i = 0; i < weights.length; i++) {
      low = Math.min(low, means[i] + z * deviations[i]);
      high = Math.max(high, means[i] + z * deviations[i]);
    }
    while (high - low > 1e-5) {
      double middle = 0.5 * (low + high);
      if (cumulative(middle) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
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
  Mixture affine(double scale, double shift, double extra) {
    double[] moved = new double[means.length];
    double[] widened = new double[means.length];
    for (int i = 0; i < means.length; i++) {
      moved[i] = scale * means[i] + shift;
      widened[i] = Math.hypot(scale * deviations[i], extra);
    }
    return new Mixture(weights, moved, widened);
  }

  /** Adds all parts, weighted, to a builder. */
  void addTo(Builder builder, double weight) {
    for (int i = 0; i < weights.length; i++) {
      builder.add(weight * weights[i], means[i], deviations[i]);
    }
  }

  /** Gathers parts; weights need not sum to one. */
  static final class Builder {
    private double[] weights = new double[64];
    private double[] means = new double[64];
    private double[] deviations = new double[64];
    private int size;

    Builder add(double weight, double mean, double deviation) {
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

    /** Returns the mixture, its weights scaled to one, parts of no weight left out. */
    Mixture build() {
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
