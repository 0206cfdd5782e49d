package loadwalk.forecast;

import loadwalk.bench.Tables;

/** Makes forecasters and cautions on the stock tables, with no wiring of the loads known. */
final class Stock {
  private Stock() {}

  static StandardForecaster forecaster() {
    return new StandardForecaster(cautions());
  }

  static StepCautions cautions() {
    return new StepCautions(Tables.stock(), LoadBank.evenly());
  }
}
