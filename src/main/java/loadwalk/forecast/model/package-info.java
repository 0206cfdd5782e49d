/**
 * What the readings of the steps to come should be: densities, not numbers.
 *
 * <pre>
 *  Evidence ──WalkReadings──> what one channel does ─┬─ OutputModel ─────> volts at each load
 *                                                    ├─ EfficiencyModel ─> amperes above idle
 *                                                    ├─ IdleModel, SagModel
 *                                                    └─> WalkModel ──StepOutlook──> StepBands
 * </pre>
 *
 * <p>In: ratings, class and readings that are not doubted. Out: a {@link
 * loadwalk.forecast.model.Mixture} for each reading of a step, and its band. Open {@link
 * loadwalk.forecast.model.WalkModel} first, then {@link loadwalk.forecast.model.OutputModel}.
 */
package loadwalk.forecast.model;
