package loadwalk.walk;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Warmth;
import loadwalk.numeric.ThermalFit;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.WalkState;

/** What the warm-ups of a walk have shown of its heatsink. */
final class WarmHistory {
  private WarmHistory() {}

  /** Returns what is known of the heatsink before a step. */
  static Warmth before(WalkState state, String stepId) {
    Optional<ThermalFit.Settling> fit = settled(state, stepId);
    return new Warmth(
        fit.isPresent() ? OptionalDouble.of(fit.get().endCelsius()) : OptionalDouble.empty(),
        fit.map(ThermalFit.Settling::endU).orElse(0.0),
        state.cooled().isPresent());
  }

  /** Returns the curve of the last warm-up before a step that shows where it settles. */
  static Optional<ThermalFit.Settling> settled(WalkState state, String stepId) {
    return state.plan().stream()
        .takeWhile(planned -> !planned.id().equals(stepId))
        .filter(planned -> planned.step().warmUp().isPresent())
        .flatMap(planned -> WarmRun.of(state.step(planned.id())).settling().stream())
        .reduce((first, second) -> second);
  }

  /**
   * Returns the temperature to which the heatsink has cooled by the curve of its own warm-up, °C:
   * T(t) = T₀ + (T − T₀)e^(−t/τ), Newton's law; empty where no warm-up shows one.
   *
   * @param restSeconds how long it stood still
   */
  static OptionalDouble celsiusAfter(WalkState state, double restSeconds) {
    Optional<ThermalFit.Settling> fit = settled(state, "");
    OptionalDouble last = newest(state, ReadingId.SINK_CELSIUS);
    if (fit.isEmpty() || last.isEmpty()) {
      return OptionalDouble.empty();
    }
    double air = newest(state, ReadingId.AMBIENT_CELSIUS).orElseGet(() -> coldStart(state));
    double left = Math.exp(-restSeconds / 60 / fit.get().tauMinutes());
    return OptionalDouble.of(air + (last.getAsDouble() - air) * left);
  }

  /**
   * Returns the temperature at which the first warm-up that shows a curve began: that of the air.
   */
  private static double coldStart(WalkState state) {
    return state.plan().stream()
        .filter(planned -> planned.step().warmUp().isPresent())
        .map(planned -> WarmRun.of(state.step(planned.id())))
        .filter(run -> run.settling().isPresent())
        .findFirst()
        .map(run -> run.settling().get().celsiusAt(-run.temperatures().get(0).minutes()))
        .orElseThrow();
  }

  /** Returns how long the heatsink takes to lose half of its rise, seconds: τ ln 2. */
  static OptionalDouble halfCooledSeconds(WalkState state) {
    Optional<ThermalFit.Settling> fit = settled(state, "");
    return fit.isPresent()
        ? OptionalDouble.of(60 * fit.get().tauMinutes() * Math.log(2))
        : OptionalDouble.empty();
  }

  private static OptionalDouble newest(WalkState state, ReadingId id) {
    OptionalDouble newest = OptionalDouble.empty();
    for (PlannedStep planned : state.plan()) {
      Optional<Entry> entry = state.step(planned.id()).latest(id).filter(e -> !e.isOpen());
      newest = entry.isPresent() ? OptionalDouble.of(entry.get().value()) : newest;
    }
    return newest;
  }
}
