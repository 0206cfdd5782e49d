package loadwalk.forecast;

import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReferenceArray;
import loadwalk.bench.ReadingId;

/**
 * Forecasts and judges by a Gaussian posterior mixed over a few discrete and one gridded parameter.
 *
 * <p>The method is argued at {@link OutputModel}, {@link EfficiencyModel} and {@link Hypotheses}.
 * The same evidence always gives the same answer.
 */
public final class StandardForecaster implements Forecaster {
  /** The probability that a reading falls in its band. */
  public static final double LEVEL = 0.95;

  /** Models are kept for the calls that follow on the same evidence; a slot lost costs time. */
  private static final int SLOTS = 16;

  private final AtomicReferenceArray<WalkModel> latest = new AtomicReferenceArray<>(SLOTS);

  private final StepCautions cautions;

  /** Makes a forecaster with the stock tables and no wiring of the loads known. */
  public StandardForecaster() {
    this(StepCautions.stock());
  }

  /** Makes a forecaster with the operator's own tables or wiring in its cautions. */
  public StandardForecaster(StepCautions cautions) {
    this.cautions = cautions;
  }

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    WalkModel model = model(evidence);
    StepBands bands = model.bands(target);
    StepCautions.Outcome outcome = cautions.of(evidence, target, bands.bands(), bands.demand());
    return new Forecast(
        target.stepId(),
        LEVEL,
        bands.bands(),
        bands.demand(),
        outcome.cautions(),
        outcome.verdict(),
        Basis.sentence(model, target));
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return new StepJudge(model(evidence), target, entries).judge();
  }

  private WalkModel model(Evidence evidence) {
    int slot = Math.floorMod(evidence.hashCode(), SLOTS);
    WalkModel kept = latest.get(slot);
    if (kept != null && kept.evidence().equals(evidence)) {
      return kept;
    }
    WalkModel fresh = new WalkModel(evidence);
    latest.set(slot, fresh);
    return fresh;
  }
}
