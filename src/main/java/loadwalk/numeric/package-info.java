/**
 * Row 1: fits, propagation of uncertainty, quantiles, comparison with a limit.
 *
 * <p>In: rows of finite numbers, never NaN ({@code Samples} refuses it). Out: a value with its
 * standard uncertainty or covariance, scaled by the scatter about the fit. It knows no unit and no
 * amplifier. Each formula names its source, each fit is held to certified data in its test. Open
 * {@link loadwalk.numeric.LinearFit} for the manner, {@link loadwalk.numeric.Propagation} for
 * uncertainty, {@link loadwalk.numeric.GuardBand} for verdicts.
 */
package loadwalk.numeric;
