package loadwalk.forecast;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;

/** All that the evidence of one walk tells of the steps still to come. */
final class WalkModel {
  private static final double LEAST_WEIGHT = 1e-5;
  private static final double VOLTS_SCATTER = 0.0065;

  private final Evidence evidence;
  private final RatingPrior prior;
  private final OutputModel output;
  private final EfficiencyModel efficiency;
  private final IdleModel idle;
  private final SagModel sag;

  WalkModel(Evidence evidence) {
    this.evidence = evidence;
    Amplifier amplifier = evidence.amplifier();
    double supply = evidence.conditions().supplyVolts();
    List<WalkReadings.Point> points = WalkReadings.points(evidence);
    double regulated = amplifier.regulated().map(r -> r ? 0.97 : 0.03).orElse(0.35);
    prior = new RatingPrior(amplifier, supply, regulated);
    idle = IdleModel.of(WalkReadings.idleAmps(evidence), amplifier.fuseAmps());
    output =
        new OutputModel(
            prior,
            new LimitOnset(leastOhms(amplifier, prior)),
            points,
            new OutputModel.Setup(supply, regulated, VOLTS_SCATTER));
    efficiency =
        new EfficiencyModel(ClassPrior.of(amplifier.amplifierClass()), idle, points, supply);
    sag = new SagModel(evidence);
  }

  Evidence evidence() {
    return evidence;
  }

  RatingPrior prior() {
    return prior;
  }

  OutputModel output() {
    return output;
  }

  IdleModel idle() {
    return idle;
  }

  SagModel sag() {
    return sag;
  }

  /** Returns the density of ln of one channel's volts in a step at the limit. */
  Mixture logChannelVolts(double channelOhms, boolean bridged, double supplyVolts) {
    double logSupply = Math.log(supplyVolts / evidence.conditions().supplyVolts());
    return output.predict(channelOhms, bridged, logSupply);
  }

  /** Returns the supply volts expected in a step at the limit, from the likeliest current. */
  double supplyVolts(double channelOhms, boolean bridged) {
    double volts = sag.volts(idle.amps());
    for (int round = 0; round < 2; round++) {
      double log = logChannelVolts(channelOhms, bridged, volts).mean();
      double above = logAmpsAbove(Mixture.normal(log, 1e-4), channelOhms, volts).mean();
      volts = sag.volts(idle.amps() + Math.exp(above));
    }
    return volts;
  }

  /** Returns the density of ln of the current above idle from a density of the volts. */
  Mixture logAmpsAbove(Mixture logVolts, double channelOhms, double supplyVolts) {
    double middle = logVolts.mean();
    double output = EfficiencyModel.logOutput(middle, channelOhms) - Math.log(supplyVolts);
    Mixture.Builder builder = new Mixture.Builder();
    for (EfficiencyModel.Part part : efficiency.at(channelOhms, middle)) {
      if (part.weight() > LEAST_WEIGHT) {
        double scale = 2 - part.slope();
        double mean = output - part.mean();
        double expected = idle.amps() + Math.exp(mean);
        double deviation = Math.hypot(part.deviation(), idle.relativeError(expected));
        logVolts.affine(scale, mean - scale * middle, deviation).addTo(builder, part.weight());
      }
    }
    return builder.build();
  }

  /** Returns the part of the power that becomes heat over the part that reaches the load. */
  double lossPerOutput(double logChannelVolts, double channelOhms) {
    double total = 0;
    for (EfficiencyModel.Part part : efficiency.at(channelOhms, logChannelVolts)) {
      total += part.weight() * part.mean();
    }
    return Math.max(0.02, Math.exp(-total) - 1);
  }

  private static double leastOhms(Amplifier amplifier, RatingPrior prior) {
    double stated =
        Math.min(
            amplifier.minimumOhms(Mode.STEREO).orElse(Double.POSITIVE_INFINITY),
            amplifier.minimumOhms(Mode.BRIDGED).orElse(Double.POSITIVE_INFINITY) / 2);
    if (!Double.isInfinite(stated)) {
      return stated;
    }
    double rated = prior.leastChannelOhms();
    return Double.isNaN(rated) ? 2 : rated;
  }
}
