package loadwalk.plan;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.LoadResistor;

/** The outcome of a search for a wiring. */
public sealed interface WiringAnswer {

  /**
   * A wiring.
   *
   * @param loads the networks, one for each load, no resistor in two of them
   * @param request what was asked
   * @param fewest whether it is proved that no wiring needs fewer resistors
   */
  record Found(List<Network> loads, WiringRequest request, boolean fewest) implements WiringAnswer {
    /** Copies the list. */
    public Found {
      loads = List.copyOf(loads);
    }

    /** Returns how many resistors it takes in all. */
    public int partCount() {
      return loads.stream().mapToInt(load -> load.parts().size()).sum();
    }

    /** Returns the hottest resistor of all loads, measured against its rating. */
    public Network.Heat hottest() {
      return loads.stream()
          .map(load -> load.hottest(request.watts()))
          .max((a, b) -> Double.compare(a.share(), b.share()))
          .orElseThrow();
    }
  }

  /**
   * No wiring.
   *
   * @param sentence why, and whether that is proved
   * @param purchase the fewest resistors found that would make it possible
   */
  record None(String sentence, Optional<LoadResistor> purchase) implements WiringAnswer {}
}
