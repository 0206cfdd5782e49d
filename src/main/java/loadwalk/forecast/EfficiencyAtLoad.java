package loadwalk.forecast;

/**
 * What is told of the efficiency at one load, for any volts there.
 *
 * @param parts the parts of a mixture
 * @param anchor ln of the channel volts at which the means of the parts hold
 * @param looseness the standard deviation of β
 */
record EfficiencyAtLoad(Part[] parts, double anchor, double looseness) {
  private static final double LEAST_WEIGHT = 1e-4;

  /**
   * One part.
   *
   * @param weight its probability
   * @param mean the middle of ln η at the anchor
   * @param beta the change of ln η per ln of the channel volts
   * @param variance the variance of ln η at the anchor, scatter of the readings included
   */
  record Part(double weight, double mean, double beta, double variance) {}

  /** Returns the middle of ln η at given channel volts. */
  double mean(double logVolts) {
    double sum = 0;
    double total = 0;
    for (Part part : parts) {
      sum += part.weight() * (part.mean() + part.beta() * (logVolts - anchor));
      total += part.weight();
    }
    return sum / total;
  }

  /** Returns the standard deviation of ln η at given channel volts. */
  double deviation(double logVolts) {
    double mean = mean(logVolts);
    double fall = logVolts - anchor;
    double sum = 0;
    double total = 0;
    for (Part part : parts) {
      double off = part.mean() + part.beta() * fall - mean;
      sum += part.weight() * (off * off + part.variance() + looseness * looseness * fall * fall);
      total += part.weight();
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
    double middle = logVolts.mean();
    double output = EfficiencyModel.logOutput(middle, channelOhms) - Math.log(supplyVolts);
    double fall = middle - anchor;
    Mixture.Builder builder = new Mixture.Builder();
    for (Part part : parts) {
      if (part.weight() > LEAST_WEIGHT) {
        double scale = 2 - part.beta();
        double mean = output - part.mean() - part.beta() * fall;
        double idleError = idle.relativeError(idle.amps() + Math.exp(mean));
        double loose = looseness * fall;
        double deviation = Math.sqrt(part.variance() + loose * loose + idleError * idleError);
        if (scale == 0) {
          builder.add(part.weight(), mean, deviation);
        } else {
          logVolts.addMoved(builder, part.weight(), scale, mean - scale * middle, deviation);
        }
      }
    }
    return builder.build();
  }

  /** Returns ln of the density of a current above idle where the channel's volts are known. */
  double logDensity(
      double logAbove, double logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    double output = EfficiencyModel.logOutput(logVolts, channelOhms) - Math.log(supplyVolts);
    double fall = logVolts - anchor;
    double density = 0;
    for (Part part : parts) {
      double mean = output - part.mean() - part.beta() * fall;
      double idleError = idle.relativeError(idle.amps() + Math.exp(mean));
      double loose = looseness * fall;
      double variance = part.variance() + loose * loose + idleError * idleError;
      double z = logAbove - mean;
      density += part.weight() * Math.exp(-0.5 * z * z / variance) / Math.sqrt(variance);
    }
    return Math.log(Math.max(1e-300, density)) - 0.5 * Math.log(2 * Math.PI);
  }

  /** Returns ln of the density of the current above idle where it is highest. */
  double highest(double logVolts, double channelOhms, double supplyVolts, IdleModel idle) {
    double output = EfficiencyModel.logOutput(logVolts, channelOhms) - Math.log(supplyVolts);
    double most = Double.NEGATIVE_INFINITY;
    for (Part part : parts) {
      double mean = output - part.mean() - part.beta() * (logVolts - anchor);
      most = Math.max(most, logDensity(mean, logVolts, channelOhms, supplyVolts, idle));
    }
    return most;
  }
}
