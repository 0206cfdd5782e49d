package loadwalk.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
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
  static Optional<Alarm> alarm(Optional<Model> walk, Meters meters) {
    Optional<StepState> running =
        walk.map(Model::state)
            .map(state -> state.step(state.currentId()))
            .filter(step -> step.status() == StepState.Status.RUNNING);
    if (running.isEmpty()) {
      return Optional.empty();
    }
    WalkState state = walk.orElseThrow().state();
    List<Limit> limits = limits(state);
    boolean known = true;
    for (ReadingId id : new ReadingId[] {ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS}) {
      Optional<MeterWatch> watch = meters.of(id);
      Optional<Band> band = running.get().brief().flatMap(b -> b.band(id));
      if (watch.isPresent()) {
        MeterReading reading = meters.reading(watch.get());
        Optional<Alarm> told =
            id == ReadingId.SUPPLY_AMPS ? amps(reading, band, limits) : volts(reading, band);
        if (told.isPresent()) {
          return told;
        }
        known &= reading instanceof MeterReading.Value;
      }
    }
    return known ? Optional.empty() : meters.alarm();
  }

  /** A current that a part of the bench is made for, in words that follow the number. */
  private record Limit(double amps, String which) {}

  private static List<Limit> limits(WalkState state) {
    List<Limit> limits = new ArrayList<>();
    Bench bench = state.opened().bench();
    bench.usableAmps().ifPresent(a -> limits.add(new Limit(a, "the supplies are counted on for")));
    bench.fuseAmps().ifPresent(a -> limits.add(new Limit(a, "of the fuse at the source")));
    OptionalDouble own = state.opened().amplifier().fuseAmps();
    own.ifPresent(a -> limits.add(new Limit(a, "of the amplifier's own fuses")));
    return limits;
  }

  private static Optional<Alarm> amps(
      MeterReading reading, Optional<Band> band, List<Limit> limits) {
    if (reading instanceof MeterReading.Overload) {
      return Optional.of(
          new Alarm(
              Alarm.Kind.AMPS_BEYOND_THE_METER,
              "SUPPLY AMPS: the meter shows overload. " + byHand()));
    }
    if (!(reading instanceof MeterReading.Value value)) {
      return Optional.empty();
    }
    Optional<Limit> least =
        limits.stream()
            .filter(limit -> value.value() > limit.amps())
            .min(Comparator.comparingDouble(Limit::amps));
    if (least.isPresent()) {
      String sentence = beyond("AMPS", value, "above", least.get().amps(), least.get().which());
      return Optional.of(new Alarm(Alarm.Kind.AMPS_ABOVE_A_LIMIT, sentence));
    }
    return band.filter(b -> value.value() > b.high())
        .map(b -> beyond("AMPS", value, "above", b.high(), "at the upper end of the brief"))
        .map(sentence -> new Alarm(Alarm.Kind.AMPS_ABOVE_THE_BRIEF, sentence));
  }

  private static Optional<Alarm> volts(MeterReading reading, Optional<Band> band) {
    if (!(reading instanceof MeterReading.Value value) || band.isEmpty()) {
      return Optional.empty();
    }
    Band brief = band.get();
    if (value.value() < brief.low()) {
      String low = beyond("VOLTS", value, "below", brief.low(), "at the lower end of the brief");
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_BELOW_THE_BRIEF, low));
    }
    if (value.value() > brief.high()) {
      String high = beyond("VOLTS", value, "above", brief.high(), "at the upper end of the brief");
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_ABOVE_THE_BRIEF, high));
    }
    return Optional.empty();
  }

  private static String beyond(
      String what, MeterReading.Value value, String where, double limit, String which) {
    return String.format(
        Locale.ROOT,
        "SUPPLY %s %s, %s the %s %s. %s",
        what,
        value.words(),
        where,
        text(limit, value.unit()),
        which,
        byHand());
  }

  private static String text(double value, Unit unit) {
    return Printer.UTF8.value(value, unit, DIGITS);
  }

  private static String byHand() {
    return "Loadwalk switches nothing: turn down by hand, or Esc.";
  }
}
