package loadwalk.forecast.doubt;

import loadwalk.forecast.Band;
import loadwalk.forecast.Slip;

/** Names the slip behind a load that measures out of tolerance. */
final class LoadSlip {
  private LoadSlip() {}

  /** Returns the slip that explains a measured load outside its band. */
  static Slip of(double measuredOhms, Band band) {
    if (band.holds(measuredOhms / 2)) {
      return Slip.LOAD_DOUBLE;
    }
    if (band.holds(measuredOhms * 2)) {
      return Slip.LOAD_HALF;
    }
    boolean decimal =
        band.holds(measuredOhms * 10)
            || band.holds(measuredOhms / 10)
            || band.holds(measuredOhms / 1000)
            || band.holds(measuredOhms * 1000);
    return decimal ? Slip.DECIMAL_POINT : Slip.UNNAMED;
  }
}
