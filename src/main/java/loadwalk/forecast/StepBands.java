package loadwalk.forecast;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;

/** The band of every reading of a step, and what the step asks of the bench. */
record StepBands(Map<ReadingId, Band> bands, Forecast.Demand demand) {
  private static final double TAIL = (1 - StandardForecaster.LEVEL) / 2;
  private static final double WARM_UP_SPREAD = 0.12;
  private static final double MOST_UNLOADED_RISE = 0.12;

  /** Tells the bands of a step. */
  static StepBands of(WalkModel model, Target target) {
    switch (target.kind()) {
      case IDLE:
        return idle(model);
      case OPEN_LOAD:
        return openLoad(model, target);
      default:
        return target.ohms() > 0 ? loaded(model, target) : empty();
    }
  }

  private static StepBands empty() {
    return new StepBands(Map.of(), Forecast.Demand.unknown());
  }

  private static StepBands idle(WalkModel model) {
    Evidence evidence = model.evidence();
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    Mixture density =
        model.idle().measured()
            ? Mixture.normal(Math.log(Math.max(0.01, model.idle().amps())), 0.08)
            : IdleModel.prior(evidence.amplifier().fuseAmps());
    bands.put(ReadingId.SUPPLY_AMPS, exponential(density, 1, 0));
    double amps = model.idle().amps();
    bands.put(ReadingId.SUPPLY_VOLTS, supplyVolts(model, amps, model.idle().error()));
    return new StepBands(floored(evidence.bench(), bands), Forecast.Demand.unknown());
  }

  private static StepBands openLoad(WalkModel model, Target target) {
    if (!(target.ohms() > 0)) {
      return empty();
    }
    boolean bridged = target.mode() == Mode.BRIDGED;
    double ohms = target.mode().channelOhms(target.ohms());
    double supply = model.supplyVolts(ohms, bridged);
    Band loaded = exponential(model.logChannelVolts(ohms, bridged, supply), bridged ? 2 : 1, 0);
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    bands.put(
        ReadingId.OPEN_VOLTS,
        new Band(loaded.low(), loaded.middle() * 1.02, loaded.high() * (1 + MOST_UNLOADED_RISE)));
    return new StepBands(floored(model.evidence().bench(), bands), Forecast.Demand.unknown());
  }

  private static StepBands loaded(WalkModel model, Target target) {
    boolean bridged = target.mode() == Mode.BRIDGED;
    double ohms = target.mode().channelOhms(target.ohms());
    double supply = model.supplyVolts(ohms, bridged);
    Mixture volts = StepDensities.logChannelVolts(model, target, ohms, supply);
    Mixture above = StepDensities.logAmpsAbove(model, target, volts, ohms, supply);
    double shift = Math.log(bridged ? 2 : 1);
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    Band outputVolts = exponential(volts.affine(1, shift, 0), 1, 0);
    bands.put(ReadingId.OUTPUT_VOLTS, outputVolts);
    Band watts = exponential(volts.affine(2, 2 * shift - Math.log(target.ohms()), 0), 1, 0);
    bands.put(ReadingId.OUTPUT_WATTS, watts);
    if (!bridged) {
      bands.put(ReadingId.OTHER_OUTPUT_VOLTS, exponential(volts.affine(1, 0, 0.01), 1, 0));
    }
    Band amps = exponential(above, 1, model.idle().amps());
    bands.put(ReadingId.SUPPLY_AMPS, amps);
    double ampsDeviation = (amps.high() - amps.low()) / 4;
    Band terminal = supplyVolts(model, amps.middle(), ampsDeviation);
    bands.put(ReadingId.SUPPLY_VOLTS, terminal);
    bands.put(ReadingId.LOAD_OHMS, WalkReadings.loadBand(model.evidence().bench(), target.ohms()));
    SinkTemperature.band(model.evidence(), target)
        .ifPresent(band -> bands.put(ReadingId.SINK_CELSIUS, band));
    Bench bench = model.evidence().bench();
    Forecast.Demand demand = demand(model, target, volts, ohms, watts, amps);
    return new StepBands(floored(bench, bands), demand);
  }

  private static Forecast.Demand demand(
      WalkModel model, Target target, Mixture volts, double ohms, Band watts, Band amps) {
    double loads = target.mode().loads();
    Band total = new Band(loads * watts.low(), loads * watts.middle(), loads * watts.high());
    double supply = model.evidence().conditions().supplyVolts();
    double loss = model.lossPerOutput(volts.mean(), ohms);
    double standing = model.idle().amps() * supply;
    Mixture heat = volts.affine(2, Math.log(2 / ohms) + Math.log(loss), StepDensities.LOSS_SPREAD);
    Optional<Band> drop =
        LeadDrop.ohms(model.evidence().bench()).stream()
            .mapToObj(r -> new Band(amps.low() * r, amps.middle() * r, amps.high() * r))
            .findFirst();
    return new Forecast.Demand(
        Optional.of(watts), Optional.of(total), Optional.of(exponential(heat, 1, standing)), drop);
  }

  private static Band supplyVolts(WalkModel model, double amps, double ampsDeviation) {
    double middle = model.sag().volts(amps);
    double half = -Normal.quantile(TAIL) * model.sag().deviation(amps, ampsDeviation);
    return new Band(middle - half, middle, middle + half);
  }

  /** Returns the band of factor · exp(X) + offset. */
  private static Band exponential(Mixture density, double factor, double offset) {
    return new Band(
        factor * Math.exp(density.quantile(TAIL)) + offset,
        factor * Math.exp(density.quantile(0.5)) + offset,
        factor * Math.exp(density.quantile(1 - TAIL)) + offset);
  }

  private static Map<ReadingId, Band> floored(Bench bench, Map<ReadingId, Band> bands) {
    bands.replaceAll((id, band) -> MeterFloor.widen(bench, id, band));
    return bands;
  }
}
