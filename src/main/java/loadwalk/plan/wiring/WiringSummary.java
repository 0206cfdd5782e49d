package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Figures;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.quantity.Printer;
import loadwalk.text.Sentence;

/**
 * A wiring found for a load, at the watts of a step.
 *
 * @param title which load it is: "stereo 4 Ω"
 * @param loads each load with its terminals
 * @param watts the worst-case watts in one load; 0 if unknown
 * @param burstSeconds how long the load can take them from cold, seconds; infinite if without
 *     limit, 0 if not at all
 * @param fewest whether it is proven that no wiring needs fewer resistors
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
   * @param plus the name of one amplifier terminal
   * @param minus the name of the other
   * @param network how it is wired
   */
  public record Load(String plus, String minus, Network network) {}

  /** Returns the summary of a found wiring for one step. */
  public static WiringSummary of(Mode mode, double watts, WiringAnswer.Found found, Tables tables) {
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < found.loads().size(); i++) {
      String name = mode == Mode.BRIDGED ? "bridge" : i == 0 ? "left" : "right";
      loads.add(new Load(name + "+", name + "-", found.loads().get(i)));
    }
    ResistorDerating derating = new ResistorDerating(tables);
    double burst =
        found.loads().stream()
            .flatMap(network -> network.heats(watts).stream())
            .mapToDouble(heat -> derating.burstSeconds(heat.watts(), heat.part().kind()))
            .min()
            .orElseThrow();
    String title = mode.load(found.request().ohms());
    return new WiringSummary(title, loads, watts, burst, found.fewest());
  }

  /** Returns how long the load can take the watts, in words. */
  public String burstWords() {
    if (Double.isInfinite(burstSeconds)) {
      return "no time limit";
    }
    return burstSeconds > 0
        ? Sentence.of("for a burst of {} s from cold (an estimate)", Figures.three(burstSeconds))
        : "overloaded: no known burst allows it";
  }

  /** Returns the value, hottest resistor and total heat of one load on one line. */
  public String words(Load load) {
    Network.Heat hottest = load.network().hottest(watts, LoadResistor::watts);
    return Sentence.of(
        "{} to {}: {} (k = 2); at worst {} W in all, {} of {} W in {}",
        load.plus(),
        load.minus(),
        Printer.UTF8.quantity(load.network().value()),
        Figures.three(watts),
        Figures.three(hottest.watts()),
        Figures.three(hottest.part().kind().watts()),
        hottest.part().name());
  }
}
