/**
 * Row 1: fits, propagation of uncertainty, quantiles, comparison with a limit.
 *
 * <p>In: rows of finite numbers, never NaN ({@code Samples} refuses it). Out: a value with its
 * standard uncertainty or covariance, scaled by the scatter about the fit. The package knows
 * nothing of units or amplifiers. Each formula names its source, and the test of each fit compares
 * it with certified data. Open {@link loadwalk.numeric.LinearFit} for the style, {@link
 * loadwalk.numeric.Propagation} for uncertainty, {@link loadwalk.numeric.GuardBand} for verdicts.
 */
package loadwalk.numeric;
