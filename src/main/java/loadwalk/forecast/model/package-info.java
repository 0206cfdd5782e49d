/**
 * Predictions of the readings of the steps to come: densities, not numbers.
 *
 * <pre>
 *  Evidence ──WalkReadings──> what one channel does ─┬─ OutputModel ─────> volts at each load
 *                                                    ├─ EfficiencyModel ─> amperes above idle
 *                                                    ├─ IdleModel, SagModel
 *                                                    └─> WalkModel ──StepOutlook──> StepBands
 * </pre>
 *
 * <p>In: ratings, class and undoubted readings. Out: a {@link loadwalk.forecast.model.Mixture} for
 * each reading of a step, and its band. Open {@link loadwalk.forecast.model.WalkModel} first, then
 * {@link loadwalk.forecast.model.OutputModel}.
 */
package loadwalk.forecast.model;
