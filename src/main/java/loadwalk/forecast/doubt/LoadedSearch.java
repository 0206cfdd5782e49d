package loadwalk.forecast.doubt;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.model.WalkReadings;

/**
 * Looks for a slip in the output and the supply current of a loaded step, or at an earlier step if
 * that explains them better.
 */
final class LoadedSearch {
  /**
   * ln of the odds of a slip against none that a doubt needs if only the forecast speaks.
   *
   * <p>A doubt costs the operator seconds and a missed slip costs an amplifier, so less than even
   * odds will do. Honest readings set how much less: this limit and those below doubt at most about
   * one honest entry in three hundred in the populations of src/test/EVIDENCE.md, shared out where
   * that finds most slips.
   */
  private static final double NEEDED_LOG_ODDS = -2.1;

  /**
   * The same before the first reading: ratings are off by 3 dB at most, so few honest readings fall
   * where a slip is likelier.
   */
  private static final double NEEDED_AT_FIRST = -2.6;

  /**
   * The same if output and supply amps speak together: honest readings agree so well that even the
   * rarest slip can be asked about.
   */
  private static final double NEEDED_WITH_AMPS = -3.5;

  /** The same for an output whose supply amps are still to come. */
  private static final double NEEDED_BEFORE_AMPS = 1.5;

  /** Ratio of watts out to watts in that no meter error can explain. */
  private static final double IMPOSSIBLE = 1.04;

  /**
   * The odds needed for a slip at an earlier step, which are higher: an amplifier that first
   * reaches a limit at this load leaves the same readings as an earlier slip.
   */
  private static final double NEEDED_OF_EARLIER = -1.8;

  /**
   * How far ln of the density must be below its peak for earlier steps to be searched when nothing
   * is doubted: one honest entry in ten. The search is the slowest part.
   */
  private static final double SURPRISING = 3;

  private final WalkModel model;
  private final Target target;
  private final Map<ReadingId, Double> entries;
  private final boolean soFar;
  private final ReadingId outputId;
  private final Double output;
  private final Double amps;
  private final LoadedJudge judge;

  /**
   * The result of a search.
   *
   * @param finding what is off at this step; if an earlier step is to blame, the reading that
   *     reveals it
   * @param earlier the slip at an earlier step, if that is likelier than any slip at this one
   * @param aboveInput whether the output exceeds the input
   * @param follows whether the forecast depends on earlier readings, which may be off themselves
   */
  record Found(
      Hypotheses.Finding finding,
      Optional<EarlierSlips.Found> earlier,
      boolean aboveInput,
      boolean follows) {}

  LoadedSearch(
      WalkModel model,
      Target target,
      Map<ReadingId, Double> entries,
      double supplyVolts,
      boolean soFar) {
    this.model = model;
    this.target = target;
    this.soFar = soFar;
    this.entries = entries;
    outputId = WalkReadings.output(entries);
    output = entries.get(outputId);
    amps = entries.get(ReadingId.SUPPLY_AMPS);
    double ohms = WalkReadings.loadOhms(model.evidence().bench(), target, entries);
    judge = new LoadedJudge(model, target, ohms, supplyVolts);
  }

  Found find() {
    double needed = needed();
    Hypotheses.Finding finding = judge.weigh(outputId, output, amps, before()).find(needed);
    boolean follows = model.output().measured();
    boolean aboveInput = judge.outputOverInput(entries) > IMPOSSIBLE;
    Optional<EarlierSlips.Found> earlier = earlier(needed, finding);
    if (earlier.isPresent()) {
      Set<ReadingId> shown = Set.of(output == null ? ReadingId.SUPPLY_AMPS : outputId);
      EarlierSlips.Found found = earlier.get();
      return new Found(
          new Hypotheses.Finding(shown, found.slip(), found.meant(), found.logOdds()),
          earlier,
          aboveInput,
          true);
    }
    if (aboveInput && (finding.faulty().isEmpty() || finding.slip() == Slip.UNNAMED)) {
      Set<ReadingId> faulty = finding.faulty().isEmpty() ? Set.of(outputId) : finding.faulty();
      return new Found(
          new Hypotheses.Finding(faulty, Slip.OUTPUT_ABOVE_INPUT, Double.NaN, finding.logOdds()),
          earlier,
          true,
          follows);
    }
    return new Found(finding, earlier, aboveInput, follows);
  }

  /**
   * Searches the earlier steps for a slip likelier than any at this one. The search runs if a doubt
   * would be raised; with volts only, where readings seldom surprise, it also runs if the entry is
   * merely surprising.
   */
  private Optional<EarlierSlips.Found> earlier(double needed, Hypotheses.Finding finding) {
    if (!model.output().measured()) {
      return Optional.empty();
    }
    boolean doubted = !finding.faulty().isEmpty();
    if (!doubted && amps != null) {
      return Optional.empty();
    }
    double surprise = judge.surprise(outputId, output, amps);
    double floor = Math.max(needed, NEEDED_OF_EARLIER);
    return doubted || surprise > SURPRISING
        ? new EarlierSlips(model, new Observation(target, atHand()))
            .likeliest(Math.max(floor, finding.logOdds()), surprise)
        : Optional.empty();
  }

  /** Returns the entries that the search considers. */
  private Map<ReadingId, Double> atHand() {
    Map<ReadingId, Double> kept = new EnumMap<>(entries);
    kept.keySet()
        .retainAll(
            Set.of(outputId, ReadingId.SUPPLY_AMPS, ReadingId.SUPPLY_VOLTS, ReadingId.LOAD_OHMS));
    if (!judge.knowsSupply()) {
      kept.remove(ReadingId.SUPPLY_VOLTS);
    }
    return kept;
  }

  /**
   * Returns the ln odds that a doubt of the output needs. In a walk that reads supply amps, a doubt
   * that they may settle waits for them, unless the error is gross.
   */
  private double needed() {
    if (amps != null) {
      return NEEDED_WITH_AMPS;
    }
    boolean waits =
        soFar
            && model.evidence().observations().stream()
                .anyMatch(o -> o.reading(ReadingId.SUPPLY_AMPS).isPresent());
    if (waits) {
      return NEEDED_BEFORE_AMPS;
    }
    return model.output().measured() ? NEEDED_LOG_ODDS : NEEDED_AT_FIRST;
  }

  private LoadedJudge.Before before() {
    List<Observation> observations = model.evidence().observations();
    Double outputBefore = null;
    Double ampsBefore = null;
    if (!observations.isEmpty()) {
      Observation last = observations.get(observations.size() - 1);
      if (!last.target().stepId().equals(target.stepId())) {
        outputBefore = boxed(last.reading(outputId));
        ampsBefore = boxed(last.reading(ReadingId.SUPPLY_AMPS));
      }
    }
    return new LoadedJudge.Before(
        outputBefore,
        ampsBefore,
        newUnit(observations),
        EnteredDecimals.of(model.evidence(), outputId, output == null ? 0 : output),
        EnteredDecimals.of(model.evidence(), ReadingId.SUPPLY_AMPS, amps == null ? 0 : amps));
  }

  private boolean newUnit(List<Observation> observations) {
    ReadingId other =
        outputId == ReadingId.OUTPUT_WATTS ? ReadingId.OUTPUT_VOLTS : ReadingId.OUTPUT_WATTS;
    return observations.stream().anyMatch(o -> o.reading(other).isPresent())
        && observations.stream().noneMatch(o -> o.reading(outputId).isPresent());
  }

  private static Double boxed(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
