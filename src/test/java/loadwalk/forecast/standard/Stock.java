package loadwalk.forecast.standard;

import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.forecast.LoadBank;
import loadwalk.forecast.caution.StepCautions;

/** Makes forecasters and cautions on the stock tables, with no wiring of the loads known. */
public final class Stock {
  private Stock() {}

  public static StandardForecaster forecaster() {
    return new StandardForecaster(cautions());
  }

  public static StepCautions cautions() {
    Tables tables = Tables.stock();
    return new StepCautions(tables, LoadBank.evenly(new ResistorDerating(tables)));
  }
}
