/**
 * Row 2: forecasts of the next readings, doubts of entries, and cautions for a step.
 *
 * <pre>
 *  Evidence: amplifier, bench, ──> WalkModel ──> StepBands, StepOutlook ──> Forecast (brief)
 *  readings not doubted               │                          StepCautions ──> Caution, Verdict
 *                                     └──> StepJudge, LoadedSearch ──> Doubt (entry)
 * </pre>
 *
 * <p>Open {@link loadwalk.forecast.Forecaster} first; {@link
 * loadwalk.forecast.standard.StandardForecaster} does the work.
 *
 * <p>Rooms, from the bottom up: this package, with the types that all share; {@link
 * loadwalk.forecast.caution}, warnings about the bench; {@link loadwalk.forecast.model}, the
 * expected readings; {@link loadwalk.forecast.doubt}, entries that look wrong; {@link
 * loadwalk.forecast.standard}, which joins the three.
 *
 * <p>Every number that does not come from a formula is a constant with its unit and source. "Set on
 * the experiment" means tuned on simulated walks, with other seeds than those reported; {@code
 * ForecastExperimentTest} checks it and {@code src/test/EVIDENCE.md} gives the figures. "Chosen by
 * hand" means that nobody measured it; the experiment passes with it.
 *
 * <h2>The method</h2>
 *
 * <p>A walk has ten readings, so bootstrap and conformal methods have nothing to resample. In
 * logarithms the physics is linear except for source resistance and limits. The linear part is
 * integrated exactly; the resistance runs over a grid that is refined step by step; rails, limits
 * and four error scales are alternatives weighted by their evidence. Predictions are mixtures of
 * normals with heavy tails, which widen when readings contradict the model.
 *
 * <p>The model describes one channel into the load it drives, so stereo readings forecast bridged
 * ones and the reverse. A load measured before draws the same current again. Below the least load
 * measured the volts fall at least as fast as between the two above it ({@code VoltsFallBound}):
 * source resistance, a converter at its end and a current limit all bend ln v over ln x the same
 * way. How fast they fall shows the cause (sag, resistance or a current limit), and the cause gives
 * the efficiency at the next load ({@code EfficiencyFall}); so the supply current remains a sharp
 * check at a new load. If nobody reads the amperes, those estimated from output and class carry the
 * sag of the supply to heavier loads.
 *
 * <p>A doubt is not a reading outside its band. Bayes' rule compares an honest step with every slip
 * over all its entries, and the slip that predicts them best is named. If an entry is doubted, or
 * in a walk of volts only is merely surprising, slips at earlier steps are considered too ({@code
 * EarlierSlips}): the readings since then are predicted again from the value the earlier step
 * meant. So a first reading taken as peak, which the ratings cannot expose, is found at the next
 * load. Both readings then stay out of later forecasts until the doubt is answered.
 *
 * <p>If the walk reads supply amps, an output doubt waits for them unless the error is gross. This
 * spares honest entries and makes the joint test sharper. If the amps are not entered, the doubt is
 * raised when the step ends.
 */
package loadwalk.forecast;
