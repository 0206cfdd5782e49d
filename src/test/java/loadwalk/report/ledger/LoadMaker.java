package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison.Verdict;
import loadwalk.result.ReadBy;

/**
 * Makes one result of a ledger for tests: warm, at the limit of 1 %, 40 Hz, 13.5 V, unless said.
 */
final class LoadMaker {
  private final Mode mode;
  private final double ohms;
  private final double watts;
  private double u;
  private double degrees = Double.POSITIVE_INFINITY;
  private Criterion criterion = Criterion.THD_LIMIT;
  private double limit = 1;
  private double asked = 40;
  private OptionalDouble hertz = OptionalDouble.of(40);
  private OptionalDouble supply = OptionalDouble.of(13.5);
  private Optional<Boolean> warm = Optional.of(true);
  private boolean practice;
  private final List<Mark> marks = new ArrayList<>();
  private OptionalDouble ratio = OptionalDouble.empty();
  private Optional<Verdict> verdict = Optional.empty();
  private OptionalDouble efficiency = OptionalDouble.empty();

  private LoadMaker(Mode mode, double ohms, double watts) {
    this.mode = mode;
    this.ohms = ohms;
    this.watts = watts;
    this.u = 0.01 * watts;
  }

  /** A result of so many watts in each load, known to 1 %. */
  static LoadMaker load(Mode mode, double ohms, double watts) {
    return new LoadMaker(mode, ohms, watts);
  }

  LoadMaker u(double of, double degreesOfFreedom) {
    u = of;
    degrees = degreesOfFreedom;
    return this;
  }

  LoadMaker at(Criterion reached) {
    criterion = reached;
    return this;
  }

  LoadMaker limit(double percent) {
    limit = percent;
    return this;
  }

  LoadMaker asked(double tone) {
    asked = tone;
    return this;
  }

  /** The tone read; below zero where nobody read it. */
  LoadMaker tone(double read) {
    hertz = known(read);
    return this;
  }

  /** The supply volts read; below zero where nobody read them. */
  LoadMaker supply(double volts) {
    supply = known(volts);
    return this;
  }

  LoadMaker warm(Optional<Boolean> done) {
    warm = done;
    return this;
  }

  LoadMaker practice() {
    practice = true;
    return marked(Mark.PRACTICE);
  }

  LoadMaker marked(Mark mark) {
    marks.add(mark);
    return this;
  }

  LoadMaker rated(double of, Verdict shown) {
    ratio = OptionalDouble.of(of);
    verdict = Optional.of(shown);
    return this;
  }

  LoadMaker efficiency(double of) {
    efficiency = known(of);
    return this;
  }

  static OptionalDouble known(double value) {
    return value < 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  LedgerEntry.Load made() {
    OptionalDouble thd =
        criterion == Criterion.THD_LIMIT ? OptionalDouble.of(limit) : OptionalDouble.empty();
    boolean stoodBy = marks.contains(Mark.STOOD_BY);
    Circumstances around =
        new Circumstances(
            Optional.empty(),
            warm,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.of(practice ? ReadBy.PRACTICE : ReadBy.HAND),
            practice,
            stoodBy,
            marks.contains(Mark.IN_DOUBT));
    Conditions read =
        new Conditions(
            mode,
            ohms,
            OptionalDouble.empty(),
            1,
            hertz,
            criterion,
            thd.isEmpty(),
            thd,
            supply,
            around);
    return new LedgerEntry.Load(
        read,
        asked,
        limit,
        marks,
        List.of(new KeptWatts(watts, u, degrees, 0)),
        new KeptWatts(mode.loads() * watts, mode.loads() * u, degrees, 0),
        ratio,
        verdict,
        efficiency,
        efficiency.isPresent()
            ? OptionalDouble.of(0.02 * efficiency.getAsDouble())
            : OptionalDouble.empty());
  }
}
