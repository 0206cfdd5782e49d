package loadwalk.forecast;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Predicts the supply current above idle from the output, through the efficiency at the limit.
 *
 * <p>Model of a reading: ln η = c + β ln v + δ(x) + scatter, with η = 2 v²/x over Vs (I − I idle).
 * β is 0 where losses grow with output (class D) and 1 where the current follows the load current
 * alone (class B on stiff rails: I = I idle + a Σ load current). Priors of c and β come from the
 * class of the amplifier; all is linear and normal, so the posterior is exact for each of a few
 * common scales of the errors, which are mixed by their evidence.
 */
final class EfficiencyModel {
  private static final double SCATTER = 0.016;
  private static final double WALK = 0.012;
  private static final double[] SCALES = {0.8, 1.5, 4, 12};
  private static final double[] SCALE_PRIORS = {0.60, 0.35, 0.045, 0.005};

  private final ClassPrior prior;
  private final int size;
  private final double[] logVolts;
  private final double[] ohms;
  private final double[] scatter;
  private final double reference;
  private final PositiveMatrix[] matrices = new PositiveMatrix[SCALES.length];
  private final double[][] pulls = new double[SCALES.length][];
  private final double[] shares = new double[SCALES.length];

  EfficiencyModel(ClassPrior prior, IdleModel idle, List<WalkReadings.Point> all, double supply) {
    this.prior = prior;
    List<WalkReadings.Point> points = all.stream().filter(p -> p.supplyAmps() > 0).toList();
    size = points.size();
    logVolts = new double[size];
    ohms = new double[size];
    scatter = new double[size];
    double[] residuals = new double[size];
    reference = size == 0 ? 0 : points.get(0).logVolts();
    for (int i = 0; i < size; i++) {
      WalkReadings.Point point = points.get(i);
      double volts = Double.isNaN(point.supplyVolts()) ? supply : point.supplyVolts();
      logVolts[i] = point.logVolts();
      ohms[i] = point.channelOhms();
      scatter[i] = Math.hypot(SCATTER, idle.relativeError(point.supplyAmps()));
      residuals[i] =
          logOutput(point.logVolts(), point.channelOhms())
              - Math.log(volts)
              - idle.logAbove(point.supplyAmps())
              - prior.mean()
              - prior.slope() * (logVolts[i] - reference);
    }
    weigh(residuals);
  }

  /**
   * What the class of an amplifier tells of its efficiency at the limit.
   *
   * @param mean the middle of ln η
   * @param spread the standard deviation of ln η
   * @param slope the middle of β
   * @param slopeSpread the standard deviation of β
   */
  record ClassPrior(double mean, double spread, double slope, double slopeSpread) {
    /** Returns the prior of a class as written; figures are common practice, no source. */
    static ClassPrior of(Optional<String> amplifierClass) {
      String name = amplifierClass.map(c -> c.trim().toUpperCase(Locale.ROOT)).orElse("");
      return switch (name) {
        case "D", "T" -> new ClassPrior(Math.log(0.79), 0.11, 0.1, 0.25);
        case "A" -> new ClassPrior(Math.log(0.45), 0.25, 0.6, 0.4);
        case "B", "AB", "A/B" -> new ClassPrior(Math.log(0.57), 0.17, 0.5, 0.4);
        case "G", "H" -> new ClassPrior(Math.log(0.64), 0.16, 0.5, 0.4);
        default -> new ClassPrior(Math.log(0.63), 0.22, 0.4, 0.45);
      };
    }
  }

  /** Returns ln of the watts of both channels from ln of one channel's volts. */
  static double logOutput(double logChannelVolts, double channelOhms) {
    return Math.log(2) + 2 * logChannelVolts - Math.log(channelOhms);
  }

  /** Returns how many scales are mixed. */
  int parts() {
    return SCALES.length;
  }

  /** Returns the weight of one scale. */
  double share(int part) {
    return shares[part];
  }

  /** Returns the prediction of ln η under one scale around a point of the output. */
  Local at(int part, double logChannelVolts, double channelOhms) {
    double anchor = size == 0 ? logChannelVolts : reference;
    double offset = logChannelVolts - anchor;
    double[] covariances = new double[size];
    double scale = SCALES[part] * SCALES[part];
    double slope = prior.slope();
    double mean = prior.mean() + prior.slope() * offset;
    for (int i = 0; i < size; i++) {
      double own = logVolts[i] - reference;
      double walk = walk(ohms[i], channelOhms);
      double steep = prior.slopeSpread() * prior.slopeSpread() * own;
      covariances[i] = prior.spread() * prior.spread() + steep * offset + scale * walk;
      slope += steep * pulls[part][i];
      mean += covariances[i] * pulls[part][i];
    }
    double variance =
        prior.spread() * prior.spread()
            + Math.pow(prior.slopeSpread() * offset, 2)
            + scale * (walk(channelOhms, channelOhms) + SCATTER * SCATTER);
    return new Local(
        mean, slope, Math.sqrt(Math.max(1e-6, variance - explained(part, covariances))));
  }

  /**
   * The prediction of ln η near a point of the output.
   *
   * @param mean its middle there
   * @param slope its change per ln of the channel volts
   * @param deviation its standard deviation, scatter of the readings included
   */
  record Local(double mean, double slope, double deviation) {}

  private double explained(int part, double[] covariances) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      double[] row = matrices[part].inverse()[i];
      for (int j = 0; j < size; j++) {
        sum += covariances[i] * row[j] * covariances[j];
      }
    }
    return sum;
  }

  private void weigh(double[] residuals) {
    double[] logs = new double[SCALES.length];
    for (int part = 0; part < SCALES.length; part++) {
      matrices[part] = PositiveMatrix.of(covariance(SCALES[part] * SCALES[part]));
      pulls[part] = new double[size];
      double squares = 0;
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          pulls[part][i] += matrices[part].inverse()[i][j] * residuals[j];
        }
        squares += pulls[part][i] * residuals[i];
      }
      logs[part] =
          Math.log(SCALE_PRIORS[part]) - 0.5 * squares - 0.5 * matrices[part].logDeterminant();
    }
    double best = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      best = Math.max(best, log);
    }
    double total = 0;
    for (int part = 0; part < SCALES.length; part++) {
      shares[part] = Math.exp(logs[part] - best);
      total += shares[part];
    }
    for (int part = 0; part < SCALES.length; part++) {
      shares[part] /= total;
    }
  }

  private double[][] covariance(double scale) {
    double[][] covariance = new double[size][size];
    double spread = prior.spread() * prior.spread();
    double steep = prior.slopeSpread() * prior.slopeSpread();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        covariance[i][j] =
            spread
                + steep * (logVolts[i] - reference) * (logVolts[j] - reference)
                + scale * walk(ohms[i], ohms[j])
                + (i == j ? scale * scatter[i] * scatter[i] : 0);
      }
    }
    return covariance;
  }

  private static double walk(double ohms, double otherOhms) {
    double octaves = Math.max(0, Math.log(16 / Math.max(ohms, otherOhms)) / Math.log(2));
    return WALK * WALK * octaves;
  }
}
