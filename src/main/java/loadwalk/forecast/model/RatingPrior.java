package loadwalk.forecast.model;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;

/**
 * The output that ratings and fuses suggest before the first reading.
 *
 * <p>Ratings of car amplifiers are off by up to 3 dB either way. So a rating is a flat density of
 * ±3 dB with soft shoulders and a thin wide tail, with the same error for all ratings of one
 * amplifier. Without ratings the fuses give the order of magnitude: they are chosen near the
 * current at full power (common practice, no source). Without either, the amplifier may be any from
 * 5 W to 1 kW per channel.
 */
final class RatingPrior {
  /**
   * Half of the flat part, as ln of volts: ratings are off by up to 3 dB either way. Common
   * practice, no source.
   */
  private static final double FLAT = 3 * Math.log(10) / 20;

  /** Number of normals that make up the flat part. Chosen by hand. */
  private static final int STRATA = 10;

  /** Standard deviation of its shoulders, ln volts. Set on the experiment. */
  static final double SHOULDER = 0.025;

  /** Share of ratings that are off by more. Set on the experiment. */
  static final double TAIL_WEIGHT = 0.003;

  /** Standard deviation of ln volts of these. Chosen by hand. */
  static final double TAIL = 0.5;

  /** Watts below which a rating is not that of a car amplifier. Common practice, no source. */
  private static final double LEAST_WATTS = 0.5;

  /** Watts above which a rating is not that of a car amplifier. Common practice, no source. */
  private static final double MOST_WATTS = 5000;

  /**
   * Standard deviation of ln volts of the ratings of one amplifier against each other. Chosen by
   * hand.
   */
  static final double RATING_SCATTER = 0.08;

  /**
   * ln of the usual source resistance of a channel, ohms: with regulated rails it is that of the
   * output stage, other rails sag more; 2 Ω takes 1.9 or 1.8 times the power of 4 Ω (common
   * practice, no source).
   */
  static final double REGULATED_LOG_SOURCE_OHMS = Math.log(0.07);

  /** Standard deviation of ln of it. Set on the experiment. */
  static final double REGULATED_SPREAD = 1.1;

  /** The same for rails that are not regulated. Common practice, no source. */
  static final double SAGGING_LOG_SOURCE_OHMS = Math.log(0.22);

  /** Standard deviation of ln of it. Set on the experiment. */
  static final double SAGGING_SPREAD = 0.8;

  /**
   * ln of the ratio of supply volts to those of the sequence if a rating does not state them: 13.8,
   * 14.4 and 12 V. Common practice, no source.
   */
  private static final double[] USUAL_SHIFTS = {0, Math.log(14.4 / 13.8), Math.log(12 / 13.8)};

  /** Share of each. Chosen by hand. */
  static final double[] USUAL_WEIGHTS = {0.7, 0.15, 0.15};

  /**
   * Ratio of watts out to supply volts times the amperes of the fuses. Common practice, no source.
   */
  private static final double FUSED_EFFICIENCY = 0.5;

  /**
   * Watts of both channels at {@link #REFERENCE_OHMS} for an unknown amplifier. Common practice, no
   * source.
   */
  private static final double UNKNOWN_WATTS = 140;

  /** Load per channel for which fuses are chosen, ohms. Common practice, no source. */
  private static final double REFERENCE_OHMS = 2;

  /** Standard deviation of ln volts if fuses give the order of magnitude. Set on the experiment. */
  private static final double FUSED_SPREAD = 0.55;

  /** The same if nothing does: from 5 W to 1 kW per channel. Chosen by hand. */
  private static final double UNKNOWN_SPREAD = 0.75;

  /** Difference of ln of supply volts that counts as none. Chosen by hand. */
  private static final double SAME_SUPPLY = 0.01;

  /**
   * Ratio to the watts that the fuses allow beyond which a rating is impossible. Chosen by hand.
   */
  private static final double MOST_AGAINST_FUSES = 12;

  /**
   * Ratio of the watts that the fuses allow to a rating beyond which the rating is impossible; an
   * amplifier fused for half an ohm bridged is rated for a twentieth of that at 4 Ω. Chosen by
   * hand.
   */
  private static final double LEAST_AGAINST_FUSES = 30;

  private final double[] channelOhms;
  private final double[] logVolts;
  private final double regulated;
  private final double statedShift;
  private final double fuseLogWatts;
  private final boolean absurd;

  RatingPrior(Amplifier amplifier, double supplyVolts, double regulatedProbability) {
    List<Rating> credible =
        amplifier.ratings().stream()
            .filter(r -> r.watts() >= LEAST_WATTS && r.watts() <= MOST_WATTS)
            .toList();
    double fuses = amplifier.fuseAmps().orElse(Double.NaN);
    fuseLogWatts = Math.log(fuses * supplyVolts * FUSED_EFFICIENCY);
    List<Rating> kept = credible.stream().filter(r -> !contradicts(r, fuseLogWatts)).toList();
    absurd = kept.size() < amplifier.ratings().size();
    channelOhms = kept.stream().mapToDouble(r -> r.mode().channelOhms(r.ohms())).toArray();
    logVolts = kept.stream().mapToDouble(RatingPrior::logChannelVolts).toArray();
    regulated = regulatedProbability;
    statedShift =
        kept.stream()
            .filter(r -> r.supplyVolts().isPresent())
            .mapToDouble(r -> Math.log(r.supplyVolts().getAsDouble() / supplyVolts))
            .average()
            .orElse(Double.NaN);
  }

  /** Returns whether any rating affects the forecast. */
  boolean rated() {
    return logVolts.length > 0;
  }

  /** Returns whether a rating was left out as impossible. */
  boolean absurd() {
    return absurd;
  }

  /** Returns whether the fuses give the order of magnitude. */
  boolean fused() {
    return !Double.isNaN(fuseLogWatts);
  }

  /** Returns the least rated load per channel, ohms; NaN if no rating names a load. */
  double leastChannelOhms() {
    double least = Double.NaN;
    for (double ohms : channelOhms) {
      least = Double.isNaN(least) ? ohms : Math.min(least, ohms);
    }
    return least;
  }

  /** Returns the log prior density of ln of the source resistance, up to a constant. */
  double logDensityOfSource(double logSourceOhms) {
    double log = Math.log(usual(logSourceOhms));
    if (logVolts.length > 1) {
      double source = Math.exp(logSourceOhms);
      double level = level(source);
      for (int i = 0; i < logVolts.length; i++) {
        double off = (logVolts[i] + Math.log1p(source / channelOhms[i]) - level) / RATING_SCATTER;
        log -= 0.5 * off * off;
      }
    }
    return log;
  }

  /** Returns the density of ln of the source resistance if no ratings show it. */
  private double usual(double logSourceOhms) {
    double stiff = (logSourceOhms - REGULATED_LOG_SOURCE_OHMS) / REGULATED_SPREAD;
    double soft = (logSourceOhms - SAGGING_LOG_SOURCE_OHMS) / SAGGING_SPREAD;
    return regulated * Normal.density(stiff) / REGULATED_SPREAD
        + (1 - regulated) * Normal.density(soft) / SAGGING_SPREAD;
  }

  /** Returns ln of the middle of the expected channel volts into a load. */
  double logVolts(double ohms, double sourceOhms) {
    if (rated()) {
      return level(sourceOhms) - Math.log1p(sourceOhms / ohms);
    }
    double logWatts = fused() ? fuseLogWatts : Math.log(UNKNOWN_WATTS);
    return 0.5 * (logWatts - Math.log(2) + Math.log(REFERENCE_OHMS))
        + Math.log1p(sourceOhms / REFERENCE_OHMS)
        - Math.log1p(sourceOhms / ohms);
  }

  /** Adds the density of ln volts around a middle to a builder. */
  void spread(Mixture.Builder builder, double weight, double middle, double extra) {
    if (!rated()) {
      double width = fused() ? FUSED_SPREAD : UNKNOWN_SPREAD;
      builder.add(weight, middle, Math.hypot(width, extra));
      return;
    }
    double[] shifts = Double.isNaN(statedShift) ? USUAL_SHIFTS : new double[] {statedShift};
    double[] weights = Double.isNaN(statedShift) ? USUAL_WEIGHTS : new double[] {1};
    for (int i = 0; i < shifts.length; i++) {
      boolean same = Math.abs(shifts[i]) < SAME_SUPPLY;
      flat(builder, weight * weights[i] * (same ? 1 : regulated), middle, extra);
      if (!same) {
        flat(builder, weight * weights[i] * (1 - regulated), middle - shifts[i], extra);
      }
    }
    builder.add(weight * TAIL_WEIGHT, middle, TAIL);
  }

  private static void flat(Mixture.Builder builder, double weight, double middle, double extra) {
    double step = 2 * FLAT / STRATA;
    double deviation = Math.hypot(SHOULDER, extra);
    for (int i = 0; i < STRATA; i++) {
      double offset = -FLAT + (i + 0.5) * step;
      builder.add(weight * (1 - TAIL_WEIGHT) / STRATA, middle + offset, deviation);
    }
  }

  private double level(double sourceOhms) {
    double sum = 0;
    for (int i = 0; i < logVolts.length; i++) {
      sum += logVolts[i] + Math.log1p(sourceOhms / channelOhms[i]);
    }
    return sum / logVolts.length;
  }

  private static boolean contradicts(Rating rating, double fuseLogWatts) {
    double total = rating.mode() == Mode.STEREO ? 2 * rating.watts() : rating.watts();
    double off = Math.log(total) - fuseLogWatts;
    return off > Math.log(MOST_AGAINST_FUSES) || off < -Math.log(LEAST_AGAINST_FUSES);
  }

  private static double logChannelVolts(Rating rating) {
    double volts = Math.sqrt(rating.watts() * rating.ohms());
    return Math.log(rating.mode() == Mode.BRIDGED ? volts / 2 : volts);
  }
}
