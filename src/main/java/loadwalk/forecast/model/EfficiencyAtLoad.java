package loadwalk.forecast.model;

/**
 * The predicted efficiency at one load, as a function of the volts.
 *
 * @param parts the parts of a mixture
 * @param anchor ln of the channel volts at which the means of the parts hold
 * @param logLoads ln of the ratio of this load to that at the anchor, 0 if equal or unknown
 * @param ways how the efficiency changes with the volts
 */
public record EfficiencyAtLoad(Part[] parts, double anchor, double logLoads, Ways ways) {
  /** Weight below which a part of a product is left out. Chosen by hand. */
  private static final double LEAST_WEIGHT = 1e-3;

  /** Keeps a density above 0 in floating point, so that its logarithm is finite. */
  private static final double LEAST_DENSITY = 1e-300;

  /** Initial capacity in parts, per part of the volts. */
  private static final int USUAL_PRODUCTS = 12;

  /**
   * One part of the mixture.
   *
   * @param weight its probability
   * @param mean the middle of ln η at the anchor
   * @param variance the variance of ln η at the anchor, scatter of the readings included
   */
  record Part(double weight, double mean, double variance) {}

  /** The possible changes of the efficiency with the volts. */
  interface Ways {
    /** Returns the possible ways at a slope of ln v over ln x; the weights sum to one. */
    Way[] at(double slope);

    /** Returns the single way for a known β. */
    static Ways always(double beta) {
      Way[] only = {new Way(1, beta, 0)};
      return slope -> only;
    }
  }

  /**
   * One way in which the efficiency may change: η ∝ v^β.
   *
   * @param weight its probability
   * @param beta β
   * @param spread its standard deviation
   */
  record Way(double weight, double beta, double spread) {}

  private Way[] waysAt(double logVolts) {
    return ways.at(logLoads == 0 ? 0 : (logVolts - anchor) / logLoads);
  }

  /** Returns the middle of ln η at given channel volts. */
  double mean(double logVolts) {
    double mean = 0;
    double total = 0;
    for (Part part : parts) {
      mean += part.weight() * part.mean();
      total += part.weight();
    }
    double beta = 0;
    for (Way way : waysAt(logVolts)) {
      beta += way.weight() * way.beta();
    }
    return mean / total + beta * (logVolts - anchor);
  }

  /** Returns the standard deviation of ln η at given channel volts. */
  double deviation(double logVolts) {
    double mean = mean(logVolts);
    double fall = logVolts - anchor;
    double sum = 0;
    double total = 0;
    for (Way way : waysAt(logVolts)) {
      double loose = way.spread() * fall;
      for (Part part : parts) {
        double off = part.mean() + way.beta() * fall - mean;
        double weight = way.weight() * part.weight();
        sum += weight * (off * off + part.variance() + loose * loose);
        total += weight;
      }
    }
    return Math.sqrt(sum / total);
  }

  /**
   * Returns the density of ln of the current above idle.
   *
   * @param logVolts the density of ln of one channel's volts
   * @param channelOhms the load of a channel, ohms
   * @param supplyVolts the supply volts
   * @param idle the idle current, whose error widens the density
   */
  Mixture logAmpsAbove(Mixture logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    Mixture.Builder builder = new Mixture.Builder(USUAL_PRODUCTS * logVolts.size());
    logVolts.forEach(
        (share, middle, width) -> {
          Spot spot = spot(middle, channelOhms, supplyVolts, idle);
          for (Way way : waysAt(middle)) {
            double own = (2 - way.beta()) * width;
            addParts(builder, share, way, spot, own * own);
          }
        });
    return builder.build();
  }

  /** Adds the current predicted by one way; products of little weight are left out. */
  private void addParts(Mixture.Builder builder, double share, Way way, Spot spot, double own) {
    for (Part part : parts) {
      double weight = way.weight() * part.weight();
      if (weight > LEAST_WEIGHT) {
        double mean = spot.mean(part, way);
        builder.add(share * weight, mean, Math.sqrt(spot.variance(part, way, mean) + own));
      }
    }
  }

  /**
   * The volts at which a current is predicted.
   *
   * @param output ln of the ratio of both channels' watts to the supply volts
   * @param fall ln of the ratio of the channel volts to those at the anchor
   * @param idle the idle current, whose error widens the prediction
   */
  private record Spot(double output, double fall, IdleModel idle) {
    double mean(Part part, Way way) {
      return output - part.mean() - way.beta() * fall;
    }

    double variance(Part part, Way way, double mean) {
      double idleError = idle.relativeError(idle.amps() + Math.exp(mean));
      double loose = way.spread() * fall;
      return part.variance() + loose * loose + idleError * idleError;
    }
  }

  private Spot spot(double logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    double output = EfficiencyModel.logOutput(logVolts, channelOhms) - Math.log(supplyVolts);
    return new Spot(output, logVolts - anchor, idle);
  }

  /** Returns ln of the density of a current above idle for known channel volts. */
  double logDensity(
      double logAbove, double logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    return logDensity(logAbove, spot(logVolts, channelOhms, supplyVolts, idle), waysAt(logVolts));
  }

  private double logDensity(double logAbove, Spot spot, Way[] likely) {
    double density = 0;
    for (Way way : likely) {
      for (Part part : parts) {
        double mean = spot.mean(part, way);
        double variance = spot.variance(part, way, mean);
        double z = logAbove - mean;
        density +=
            way.weight() * part.weight() * Math.exp(-0.5 * z * z / variance) / Math.sqrt(variance);
      }
    }
    return Math.log(Math.max(LEAST_DENSITY, density)) - 0.5 * Math.log(2 * Math.PI);
  }

  /** Returns ln of the peak density of the current above idle. */
  public double highest(double logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    Spot spot = spot(logVolts, channelOhms, supplyVolts, idle);
    Way[] likely = waysAt(logVolts);
    double most = Double.NEGATIVE_INFINITY;
    for (Way way : likely) {
      for (Part part : parts) {
        most = Math.max(most, logDensity(spot.mean(part, way), spot, likely));
      }
    }
    return most;
  }
}
