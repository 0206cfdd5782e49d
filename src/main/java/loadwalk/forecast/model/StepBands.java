package loadwalk.forecast.model;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.numeric.Quantiles;

/** The band of every reading of a step and its demand on the bench, except the lead losses. */
public record StepBands(Map<ReadingId, Band> bands, Forecast.Demand demand) {
  private static final double TAIL = (1 - Band.LEVEL) / 2;

  /** Normal quantile at which the upper tail of a band begins. */
  static final double TAIL_QUANTILE = -Quantiles.normalQuantile(TAIL);

  /**
   * Largest rise of the volts when the load is taken off, a fraction. Common practice, no source.
   */
  private static final double MOST_UNLOADED_RISE = 0.12;

  /**
   * Standard deviation of ln of the ratio of one channel to the other. Common practice, no source.
   */
  private static final double OTHER_CHANNEL_SPREAD = 0.01;

  /** Standard deviation of ln of the heat. Chosen by hand. */
  private static final double LOSS_SPREAD = 0.15;

  /**
   * Volts of a supply that gives way, a fraction of the setting: 10 V of 13.8. Common practice, no
   * source.
   */
  private static final double WEAKEST_SUPPLY = 0.73;

  /** Rise of the unloaded volts in most amplifiers, a fraction. Common practice, no source. */
  private static final double USUAL_UNLOADED_RISE = 0.02;

  /** Smallest ratio of heat to output: no amplifier is better. Common practice, no source. */
  private static final double LEAST_LOSS = 0.02;

  /** Fraction of their rating at which supplies begin to limit. Common practice, no source. */
  private static final double LIMITED_AT = 0.95;

  /** Standard deviations across a band of 95 %, rounded. */
  private static final double DEVIATIONS_IN_BAND = 4;

  /** Returns the bands of a step. */
  static StepBands of(WalkModel model, Target target) {
    return switch (target.kind()) {
      case IDLE -> idle(model);
      case OPEN_LOAD -> openLoad(model, target);
      case LOADED, WARM_UP -> target.ohms() > 0 ? loaded(model, target) : empty();
    };
  }

  private static StepBands empty() {
    return new StepBands(Map.of(), Forecast.Demand.unknown());
  }

  private static StepBands idle(WalkModel model) {
    Evidence evidence = model.evidence();
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    bands.put(ReadingId.SUPPLY_AMPS, exponential(model.idle().density(), 0));
    double amps = model.idle().amps();
    bands.put(ReadingId.SUPPLY_VOLTS, supplyVolts(model, amps, model.idle().error(), 0));
    return new StepBands(floored(evidence.bench(), bands), Forecast.Demand.unknown());
  }

  /**
   * Returns the bands of a step that reads the volts with and without a load, below the limit; what
   * it asks of the bench is told for the limit, since nothing keeps the level below it.
   */
  private static StepBands openLoad(WalkModel model, Target target) {
    if (!(target.ohms() > 0)) {
      return empty();
    }
    StepBands driven = loaded(model, target);
    StepOutlook outlook = model.outlook(target);
    double logLoads = Math.log(target.mode() == Mode.BRIDGED ? 2 : 1);
    Band loaded = exponential(outlook.logVolts().affine(1, logLoads, 0), 0);
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    bands.put(
        ReadingId.OPEN_VOLTS,
        new Band(
            loaded.low(),
            loaded.middle() * (1 + USUAL_UNLOADED_RISE),
            loaded.high() * (1 + MOST_UNLOADED_RISE)));
    bands.put(ReadingId.SUPPLY_AMPS, driven.bands().get(ReadingId.SUPPLY_AMPS));
    return new StepBands(floored(model.evidence().bench(), bands), driven.demand());
  }

  private static StepBands loaded(WalkModel model, Target target) {
    boolean bridged = target.mode() == Mode.BRIDGED;
    StepOutlook outlook = model.outlook(target);
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    Band channel = exponential(outlook.logVolts(), 0);
    double factor = bridged ? 2 : 1;
    Band asked = deliverable(model, exponential(outlook.asked().logAbove(), model.idle().amps()));
    double ampsDeviation = (asked.high() - asked.low()) / DEVIATIONS_IN_BAND;
    Band supply = supplyVolts(model, asked.middle(), ampsDeviation, outlook.asked().overload());
    Bench bench = model.evidence().bench();
    EnergyBound held =
        EnergyBound.hold(
            new Band(factor * channel.low(), factor * channel.middle(), factor * channel.high()),
            MeterFloor.widen(bench, ReadingId.SUPPLY_AMPS, asked),
            MeterFloor.widen(bench, ReadingId.SUPPLY_VOLTS, supply),
            target.ohms(),
            target.mode().loads());
    Band volts = held.loadVolts();
    bands.put(ReadingId.OUTPUT_VOLTS, volts);
    Band watts =
        new Band(
            volts.low() * volts.low() / target.ohms(),
            volts.middle() * volts.middle() / target.ohms(),
            volts.high() * volts.high() / target.ohms());
    bands.put(ReadingId.OUTPUT_WATTS, watts);
    if (!bridged) {
      bands.put(ReadingId.OTHER_OUTPUT_VOLTS, spread(volts, 1, OTHER_CHANNEL_SPREAD));
    }
    bands.put(ReadingId.SUPPLY_AMPS, held.amps());
    bands.put(ReadingId.SUPPLY_VOLTS, supply);
    bands.put(ReadingId.LOAD_OHMS, WalkReadings.loadBand(bench, target.ohms()));
    SinkTemperature.band(model.evidence(), target)
        .ifPresent(band -> bands.put(ReadingId.SINK_CELSIUS, band));
    Forecast.Demand demand = demand(model, target, outlook, watts);
    return new StepBands(floored(bench, bands), demand);
  }

  private static Forecast.Demand demand(
      WalkModel model, Target target, StepOutlook outlook, Band watts) {
    double loads = target.mode().loads();
    Band total = new Band(loads * watts.low(), loads * watts.middle(), loads * watts.high());
    double efficiency = outlook.middleEfficiency(model, target);
    double loss = Math.max(LEAST_LOSS, 1 / efficiency - 1);
    double standing = model.idle().amps() * model.evidence().conditions().supplyVolts();
    Band lost = spread(total, loss, LOSS_SPREAD);
    Band heat = new Band(lost.low() + standing, lost.middle() + standing, lost.high() + standing);
    return new Forecast.Demand(
        Optional.of(watts), Optional.of(total), Optional.of(heat), Optional.empty());
  }

  /**
   * Widens the lower end to the most that the supplies deliver. The upper end remains the current
   * the amplifier draws, because fuses and leads must carry it.
   */
  private static Band deliverable(WalkModel model, Band asked) {
    double most = LIMITED_AT * model.deliverableAmps();
    return new Band(Math.min(asked.low(), Math.max(most, 0)), asked.middle(), asked.high());
  }

  private static Band supplyVolts(
      WalkModel model, double amps, double ampsDeviation, double overload) {
    double middle = model.sag().volts(amps);
    double half = TAIL_QUANTILE * model.sag().deviation(amps, ampsDeviation);
    double low = middle - half;
    if (overload > TAIL) {
      low = Math.min(low, WEAKEST_SUPPLY * model.evidence().conditions().supplyVolts());
    }
    return new Band(Math.max(0, low), middle, middle + half);
  }

  /** Returns the band times a factor, widened by the standard deviation of ln of the factor. */
  private static Band spread(Band band, double factor, double deviation) {
    double own = TAIL_QUANTILE * deviation;
    double down = Math.hypot(Math.log(band.middle() / band.low()), own);
    double up = Math.hypot(Math.log(band.high() / band.middle()), own);
    double middle = factor * band.middle();
    return new Band(middle * Math.exp(-down), middle, middle * Math.exp(up));
  }

  /** Returns the band of exp(X) + offset. */
  private static Band exponential(Mixture whole, double offset) {
    Mixture density = whole.compressed();
    double low = density.quantile(TAIL);
    double middle = Math.max(low, density.quantile(0.5));
    double high = Math.max(middle, density.quantile(1 - TAIL));
    return new Band(Math.exp(low) + offset, Math.exp(middle) + offset, Math.exp(high) + offset);
  }

  private static Map<ReadingId, Band> floored(Bench bench, Map<ReadingId, Band> bands) {
    bands.replaceAll((id, band) -> MeterFloor.widen(bench, id, band));
    return bands;
  }
}
