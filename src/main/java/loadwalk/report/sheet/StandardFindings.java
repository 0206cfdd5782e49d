package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ThdKind;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.sheet.StandardItem.Finding;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;

/**
 * Sets what a walk recorded beside what a standard asks: each decides by the conditions of the
 * published results, and where a condition was not read with every one of them, it is not recorded.
 */
final class StandardFindings {
  private static final Printer PRINTER = Printer.UTF8;
  private static final double ROUNDING = 1e-9;

  /** How far volts may lie from those of ANSI/CTA-2006 (from memory, not sure). */
  private static final double CTA_VOLTS = 0.1;

  /** How near a temperature, a tone and a bandwidth count as the stated one. Set by hand. */
  private static final double NEAR_KELVIN = 3;

  private static final double NEAR_FRACTION = 0.02;
  private static final double NEAR_BAND = 0.1;

  private StandardFindings() {}

  static Function<Sheet, Finding> supply(double volts) {
    return of(Conditions::supplyVolts, Unit.VOLT, v -> Math.abs(v - volts) <= CTA_VOLTS + ROUNDING);
  }

  static Finding suppliedAt(Sheet sheet) {
    return of(Conditions::supplyVolts, Unit.VOLT, volts -> true).apply(sheet);
  }

  /** Judges the supply by the volts that the sequence asks for. */
  static Function<Sheet, Finding> supplyHeld(double fraction) {
    return sheet -> {
      double asked = sheet.sequence().supplyVolts();
      return of(Conditions::supplyVolts, Unit.VOLT, v -> Conditions.isNear(v, asked, fraction))
          .apply(sheet);
    };
  }

  static Finding ratedSupply(Sheet sheet) {
    List<Double> rated = new ArrayList<>();
    for (Rating rating : sheet.amplifier().ratings()) {
      rating.supplyVolts().ifPresent(rated::add);
    }
    return rated.isEmpty()
        ? Finding.missing("no rating states its supply")
        : of(
                Conditions::supplyVolts,
                Unit.VOLT,
                v -> rated.stream().allMatch(r -> Conditions.isNear(v, r, NEAR_FRACTION)))
            .apply(sheet);
  }

  static Function<Sheet, Finding> tone(double hertz) {
    return of(Conditions::hertz, Unit.HERTZ, f -> Conditions.isNear(f, hertz, NEAR_FRACTION));
  }

  /** One walk reads one tone, never a band. */
  static Finding band(Sheet sheet) {
    return of(Conditions::hertz, Unit.HERTZ, hertz -> false).apply(sheet);
  }

  static Function<Sheet, Finding> bandwidth(double hertz) {
    return of(
        c -> c.around().thdBandwidthHertz(),
        Unit.HERTZ,
        f -> Conditions.isNear(f, hertz, NEAR_BAND));
  }

  static Function<Sheet, Finding> held(double seconds) {
    return of(c -> c.around().heldSeconds(), Unit.SECOND, held -> held >= seconds);
  }

  static Function<Sheet, Finding> airNear(double celsius) {
    return of(
        c -> c.around().ambientCelsius(),
        Unit.CELSIUS,
        t -> Math.abs(t - celsius) <= NEAR_KELVIN + ROUNDING);
  }

  static Function<Sheet, Finding> airFrom(double celsius) {
    return of(c -> c.around().ambientCelsius(), Unit.CELSIUS, t -> t >= celsius);
  }

  static Function<Sheet, Finding> load(double ohms) {
    return sheet -> {
      List<Conditions> all = conditions(sheet);
      Optional<Conditions> same =
          all.stream()
              .filter(c -> c.mode() == Mode.STEREO && Conditions.isNear(c.ohms(), ohms, ROUNDING))
              .findFirst();
      if (same.isEmpty()) {
        return all.isEmpty()
            ? Finding.NONE
            : Finding.of(false, ResultWords.range(ohms(all), Unit.OHM));
      }
      OptionalDouble read = same.get().ohmsRead();
      return read.isPresent()
          ? Finding.of(true, PRINTER.exact(read.getAsDouble(), Unit.OHM))
          : Finding.of(true, "nominal, not measured");
    };
  }

  private static List<Double> ohms(List<Conditions> all) {
    return all.stream().map(Conditions::ohms).toList();
  }

  /** A figure without noise, or of a kind that nobody knows, is not THD+N. */
  static Function<Sheet, Finding> thdPlusNoise(double percent) {
    return sheet -> {
      Finding found =
          of(Conditions::thdPercent, Unit.PERCENT, thd -> thd <= percent + ROUNDING).apply(sheet);
      List<Optional<ThdKind>> kinds =
          conditions(sheet).stream().map(c -> c.around().thdKind()).distinct().toList();
      if (found.outcome() == StandardItem.Outcome.NOT_RECORDED
          || kinds.equals(List.of(Optional.of(ThdKind.THD_N)))) {
        return found;
      }
      return kinds.contains(Optional.<ThdKind>empty())
          ? Finding.missing(Sentence.of("{}, kind not known", found.value()))
          : Finding.of(false, Sentence.of("{}, without noise", found.value()));
    };
  }

  /** That both channels play is only asked for; it is recorded where both outputs were read. */
  static Finding channels(Sheet sheet) {
    List<Conditions> stereo =
        conditions(sheet).stream().filter(c -> c.mode() == Mode.STEREO).toList();
    if (stereo.isEmpty()) {
      return Finding.NONE;
    }
    return stereo.stream().allMatch(c -> c.channelsRead() == Mode.STEREO.loads())
        ? Finding.of(true, "both outputs read")
        : Finding.missing("one output read");
  }

  /** The power that an amplifier warms up at is asked for and never read. */
  static Function<Sheet, Finding> warmUp(double minutes) {
    return sheet -> {
      double seconds =
          sheet.record().warmUps().stream().mapToDouble(Sheet.WarmUp::seconds).max().orElse(0);
      if (!(seconds > 0)) {
        return Finding.NONE;
      }
      String lasted = Sentence.of("{}, at a power that was not read", ResultWords.minutes(seconds));
      return seconds / 60 >= minutes ? Finding.missing(lasted) : Finding.of(false, lasted);
    };
  }

  static Finding controls(Sheet sheet) {
    return sheet
        .record()
        .controls()
        .map(set -> Finding.of(true, ResultWords.quoted(set)))
        .orElse(Finding.NONE);
  }

  static Finding atLimit(Sheet sheet) {
    List<Conditions> all = conditions(sheet);
    if (all.isEmpty() || all.stream().anyMatch(c -> c.thdPercent().isEmpty())) {
      return Finding.missing("no THD read with every output");
    }
    return Finding.of(
        all.stream().allMatch(c -> c.criterion() == Criterion.THD_LIMIT),
        ResultWords.range(
            all.stream().map(c -> c.thdPercent().orElseThrow()).toList(), Unit.PERCENT));
  }

  static Finding source(Sheet sheet) {
    return sheet
        .result()
        .sourceResistance()
        .map(ohms -> Finding.of(true, PRINTER.quantity(ohms)))
        .orElse(Finding.NONE);
  }

  /** Returns 20 lg(1 + 1/D) dB, which is 20 lg of the volts without load over those with it. */
  static Finding regulation(Sheet sheet) {
    return sheet
        .result()
        .dampingFactor()
        .map(d -> 20 * Math.log10(1 + 1 / d.value()))
        .map(decibels -> Finding.of(true, PRINTER.value(decibels, Unit.DECIBEL, 2)))
        .orElse(Finding.NONE);
  }

  /** Decides by one condition, which must have been read with every published result. */
  private static Function<Sheet, Finding> of(
      Function<Conditions, OptionalDouble> condition, Unit unit, DoublePredicate asAsked) {
    return sheet -> {
      List<OptionalDouble> read = conditions(sheet).stream().map(condition).toList();
      if (read.isEmpty() || read.stream().noneMatch(OptionalDouble::isPresent)) {
        return Finding.NONE;
      }
      if (!read.stream().allMatch(OptionalDouble::isPresent)) {
        return Finding.missing("not with every output");
      }
      List<Double> values = read.stream().map(OptionalDouble::getAsDouble).toList();
      return Finding.of(values.stream().allMatch(asAsked::test), ResultWords.range(values, unit));
    };
  }

  private static List<Conditions> conditions(Sheet sheet) {
    return sheet.loads().stream().map(line -> line.power().conditions()).toList();
  }
}
