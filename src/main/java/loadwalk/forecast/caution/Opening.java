package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Figures;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.GivesFirst;
import loadwalk.forecast.GivesFirst.Stop;

/** Finds what gives first at a step, and the readings at which to stop. */
final class Opening {
  private Opening() {}

  /**
   * Returns what gives first.
   *
   * @param currents the parts that carry the supply current
   * @param load the hottest load resistor
   * @param stopCelsius the heatsink at which to stop
   */
  static Optional<GivesFirst> of(
      StepQuestion step, List<Stress> currents, Optional<LoadStress> load, double stopCelsius) {
    if (!step.driven()) {
      return Optional.empty();
    }
    Optional<Stress> first = currents.stream().max(Comparator.comparingDouble(Stress::nearness));
    double nearest = first.map(Stress::nearness).orElse(0.0);
    return load.filter(hot -> hot.stress().nearness() > nearest)
        .map(hot -> ofLoad(hot, stops(step, currents, load, stopCelsius, ReadingId.OUTPUT_VOLTS)))
        .or(
            () ->
                first.map(
                    part ->
                        ofCurrent(
                            part,
                            stops(step, currents, load, stopCelsius, ReadingId.SUPPLY_AMPS))));
  }

  private static GivesFirst ofCurrent(Stress part, List<Stop> stops) {
    return new GivesFirst(
        part.code(),
        part.part(),
        ReadingId.SUPPLY_AMPS,
        part.demand().middle(),
        part.bears().counted(),
        stops);
  }

  private static GivesFirst ofLoad(LoadStress hot, List<Stop> stops) {
    return new GivesFirst(
        hot.stress().code(),
        hot.stress().part(),
        ReadingId.OUTPUT_WATTS,
        hot.loadWatts().middle(),
        hot.countedLoadWatts(),
        stops);
  }

  /** Returns the stops that the operator can read, that of the first part to give first. */
  private static List<Stop> stops(
      StepQuestion step,
      List<Stress> currents,
      Optional<LoadStress> load,
      double stopCelsius,
      ReadingId first) {
    List<Stop> stops = new ArrayList<>();
    if (first == ReadingId.OUTPUT_VOLTS) {
      load.ifPresent(hot -> stops.add(new Stop(first, hot.stopVolts())));
    }
    currents.stream()
        .mapToDouble(part -> part.bears().stop())
        .min()
        .ifPresent(amps -> stops.add(new Stop(ReadingId.SUPPLY_AMPS, Figures.down(amps))));
    if (step.readings().containsKey(ReadingId.SINK_CELSIUS)) {
      stops.add(new Stop(ReadingId.SINK_CELSIUS, stopCelsius));
    }
    return stops;
  }
}
