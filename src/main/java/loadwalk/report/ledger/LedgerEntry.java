package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.bench.Outcome;
import loadwalk.bench.Target;
import loadwalk.journal.Soundness;
import loadwalk.plan.Rules;
import loadwalk.quantity.Quantity;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.sequence.Sequence;
import loadwalk.walk.Results;
import loadwalk.walk.Targets;
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
 * @param ended the loads at which a step ended before it was measured
 * @param repeats how well its bench repeated a reading
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
    List<Ended> ended,
    BenchRepeats repeats,
    Soundness soundness) {
  private static final String DAMAGED = "journal damaged";
  private static final Comparator<Load> BY_POWER = Comparator.comparingDouble(load -> load.watts());

  /** Copies the loads. */
  public LedgerEntry {
    loads = List.copyOf(loads);
    ended = List.copyOf(ended);
  }

  /** Makes the entry of a walk in which every load was measured. */
  public LedgerEntry(
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
      BenchRepeats repeats,
      Soundness soundness) {
    this(
        walk,
        amplifier,
        practice,
        finished,
        openDoubts,
        wallMillis,
        done,
        fuseAmps,
        regulated,
        loads,
        List.of(),
        repeats,
        soundness);
  }

  /**
   * A load at which a step ended before it was measured.
   *
   * @param mode how the load was connected
   * @param ohms the nominal load, ohms
   * @param outcome how the step ended
   */
  public record Ended(Mode mode, double ohms, Outcome outcome) {}

  /** Returns how a step into a load ended that has no result, the last time that it did. */
  Optional<Ended> endedAt(Mode mode, double ohms) {
    return ended.stream()
        .filter(e -> e.mode() == mode && Conditions.within(Likeness.SAME_OHMS, e.ohms(), ohms))
        .reduce((first, last) -> last);
  }

  /**
   * How a walk was to be measured. It is told; it plays no part in what ranks.
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
   * @param conditions the conditions that it was reached under
   * @param askedHertz the test tone that the sequence asks for
   * @param limitThdPercent the distortion at which it was to be read
   * @param marks what a reader must know before its numbers, worst first
   * @param channelWatts the power in each load that was read, channel 1 first
   * @param totalWatts the power in all loads
   * @param ratio measured over rated, where there is a rating
   * @param verdict what the measurement shows about the rating
   * @param efficiency output over input, a fraction, where both were read
   * @param efficiencyU its standard uncertainty
   */
  public record Load(
      Conditions conditions,
      double askedHertz,
      double limitThdPercent,
      List<Mark> marks,
      List<KeptWatts> channelWatts,
      KeptWatts totalWatts,
      OptionalDouble ratio,
      Optional<RatingComparison.Verdict> verdict,
      OptionalDouble efficiency,
      OptionalDouble efficiencyU) {
    /** Copies the lists. */
    public Load {
      marks = List.copyOf(marks);
      channelWatts = List.copyOf(channelWatts);
    }

    /** Returns how the load was connected. */
    public Mode mode() {
      return conditions.mode();
    }

    /** Returns the nominal load, ohms. */
    public double ohms() {
      return conditions.ohms();
    }

    /** Returns the power in all loads, watts. */
    public double watts() {
      return totalWatts.value();
    }

    Criterion criterion() {
      return conditions.criterion();
    }

    OptionalDouble supplyVolts() {
      return conditions.supplyVolts();
    }

    boolean isPractice() {
      return conditions.around().practice();
    }

    /** Returns the power in all loads; its uncertainty counts as one separate source. */
    Quantity total(String walk) {
      return totalWatts.quantity(walk + ":" + mode().word() + ohms());
    }

    /** Tells whether another load has the same mode and nominal value. */
    boolean sameAs(Load other) {
      return mode() == other.mode() && Conditions.within(Likeness.SAME_OHMS, ohms(), other.ohms());
    }

    /** Returns the worst mark with which no result is ranked. */
    Optional<Mark> unrankedBy() {
      return marks.stream().filter(mark -> !mark.isRanked()).findFirst();
    }

    /** Tells whether it shows something about its rating: both were under like conditions. */
    boolean hasVerdict() {
      return verdict.filter(v -> v != RatingComparison.Verdict.OTHER_CONDITIONS).isPresent();
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
        ended,
        repeats,
        judged);
  }

  /** Returns the entry of a walk, finished or not. */
  public static LedgerEntry of(WalkState state, Rules rules) {
    WalkResult result = Results.of(state, rules.wire());
    Sequence s = state.opened().sequence();
    List<Load> loads = new ArrayList<>();
    for (PublishedPower power : result.published().values()) {
      loads.add(load(s, power, result.step(power.fromStepId()).orElseThrow()));
    }
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
        ended(state),
        new BenchRepeats(BenchRepeats.name(state.opened().bench()), result.pairs()),
        Soundness.WHOLE);
  }

  private static List<Ended> ended(WalkState state) {
    return Targets.ended(state).stream()
        .filter(step -> step.target().kind() == Target.Kind.LOADED)
        .map(step -> new Ended(step.target().mode(), step.target().ohms(), step.outcome()))
        .toList();
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

  private static Load load(Sequence asked, PublishedPower power, StepResult step) {
    Optional<RatingComparison> rating = power.rating();
    return new Load(
        power.conditions(),
        asked.toneHertz(),
        asked.limitThdPercent(),
        power.marks(),
        power.channelWatts().stream().map(KeptWatts::of).toList(),
        KeptWatts.of(power.totalWatts()),
        number(rating.map(RatingComparison::ratio), Quantity::value),
        rating.map(RatingComparison::verdict),
        number(step.efficiency(), Quantity::value),
        number(step.efficiency(), Quantity::u));
  }

  private static OptionalDouble number(
      Optional<Quantity> quantity, ToDoubleFunction<Quantity> what) {
    return quantity.isPresent()
        ? OptionalDouble.of(what.applyAsDouble(quantity.get()))
        : OptionalDouble.empty();
  }

  /** Tells whether a journal that lacks nothing holds this result, at a stated point, undoubted. */
  boolean ranks(Load load) {
    return !soundness.standing().isFaulty()
        && load.criterion().isStated()
        && load.unrankedBy().isEmpty();
  }

  /** Returns the load with the most total power among those that rank. */
  Optional<Load> strongestRanked() {
    return ranked().max(BY_POWER);
  }

  /** Returns the load with the most total power: of those that rank, if any does. */
  public Optional<Load> strongest() {
    return strongestRanked().or(() -> loads.stream().max(BY_POWER));
  }

  /** Returns the most watts per ampere of the amplifier's own fuses, of a result that ranks. */
  public OptionalDouble wattsPerFuseAmp() {
    Optional<Load> most = strongestRanked();
    return most.isPresent() && fuseAmps.isPresent()
        ? OptionalDouble.of(most.get().watts() / fuseAmps.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * Returns the load with the lowest ratio of measured to rated power, of results that rank and
   * were read under the conditions of their rating.
   */
  public Optional<Load> worstOfRated() {
    return ranked()
        .filter(Load::hasVerdict)
        .min(Comparator.comparingDouble(l -> l.ratio().getAsDouble()));
  }

  /** Returns the load with the best efficiency among those that rank. */
  Optional<Load> mostEfficient() {
    return ranked()
        .filter(l -> l.efficiency().isPresent())
        .max(Comparator.comparingDouble(l -> l.efficiency().getAsDouble()));
  }

  /** Returns the best efficiency over all loads that rank. */
  public OptionalDouble bestEfficiency() {
    return mostEfficient().map(Load::efficiency).orElse(OptionalDouble.empty());
  }

  /** Returns why a result does not rank; for one that {@link #ranks} does not hold of. */
  String unranked(Load load) {
    return soundness.standing().isFaulty()
        ? DAMAGED
        : load.unrankedBy().map(Mark::text).orElse("no stated limit");
  }

  /** Returns why none of its results ranks. */
  String unranked() {
    String none = soundness.standing().isFaulty() ? DAMAGED : "nothing measured";
    return strongest().map(this::unranked).orElse(none);
  }

  private Stream<Load> ranked() {
    return loads.stream().filter(this::ranks);
  }
}
