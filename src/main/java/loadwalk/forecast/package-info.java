/**
 * Row 2: what the next readings should be, what contradicts them, and what a step asks.
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
 * <p>Rooms, from the bottom up: this package, the words that all share; {@link
 * loadwalk.forecast.caution}, what a step asks of the bench; {@link loadwalk.forecast.model}, what
 * the readings should be; {@link loadwalk.forecast.doubt}, what contradicts them; {@link
 * loadwalk.forecast.standard}, which joins the three.
 *
 * <p>A number that is no formula's is a constant with its unit and where it comes from. "Set on the
 * experiment" means tuned on simulated walks, on seeds other than those reported; {@code
 * ForecastExperimentTest} holds it and {@code src/test/EVIDENCE.md} gives its figures. "Chosen by
 * hand" means that nobody measured it; the experiment passes with it.
 *
 * <h2>The method</h2>
 *
 * <p>A walk has ten readings, so bootstrap and conformal methods have nothing to resample. In
 * logarithms the physics is linear but for source resistance and limits. The linear part is
 * integrated exactly; the resistance runs over a grid that closes in; rails, limits and four scales
 * of error are alternatives weighed by their evidence. Predictions are mixtures of normals with
 * heavy tails, which widen where readings contradict the model.
 *
 * <p>All is told of what one channel does into the load it drives, so stereo forecasts bridged and
 * the reverse. A load measured before draws its current again. Below the least load measured the
 * volts fall at least as fast as between the two above it ({@code VoltsFallBound}): source
 * resistance, a converter at its end and a current limit all bend ln v over ln x the same way. How
 * fast they fall tells what takes them, sag, resistance or a current limit, and with it how the
 * efficiency goes on ({@code EfficiencyFall}); that keeps the supply current a sharp witness at a
 * load not seen before. Where nobody reads the amperes, those told by the outputs and the class
 * carry the sag of the supply to heavier loads.
 *
 * <p>A doubt is not a reading outside its band. It is a Bayes comparison of honest against every
 * slip over all entries of the step; the slip that predicts them best is named. Where an entry is
 * doubted, or with volts only surprises, the slips of the earlier steps join in ({@code
 * EarlierSlips}): the readings since are predicted anew with what the earlier step meant. So a
 * first reading taken as peak, which ratings cannot tell, is named by the load after it. Both
 * readings then stay out of later forecasts until the doubt is answered.
 *
 * <p>An output doubt waits for the supply amps where the walk reads them, unless it is gross. That
 * leaves honest entries alone and lets the joint judgement be keen. If the amps are not entered, it
 * is raised when the step ends.
 */
package loadwalk.forecast;
