package loadwalk.forecast.caution;

import loadwalk.bench.Figures;
import loadwalk.forecast.Band;
import loadwalk.forecast.LoadBank;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * The hottest resistor of a load, with the load that it is a part of.
 *
 * @param stress the resistor, watts
 * @param ratedWatts its rating, watts
 * @param share its part of the watts in the load
 * @param loadWatts the watts in the load
 * @param ohms the load, ohms
 */
record LoadStress(Stress stress, double ratedWatts, double share, Band loadWatts, double ohms) {

  static LoadStress of(LoadBank.Hottest worst, Band loadWatts, double ohms) {
    double share = worst.watts() / loadWatts.high();
    Band part =
        new Band(share * loadWatts.low(), share * loadWatts.middle(), share * loadWatts.high());
    double counted = Math.min(worst.ratedWatts(), worst.mostWatts());
    Stress stress =
        new Stress(
            "load-watts",
            Sentence.of("load resistor \"{}\"", worst.label()),
            "the load resistors bear",
            part,
            new Bears(counted, worst.mostWatts(), counted),
            Unit.WATT);
    return new LoadStress(stress, worst.ratedWatts(), share, loadWatts, ohms);
  }

  /** Returns the watts in the whole load that the resistor can be counted on for. */
  double countedLoadWatts() {
    return stress.bears().counted() / share;
  }

  /** Returns the rms volts across the load at which to stop. */
  double stopVolts() {
    return Figures.down(Math.sqrt(stress.bears().stop() / share * ohms));
  }
}
