package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Figures;
import loadwalk.bench.Mode;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.quantity.Printer;
import loadwalk.text.Sentence;

/**
 * A found wiring at the watts a step brings.
 *
 * @param title which load it is: "stereo 4 Ω"
 * @param loads each load with its terminals
 * @param watts the watts in one load at worst; 0 where not known
 * @param burstSeconds how long that may last from cold; infinite where without limit, 0 where not
 *     at all
 * @param fewest whether it is proved that no wiring needs fewer resistors
 */
public record WiringSummary(
    String title, List<Load> loads, double watts, double burstSeconds, boolean fewest) {
  /** Copies the list. */
  public WiringSummary {
    loads = List.copyOf(loads);
  }

  /**
   * One load.
   *
   * @param plus the name of its one amplifier terminal
   * @param minus the name of the other
   * @param network how it is wired
   */
  public record Load(String plus, String minus, Network network) {}

  /** Returns a found wiring as a step uses it. */
  public static WiringSummary of(Mode mode, double watts, WiringAnswer.Found found, Tables tables) {
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < found.loads().size(); i++) {
      String name = mode == Mode.BRIDGED ? "bridge" : i == 0 ? "left" : "right";
      loads.add(new Load(name + "+", name + "-", found.loads().get(i)));
    }
    ResistorDerating derating = new ResistorDerating(tables);
    double burst =
        found.loads().stream()
            .map(network -> network.hottest(watts))
            .mapToDouble(heat -> derating.burstSeconds(heat.watts(), heat.part().ratedWatts()))
            .min()
            .orElseThrow();
    String title = mode.load(found.request().ohms());
    return new WiringSummary(title, loads, watts, burst, found.fewest());
  }

  /** Returns how long the watts may last, in words. */
  public String burstWords() {
    if (Double.isInfinite(burstSeconds)) {
      return "no time limit";
    }
    return burstSeconds > 0
        ? Sentence.of("for a burst of {} s from cold (an estimate)", Figures.three(burstSeconds))
        : "overloaded: no known burst allows it";
  }

  /** Returns value, hottest resistor and total heat of one load, one line. */
  public String words(Load load) {
    Network.Heat hottest = load.network().hottest(watts);
    return Sentence.of(
        "{} to {}: {} (k = 2); at worst {} W in all, {} of {} W in {}",
        load.plus(),
        load.minus(),
        Printer.UTF8.quantity(load.network().value()),
        Figures.three(watts),
        Figures.three(hottest.watts()),
        Figures.three(hottest.part().ratedWatts()),
        hottest.part().name());
  }
}
