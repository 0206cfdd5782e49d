package loadwalk.view;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.walk.Model;
import loadwalk.walk.StepState;
import loadwalk.walk.WalkState;

/**
 * Watches supply current and terminal volts while a step runs, against its brief and its supplies.
 *
 * <p>It tells, with the number; Loadwalk switches nothing.
 */
final class SupplyWatch {
  private static final int DIGITS = 3;

  private SupplyWatch() {}

  /** Returns what must be told at once; where a meter cannot say, what was told before stands. */
  static Optional<String> alarm(Optional<Model> walk, Meters meters) {
    Optional<StepState> running =
        walk.map(Model::state)
            .map(state -> state.step(state.currentId()))
            .filter(step -> step.status() == StepState.Status.RUNNING);
    if (running.isEmpty()) {
      return Optional.empty();
    }
    WalkState state = walk.orElseThrow().state();
    OptionalDouble usable = state.opened().bench().usableAmps();
    boolean known = true;
    for (ReadingId id : new ReadingId[] {ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS}) {
      Optional<MeterWatch> watch = meters.of(id);
      Optional<Band> band = running.get().brief().flatMap(b -> b.band(id));
      if (watch.isPresent()) {
        MeterReading reading = meters.reading(watch.get());
        Optional<String> told =
            id == ReadingId.SUPPLY_AMPS ? amps(reading, band, usable) : volts(reading, band);
        if (told.isPresent()) {
          return told;
        }
        known &= reading instanceof MeterReading.Value;
      }
    }
    return known ? Optional.empty() : meters.alarm();
  }

  private static Optional<String> amps(
      MeterReading reading, Optional<Band> band, OptionalDouble usable) {
    if (reading instanceof MeterReading.Overload) {
      return Optional.of("SUPPLY AMPS: the meter shows overload. " + byHand());
    }
    if (!(reading instanceof MeterReading.Value value)) {
      return Optional.empty();
    }
    if (usable.isPresent() && value.value() > usable.getAsDouble()) {
      return above("SUPPLY AMPS", value, usable.getAsDouble(), "that the supplies are counted on");
    }
    return band.isPresent() && value.value() > band.get().high()
        ? above("SUPPLY AMPS", value, band.get().high(), "at the upper end of the brief")
        : Optional.empty();
  }

  private static Optional<String> volts(MeterReading reading, Optional<Band> band) {
    if (!(reading instanceof MeterReading.Value value) || band.isEmpty()) {
      return Optional.empty();
    }
    if (value.value() < band.get().low()) {
      return Optional.of(
          "SUPPLY VOLTS "
              + value.words()
              + ", below the "
              + text(band.get().low(), Unit.VOLT)
              + " at the lower end of the brief. "
              + byHand());
    }
    return value.value() > band.get().high()
        ? above("SUPPLY VOLTS", value, band.get().high(), "at the upper end of the brief")
        : Optional.empty();
  }

  private static Optional<String> above(
      String what, MeterReading.Value value, double limit, String which) {
    return Optional.of(
        what
            + " "
            + value.words()
            + ", above the "
            + text(limit, value.unit())
            + " "
            + which
            + ". "
            + byHand());
  }

  private static String text(double value, Unit unit) {
    return Printer.UTF8.value(value, unit, DIGITS);
  }

  private static String byHand() {
    return "Loadwalk switches nothing: turn down by hand, or Esc.";
  }
}
