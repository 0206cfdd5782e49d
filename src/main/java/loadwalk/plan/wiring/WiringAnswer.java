package loadwalk.plan.wiring;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.LoadResistor;

/** The outcome of a search for a wiring. */
public sealed interface WiringAnswer {
  /** Returns the wiring, if one was found. */
  Optional<Found> wired();

  /** Returns what is missing, if no wiring was found. */
  Optional<None> lacking();

  /**
   * A wiring.
   *
   * @param loads the networks, one for each load; no resistor is in two of them
   * @param request what was asked
   * @param fewest whether it is proven that no wiring needs fewer resistors
   */
  record Found(List<Network> loads, WiringRequest request, boolean fewest) implements WiringAnswer {
    /** Copies the list. */
    public Found {
      loads = List.copyOf(loads);
    }

    @Override
    public Optional<Found> wired() {
      return Optional.of(this);
    }

    @Override
    public Optional<None> lacking() {
      return Optional.empty();
    }
  }

  /**
   * No wiring.
   *
   * @param sentence why there is none, and whether that is proven
   * @param purchase the fewest resistors found that would make it possible
   */
  record None(String sentence, Optional<LoadResistor> purchase) implements WiringAnswer {
    @Override
    public Optional<Found> wired() {
      return Optional.empty();
    }

    @Override
    public Optional<None> lacking() {
      return Optional.of(this);
    }
  }
}
