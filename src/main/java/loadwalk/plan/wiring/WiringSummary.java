package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loadwalk.bench.Figures;
import loadwalk.bench.Hold;
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
 * @param hold how long the step holds them
 * @param burstSeconds how long the load can take them from cold, seconds; infinite if without
 *     limit, 0 if not at all
 * @param fewest whether it is proven that no wiring needs fewer resistors
 */
public record WiringSummary(
    String title, List<Load> loads, double watts, Hold hold, double burstSeconds, boolean fewest) {
  /** Allowance for floating-point error in a time. */
  private static final double FLOATING = 1e-6;

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
  public static WiringSummary of(
      Mode mode, double watts, Hold hold, WiringAnswer.Found found, Tables tables) {
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
    String load = mode.load(found.request().ohms());
    String title = hold.isContinuous() ? Sentence.of("{}, warm-up", load) : load;
    return new WiringSummary(title, loads, watts, hold, burst, found.fewest());
  }

  /** Returns what is wired how, to tell whether two steps use the same wiring. */
  public String network() {
    return loads.stream()
        .map(load -> load.plus() + load.network().formula())
        .collect(Collectors.joining(" "));
  }

  /** Returns the rule by which every wiring is chosen, one sentence. */
  public static String rule(Tables tables) {
    return Sentence.of(
        "Each load takes the fewest resistors that bear its watts as long as its step holds them: a"
            + " warm-up without end, any other step {} s.",
        Figures.three(tables.limit("reading-seconds")));
  }

  /** Tells whether the load bears the watts for as long as the step holds them. */
  public boolean isEnough() {
    return burstSeconds >= hold.seconds() * (1 - FLOATING);
  }

  /** Returns how the wiring was chosen and how long it lasts, one sentence. */
  public String choice() {
    if (!isEnough()) {
      return Sentence.of(
          hold.isContinuous()
              ? "No wiring of these resistors bears a warm-up; this one lasts longest: {}."
              : "No wiring of these resistors bears a reading; this one lasts longest: {}.",
          burstWords());
    }
    return Sentence.of(
        fewest ? "Fewest resistors, {}." : "Fewest resistors found, {}.", burstWords());
  }

  /** Returns how long the load can take the watts, in words. */
  public String burstWords() {
    if (Double.isInfinite(burstSeconds)) {
      return "no time limit";
    }
    return burstSeconds > 0
        ? Sentence.of("for {} s from cold (an estimate)", Figures.three(burstSeconds))
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
