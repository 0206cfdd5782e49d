package loadwalk.view.state;

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
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Watches supply current and terminal volts while a step runs, against its brief and its supplies.
 *
 * <p>It tells, with the number; Loadwalk switches nothing.
 */
public final class SupplyWatch {
  private static final int DIGITS = 3;
  private static final String AMPS = "AMPS";
  private static final String BY_HAND = "Turn down by hand, or Esc: Loadwalk switches nothing.";

  private SupplyWatch() {}

  /** Returns what must be told at once; where a meter cannot say, what was told before stands. */
  public static Optional<Alarm> alarm(Optional<Model> walk, ConnectedMeters meters) {
    Optional<StepState> running =
        walk.map(Model::state)
            .map(state -> state.step(state.currentId()))
            .filter(step -> step.status() == StepState.Status.RUNNING);
    if (running.isEmpty()) {
      return Optional.empty();
    }
    WalkState state = walk.orElseThrow().state();
    List<Limit> limits = limits(state);
    Optional<Alarm> blind = Optional.empty();
    for (ReadingId id : new ReadingId[] {ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS}) {
      Optional<MeterWatch> watch = meters.of(id);
      Optional<Band> band = running.get().brief().flatMap(b -> b.band(id));
      if (watch.isPresent()) {
        MeterReading reading = meters.reading(watch.get());
        Optional<Alarm> told =
            id == ReadingId.SUPPLY_AMPS
                ? amps(reading, watch.get(), band, limits)
                : volts(reading, watch.get(), band);
        if (told.isPresent()) {
          return told;
        }
        if (blind.isEmpty() && reading.believed().isEmpty()) {
          blind = Optional.of(blind(meters.alarm(), watch.get(), reading));
        }
      }
    }
    return blind;
  }

  /** What was told of this reading stands while its meter cannot take it back. */
  private static Alarm blind(Optional<Alarm> before, MeterWatch watch, MeterReading reading) {
    ReadingId id = watch.meter().reads();
    String sentence =
        "%s not watched now: %s from %s."
            .formatted(id.label().toUpperCase(Locale.ROOT), reading.words(), watch.meter().label());
    Alarm.Kind kind =
        id == ReadingId.SUPPLY_AMPS ? Alarm.Kind.AMPS_NOT_WATCHED : Alarm.Kind.VOLTS_NOT_WATCHED;
    return before
        .filter(alarm -> alarm.kind().of() == id && alarm.kind().rings())
        .orElse(new Alarm(kind, sentence, ""));
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
      MeterReading reading, MeterWatch watch, Optional<Band> band, List<Limit> limits) {
    if (reading.isOverload()) {
      return Optional.of(
          new Alarm(
              Alarm.Kind.AMPS_BEYOND_THE_METER, "SUPPLY AMPS: the meter shows overload.", BY_HAND));
    }
    if (reading.believed().isEmpty()) {
      return Optional.empty();
    }
    MeterReading.Value value = reading.believed().get();
    String shown = value.words(watch.meter().resolution());
    Optional<Limit> least =
        limits.stream()
            .filter(limit -> value.value() > limit.amps())
            .min(Comparator.comparingDouble(Limit::amps));
    if (least.isPresent()) {
      String sentence = beyond(AMPS, shown, "above", least.get().amps(), least.get().which());
      return Optional.of(new Alarm(Alarm.Kind.AMPS_ABOVE_A_LIMIT, sentence, BY_HAND));
    }
    return band.filter(b -> value.value() > b.high())
        .map(b -> beyond(AMPS, shown, "above", b.high(), "at the upper end of the brief"))
        .map(sentence -> new Alarm(Alarm.Kind.AMPS_ABOVE_THE_BRIEF, sentence, BY_HAND));
  }

  private static Optional<Alarm> volts(
      MeterReading reading, MeterWatch watch, Optional<Band> band) {
    if (reading.believed().isEmpty() || band.isEmpty()) {
      return Optional.empty();
    }
    MeterReading.Value value = reading.believed().get();
    Band brief = band.get();
    String shown = value.words(watch.meter().resolution());
    if (value.value() < brief.low()) {
      String low = beyond("VOLTS", shown, "below", brief.low(), "at the lower end of the brief");
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_BELOW_THE_BRIEF, low, BY_HAND));
    }
    if (value.value() > brief.high()) {
      String high = beyond("VOLTS", shown, "above", brief.high(), "at the upper end of the brief");
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_ABOVE_THE_BRIEF, high, BY_HAND));
    }
    return Optional.empty();
  }

  private static String beyond(
      String what, String shown, String where, double limit, String which) {
    return String.format(
        Locale.ROOT,
        "SUPPLY %s %s, %s the %s %s.",
        what,
        shown,
        where,
        text(limit, what.equals(AMPS) ? Unit.AMPERE : Unit.VOLT),
        which);
  }

  private static String text(double value, Unit unit) {
    return Printer.UTF8.value(value, unit, DIGITS);
  }
}
