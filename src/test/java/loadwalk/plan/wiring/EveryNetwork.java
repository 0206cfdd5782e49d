package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.LoadResistor;

/** Draws every series-parallel network of a few resistors, with no cleverness at all. */
final class EveryNetwork {
  /**
   * A drawing.
   *
   * @param ohms its value
   * @param hottest the share of what it bears that the hottest resistor reaches per watt in the
   *     whole
   */
  record Drawn(double ohms, double hottest) {
    Drawn before(Drawn other) {
      double whole = ohms + other.ohms;
      return new Drawn(whole, Math.max(hottest * ohms / whole, other.hottest * other.ohms / whole));
    }

    Drawn beside(Drawn other) {
      double whole = ohms * other.ohms / (ohms + other.ohms);
      return new Drawn(whole, Math.max(hottest * whole / ohms, other.hottest * whole / other.ohms));
    }
  }

  private final List<Network.Part> parts;
  private final ToDoubleFunction<LoadResistor> bears;
  private final List<List<Drawn>> byMask = new ArrayList<>();

  EveryNetwork(List<Network.Part> parts, ToDoubleFunction<LoadResistor> bears) {
    this.parts = parts;
    this.bears = bears;
    for (int mask = 0; mask < 1 << parts.size(); mask++) {
      byMask.add(draw(mask));
    }
  }

  int masks() {
    return byMask.size();
  }

  /** Returns all networks that use exactly the resistors whose bits are set. */
  List<Drawn> of(int mask) {
    return byMask.get(mask);
  }

  private List<Drawn> draw(int mask) {
    if (mask == 0) {
      return List.of();
    }
    if (Integer.bitCount(mask) == 1) {
      Network.Part part = parts.get(Integer.numberOfTrailingZeros(mask));
      return List.of(new Drawn(part.ohms(), 1 / bears.applyAsDouble(part.kind())));
    }
    List<Drawn> drawn = new ArrayList<>();
    int lowest = Integer.lowestOneBit(mask);
    for (int left = mask & mask - 1; left > 0; left = left - 1 & mask) {
      if ((left & lowest) != 0 && left != mask) {
        for (Drawn a : byMask.get(left)) {
          for (Drawn b : byMask.get(mask & ~left)) {
            drawn.add(a.before(b));
            drawn.add(a.beside(b));
          }
        }
      }
    }
    return drawn;
  }
}
