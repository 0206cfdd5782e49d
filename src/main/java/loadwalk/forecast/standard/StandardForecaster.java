package loadwalk.forecast.standard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Source;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.doubt.Hypotheses;
import loadwalk.forecast.doubt.StepJudge;
import loadwalk.forecast.model.Basis;
import loadwalk.forecast.model.EfficiencyModel;
import loadwalk.forecast.model.OutputModel;
import loadwalk.forecast.model.StepBands;
import loadwalk.forecast.model.WalkModel;

/**
 * Forecasts and judges by a Gaussian posterior mixed over a few discrete and one gridded parameter.
 *
 * <p>Why this method: a walk has ten readings, so a large-sample method (bootstrap, conformal) has
 * nothing to resample. The physics is linear in the logarithms except for source resistance and
 * limits. The linear part is integrated exactly, the resistance runs over a grid, and limits and
 * kinds of rails are a handful of alternatives weighted by their evidence. All errors share one
 * scale, which takes four values; so the tails are heavy, and a band widens by itself when readings
 * contradict the model. All predictive densities are mixtures of normals. Bands are their 2.5 % and
 * 97.5 % points, never narrower than the meter's specification. Nothing is drawn at random and a
 * forecast takes a fraction of a millisecond, so ten thousand rehearsals give the same answers as
 * the screen.
 *
 * <p>A doubt is not a reading outside its band: at 95 % one honest reading in twenty would be.
 * Bayes' rule decides between an honest entry and a slip ({@link Hypotheses}). An entry is doubted
 * only if a slip predicts it far better, and the slip that predicts it best is named.
 *
 * <p>{@link OutputModel} and {@link EfficiencyModel} give the reasons for their parts. The same
 * evidence always gives the same answer. Instances may be shared between threads.
 */
public final class StandardForecaster implements Forecaster {
  /** Number of models kept between calls: a walk needs few at once. Chosen by hand. */
  private static final int SLOTS = 16;

  private final AtomicReferenceArray<WalkModel> latest = new AtomicReferenceArray<>(SLOTS);

  private final StepCautions cautions;

  /** Creates a forecaster that uses the tables and load wiring of the given cautions. */
  public StandardForecaster(StepCautions cautions) {
    this.cautions = cautions;
  }

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    WalkModel model = model(evidence, target);
    StepBands bands = model.bands(target);
    Forecast.Demand demand = bands.demand().losing(leadVolts(evidence, bands));
    StepCautions.Outcome outcome = cautions.of(evidence, target, bands.bands(), demand);
    return new Forecast(
        target.stepId(),
        Band.LEVEL,
        bands.bands(),
        demand,
        outcome.cautions(),
        outcome.verdict(),
        cautions.givesFirst(evidence, target, bands.bands(), demand),
        Basis.sentences(model, target));
  }

  /** The leads never lose more than the source has. */
  private Optional<Band> leadVolts(Evidence evidence, StepBands bands) {
    double most =
        evidence.bench().source().map(Source::volts).orElse(evidence.conditions().supplyVolts());
    return cautions
        .leadVolts(evidence.bench(), bands.bands())
        .map(
            lost ->
                new Band(
                    Math.min(most, lost.low()),
                    Math.min(most, lost.middle()),
                    Math.min(most, lost.high())));
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return new StepJudge(model(evidence, target), target, entries, false).judge();
  }

  @Override
  public List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return new StepJudge(model(evidence, target), target, entries, true).judge();
  }

  private WalkModel model(Evidence all, Target target) {
    Evidence evidence = ofModel(all, target);
    int slot = Math.floorMod(evidence.observations().hashCode(), SLOTS);
    WalkModel kept = latest.get(slot);
    if (kept != null && kept.evidence().equals(evidence)) {
      return kept;
    }
    WalkModel fresh = new WalkModel(evidence);
    latest.set(slot, fresh);
    return fresh;
  }

  /**
   * Returns the evidence without what only the cautions use: the step's own cold load, and the
   * steps that ended before they were measured.
   */
  private static Evidence ofModel(Evidence all, Target target) {
    List<Observation> known = all.observations();
    int last = known.size() - 1;
    boolean coldLoad =
        last >= 0
            && known.get(last).target().stepId().equals(target.stepId())
            && known.get(last).readings().keySet().equals(Set.of(ReadingId.LOAD_OHMS));
    return all.withOnly(coldLoad ? known.subList(0, last) : known);
  }
}
