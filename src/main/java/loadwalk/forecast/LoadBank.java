package loadwalk.forecast;

import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Hold;
import loadwalk.bench.Mode;
import loadwalk.bench.ResistorDerating;

/** Works out the hottest resistor of a load wired from the bench's stock. */
public interface LoadBank {

  /**
   * Returns the hottest resistor of the load.
   *
   * @param bench the bench with its stock of resistors
   * @param mode stereo (two such loads at once) or bridged (one)
   * @param ohms the load, ohms
   * @param loadWatts the watts in one load
   * @param hold how long they are held
   * @return empty if the stock is unknown or cannot make this load
   */
  Optional<Hottest> hottest(Bench bench, Mode mode, double ohms, double loadWatts, Hold hold);

  /**
   * The hottest resistor of a load, with its rating.
   *
   * @param label the name of the resistor
   * @param watts the watts it takes
   * @param ratedWatts its rating, watts
   * @param mostWatts the watts it bears for the hold as it is mounted
   */
  record Hottest(String label, double watts, double ratedWatts, double mostWatts) {
    /** Returns the watts over what it bears. */
    public double share() {
      return watts / mostWatts;
    }
  }

  /**
   * Returns a bank that spreads the watts over the whole stock in proportion to what each resistor
   * bears. No wiring can do better, so a load that is too much here is too much in any wiring.
   */
  static LoadBank evenly(ResistorDerating derating) {
    return (bench, mode, ohms, loadWatts, hold) -> {
      double stock =
          bench.loads().stream().mapToDouble(r -> derating.mostWatts(r, hold) * r.count()).sum();
      double share = loadWatts * mode.loads() / stock;
      return bench.loads().stream()
          .findFirst()
          .map(
              r -> {
                double bears = derating.mostWatts(r, hold);
                return new Hottest(r.label(), share * bears, r.watts(), bears);
              });
    };
  }
}
