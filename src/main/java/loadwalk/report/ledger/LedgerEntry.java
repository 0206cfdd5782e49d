package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.journal.Soundness;
import loadwalk.plan.Rules;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.result.Criterion;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.sequence.Sequence;
import loadwalk.walk.Results;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.WalkState;

/**
 * A small record of one walk: just enough to compare it with others.
 *
 * @param walk the name the walk is found by: that of its journal's file
 * @param amplifier maker and model
 * @param practice whether the amplifier is simulated
 * @param finished whether every step is done or skipped
 * @param openDoubts the number of doubts without an answer
 * @param wallMillis the wall clock of its newest record, ms since 1970
 * @param done how the walk was measured
 * @param fuseAmps the sum of the amplifier's own fuses, where known
 * @param regulated whether its rails are regulated, where known
 * @param loads the output at each load
 * @param soundness how far its records are all that was kept
 */
public record LedgerEntry(
    String walk,
    String amplifier,
    boolean practice,
    boolean finished,
    int openDoubts,
    long wallMillis,
    Done done,
    OptionalDouble fuseAmps,
    Optional<Boolean> regulated,
    List<Load> loads,
    Soundness soundness) {
  /** Copies the loads. */
  public LedgerEntry {
    loads = List.copyOf(loads);
  }

  /**
   * How a walk was measured; a comparison of walks measured differently carries a mark.
   *
   * @param sequence the sequence's name
   * @param contentHash the SHA-256 of its file
   * @param toneHertz the test tone
   * @param limitThdPercent the distortion at which volts are read
   * @param supplyVolts the supply voltage that the sequence asks for
   */
  public record Done(
      String sequence,
      String contentHash,
      double toneHertz,
      double limitThdPercent,
      double supplyVolts) {}

  /**
   * The output at one load.
   *
   * @param mode how the load was connected
   * @param ohms the nominal load
   * @param criterion the point at which it was read
   * @param watts the power in one load
   * @param wattsU its standard uncertainty
   * @param totalWatts the power in all loads
   * @param totalU its standard uncertainty
   * @param ratio measured over rated, where there is a rating
   * @param verdict what the measurement shows about the rating
   * @param efficiency output over input, a fraction, where both were read
   * @param efficiencyU its standard uncertainty
   * @param supplyVolts the volts read at the amplifier's terminals
   */
  public record Load(
      Mode mode,
      double ohms,
      Criterion criterion,
      double watts,
      double wattsU,
      double totalWatts,
      double totalU,
      OptionalDouble ratio,
      Optional<RatingComparison.Verdict> verdict,
      OptionalDouble efficiency,
      OptionalDouble efficiencyU,
      OptionalDouble supplyVolts) {

    /** Returns the power in all loads; its uncertainty counts as one separate source. */
    Quantity total(String walk) {
      return Quantity.of(totalWatts, Unit.WATT, walk + ":watts", totalU);
    }

    /** Tells whether another load has the same mode and nominal value. */
    boolean sameAs(Load other) {
      return mode == other.mode && Math.abs(ohms - other.ohms) <= 1e-3 * ohms;
    }
  }

  /** Returns the same under another name. */
  LedgerEntry under(String name) {
    return with(name, soundness);
  }

  /** Returns the same with how far its records are all that was kept. */
  public LedgerEntry with(Soundness judged) {
    return with(walk, judged);
  }

  private LedgerEntry with(String name, Soundness judged) {
    return new LedgerEntry(
        name,
        amplifier,
        practice,
        finished,
        openDoubts,
        wallMillis,
        done,
        fuseAmps,
        regulated,
        loads,
        judged);
  }

  /** Returns the entry of a walk, finished or not. */
  public static LedgerEntry of(WalkState state, Rules rules) {
    WalkResult result = Results.of(state, rules.wire());
    List<Load> loads = new ArrayList<>();
    for (PublishedPower power : result.published().values()) {
      loads.add(load(state, power, result.step(power.fromStepId()).orElseThrow()));
    }
    Sequence s = state.opened().sequence();
    return new LedgerEntry(
        state.opened().walk(),
        state.opened().amplifier().name(),
        state.opened().practiceSeed().isPresent(),
        state.isFinished(),
        state.openDoubts().size(),
        state.lastWallMillis(),
        new Done(s.name(), s.contentHash(), s.toneHertz(), s.limitThdPercent(), s.supplyVolts()),
        state.opened().amplifier().fuseAmps(),
        state.opened().amplifier().regulated(),
        loads,
        Soundness.WHOLE);
  }

  /**
   * Returns the entry of the walk in the record bodies of a journal, skipping records that a ledger
   * does not need.
   *
   * @throws loadwalk.walk.fact.UnreadableFact if a body holds something this version does not know
   */
  public static LedgerEntry ofBodies(List<String> bodies, Rules rules) {
    return of(FactText.walk(NeededRecords.needed(bodies)), rules);
  }

  private static Load load(WalkState state, PublishedPower power, StepResult step) {
    Optional<RatingComparison> rating = step.rating();
    OptionalDouble volts =
        state
            .step(power.fromStepId())
            .latest(ReadingId.SUPPLY_VOLTS)
            .map(Entry::value)
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty);
    return new Load(
        power.mode(),
        power.ohms(),
        power.criterion(),
        power.watts().value(),
        power.watts().u(),
        power.totalWatts().value(),
        power.totalWatts().u(),
        number(rating.map(RatingComparison::ratio), Quantity::value),
        rating.map(RatingComparison::verdict),
        number(step.efficiency(), Quantity::value),
        number(step.efficiency(), Quantity::u),
        volts);
  }

  private static OptionalDouble number(
      Optional<Quantity> quantity, ToDoubleFunction<Quantity> what) {
    return quantity.isPresent()
        ? OptionalDouble.of(what.applyAsDouble(quantity.get()))
        : OptionalDouble.empty();
  }

  /** Returns the load with the most total power. */
  public Optional<Load> strongest() {
    return loads.stream().max(Comparator.comparingDouble(Load::totalWatts));
  }

  /** Returns the most watts per ampere of the amplifier's own fuses. */
  public OptionalDouble wattsPerFuseAmp() {
    Optional<Load> most = strongest();
    return most.isPresent() && fuseAmps.isPresent()
        ? OptionalDouble.of(most.get().totalWatts() / fuseAmps.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Returns the load with the lowest ratio of measured to rated power. */
  public Optional<Load> worstOfRated() {
    return loads.stream()
        .filter(l -> l.ratio().isPresent())
        .min(Comparator.comparingDouble(l -> l.ratio().getAsDouble()));
  }

  /** Returns the best efficiency over all loads. */
  public OptionalDouble bestEfficiency() {
    return loads.stream()
        .filter(l -> l.efficiency().isPresent())
        .mapToDouble(l -> l.efficiency().getAsDouble())
        .max();
  }
}
