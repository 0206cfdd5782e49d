/**
 * The forecaster that Loadwalk goes by: it asks the models, the cautions and the doubts.
 *
 * <p>In: {@link loadwalk.forecast.Evidence}. Out: what {@link loadwalk.forecast.Forecaster}
 * promises. Open {@link loadwalk.forecast.standard.StandardForecaster}, its one class.
 */
package loadwalk.forecast.standard;
