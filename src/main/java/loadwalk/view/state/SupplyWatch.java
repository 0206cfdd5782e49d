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
import loadwalk.text.Sentence;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Watches supply current and terminal volts while a step runs, against its brief and its supplies.
 *
 * <p>It warns, with the number; Loadwalk switches nothing.
 */
public final class SupplyWatch {
  private static final int DIGITS = 3;
  private static final String BY_HAND =
      "Turn it down by hand, or press Esc: Loadwalk switches nothing.";

  private SupplyWatch() {}

  /** Returns the alarm; an earlier one stays on while its meter gives no number. */
  public static Optional<Alarm> alarm(Optional<Model> walk, ConnectedMeters meters) {
    Optional<StepState> running =
        walk.map(Model::state)
            .map(state -> state.step(state.currentId()))
            .filter(step -> step.status() == StepState.Status.RUNNING);
    if (running.isEmpty()) {
      return Optional.empty();
    }
    WalkState state = walk.orElseThrow().state();
    Optional<Alarm> blind = Optional.empty();
    for (ReadingId id : new ReadingId[] {ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS}) {
      Optional<MeterWatch> watch = meters.of(id);
      Optional<Band> band = running.get().brief().flatMap(b -> b.band(id));
      if (watch.isPresent()) {
        MeterReading reading = meters.reading(watch.get());
        Optional<Alarm> told =
            id == ReadingId.SUPPLY_AMPS
                ? amps(reading, watch.get(), band, state)
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

  /** An alarm on this reading stays on while its meter cannot clear it. */
  private static Alarm blind(Optional<Alarm> before, MeterWatch watch, MeterReading reading) {
    ReadingId id = watch.meter().reads();
    String sentence =
        Sentence.of(
            "{} not watched: {} from {}.",
            id.label().toUpperCase(Locale.ROOT),
            reading.words(),
            watch.meter().label());
    Alarm.Kind kind =
        id == ReadingId.SUPPLY_AMPS ? Alarm.Kind.AMPS_NOT_WATCHED : Alarm.Kind.VOLTS_NOT_WATCHED;
    return before
        .filter(alarm -> alarm.kind().of() == id && alarm.kind().rings())
        .orElse(new Alarm(kind, sentence, ""));
  }

  /** A current that a part of the bench is made for, and the warning beyond it. */
  private record Limit(double amps, String sentence) {}

  private static List<Limit> limits(WalkState state, String shown) {
    Bench bench = state.opened().bench();
    OptionalDouble supplies = bench.usableAmps();
    OptionalDouble source = bench.fuseAmps();
    OptionalDouble own = state.opened().amplifier().fuseAmps();
    List<Limit> limits = new ArrayList<>();
    supplies.ifPresent(
        a ->
            limits.add(
                new Limit(
                    a,
                    Sentence.of(
                        "SUPPLY AMPS {}, above the {} usable from the supplies.",
                        shown,
                        amps(a)))));
    source.ifPresent(
        a ->
            limits.add(
                new Limit(
                    a,
                    Sentence.of(
                        "SUPPLY AMPS {}, above the {} of the fuse at the source.",
                        shown,
                        amps(a)))));
    own.ifPresent(
        a ->
            limits.add(
                new Limit(
                    a,
                    Sentence.of(
                        "SUPPLY AMPS {}, above the {} of the amplifier's own fuses.",
                        shown,
                        amps(a)))));
    return limits;
  }

  private static Optional<Alarm> amps(
      MeterReading reading, MeterWatch watch, Optional<Band> band, WalkState state) {
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
        limits(state, shown).stream()
            .filter(limit -> value.value() > limit.amps())
            .min(Comparator.comparingDouble(Limit::amps));
    if (least.isPresent()) {
      return Optional.of(new Alarm(Alarm.Kind.AMPS_ABOVE_A_LIMIT, least.get().sentence(), BY_HAND));
    }
    return band.filter(b -> value.value() > b.high())
        .map(
            b ->
                Sentence.of(
                    "SUPPLY AMPS {}, above the forecast maximum of {}.", shown, amps(b.high())))
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
      String low =
          Sentence.of(
              "SUPPLY VOLTS {}, below the forecast minimum of {}.", shown, volts(brief.low()));
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_BELOW_THE_BRIEF, low, BY_HAND));
    }
    if (value.value() > brief.high()) {
      String high =
          Sentence.of(
              "SUPPLY VOLTS {}, above the forecast maximum of {}.", shown, volts(brief.high()));
      return Optional.of(new Alarm(Alarm.Kind.VOLTS_ABOVE_THE_BRIEF, high, BY_HAND));
    }
    return Optional.empty();
  }

  private static String amps(double value) {
    return Printer.UTF8.value(value, Unit.AMPERE, DIGITS);
  }

  private static String volts(double value) {
    return Printer.UTF8.value(value, Unit.VOLT, DIGITS);
  }
}
