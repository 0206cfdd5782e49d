package loadwalk.report.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.function.Function;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;

/**
 * What two results must have alike before one is ranked above the other; the title, the file and
 * the comments of a sequence play no part.
 */
enum Likeness {
  /** How the load was connected. */
  MODE("mode", (one, other) -> one.mode() == other.mode(), load -> load.mode().word()),
  /** The nominal load. */
  LOAD(
      "load",
      (one, other) -> Conditions.within(Likeness.SAME_OHMS, one.ohms(), other.ohms()),
      load -> Printer.UTF8.exact(load.ohms(), Unit.OHM)),
  /** The tone read; where nobody read it, the one asked for. */
  TONE("tone", Likeness::sameTone, Likeness::tone),
  /** The point reached, with the limit that it was at. */
  POINT("read", Likeness::samePoint, Likeness::point),
  /** The supply volts read at the terminals. */
  SUPPLY(
      "supply",
      (one, other) -> Conditions.sameReading(one.supplyVolts(), other.supplyVolts()),
      load -> read(load.supplyVolts(), Unit.VOLT)),
  /** Whether the warm-up was done. */
  WARM(
      "warm-up",
      (one, other) -> one.conditions().around().warm().equals(other.conditions().around().warm()),
      Likeness::warm),
  /** Whether the amplifier is simulated. */
  PRACTICE(
      "amplifier",
      (one, other) -> one.isPractice() == other.isPractice(),
      load -> load.isPractice() ? "simulated" : "real");

  /** How far nominal loads may differ, a fraction. Chosen by hand. */
  static final double SAME_OHMS = 1e-3;

  private static final Printer PRINT = Printer.UTF8;

  private final String what;
  private final BiPredicate<Load, Load> alike;
  private final Function<Load, String> words;

  Likeness(String what, BiPredicate<Load, Load> alike, Function<Load, String> words) {
    this.what = what;
    this.alike = alike;
    this.words = words;
  }

  /** Tells whether two results were reached under like conditions. */
  static boolean alike(Load one, Load other) {
    for (Likeness likeness : ALL) {
      if (!likeness.alike.test(one, other)) {
        return false;
      }
    }
    return true;
  }

  private static final List<Likeness> ALL = List.of(values());

  /** Returns what two results differ in, in words. */
  static List<String> differences(Load one, Load other) {
    return Arrays.stream(values())
        .filter(likeness -> !likeness.alike.test(one, other))
        .map(likeness -> likeness.difference(one, other))
        .toList();
  }

  private String difference(Load one, Load other) {
    return Sentence.of("{} {} vs. {}", what, words.apply(one), words.apply(other));
  }

  /** Returns this condition of a result in words. */
  String of(Load load) {
    return words.apply(load);
  }

  private static boolean sameTone(Load one, Load other) {
    OptionalDouble hertz = one.conditions().hertz();
    return Conditions.sameReading(hertz, other.conditions().hertz())
        && (hertz.isPresent() || one.askedHertz() == other.askedHertz());
  }

  private static boolean samePoint(Load one, Load other) {
    boolean atLimit = one.criterion() == Criterion.THD_LIMIT;
    return one.criterion() == other.criterion()
        && (!atLimit || one.limitThdPercent() == other.limitThdPercent());
  }

  private static String tone(Load load) {
    OptionalDouble hertz = load.conditions().hertz();
    return hertz.isPresent()
        ? PRINT.value(hertz.getAsDouble(), Unit.HERTZ, 3)
        : Sentence.of("{} asked for, not read", PRINT.exact(load.askedHertz(), Unit.HERTZ));
  }

  private static String point(Load load) {
    return load.criterion() == Criterion.THD_LIMIT
        ? Sentence.of("at {} THD", PRINT.exact(load.limitThdPercent(), Unit.PERCENT))
        : load.criterion().text();
  }

  private static String read(OptionalDouble value, Unit unit) {
    return value.isPresent() ? PRINT.value(value.getAsDouble(), unit, 4) : "not read";
  }

  private static String warm(Load load) {
    return load.conditions()
        .around()
        .warm()
        .map(warm -> warm ? "done" : "not done")
        .orElse("not known");
  }
}
