/**
 * The forecaster that Loadwalk uses: it joins models, cautions and doubts.
 *
 * <p>In: {@link loadwalk.forecast.Evidence}. Out: the answers of {@link
 * loadwalk.forecast.Forecaster}. Open {@link loadwalk.forecast.standard.StandardForecaster}, its
 * one class.
 */
package loadwalk.forecast.standard;
