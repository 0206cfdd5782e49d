package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Figures;
import loadwalk.bench.LoadResistor;
import loadwalk.text.Sentence;

/** Finds the fewest resistors of one kind to buy so that a load becomes possible. */
final class Purchase {
  /** Common values, ohms, most likely first. Common practice, no source. */
  private static final double[] COMMON_OHMS = {1, 2, 4, 8, 0.5, 10, 16};

  /** Rating of a common chassis-mount resistor, watts. Common practice, no source. */
  private static final double COMMON_WATTS = 100;

  /** Its tolerance, percent. Common practice, no source. */
  private static final double COMMON_TOLERANCE_PERCENT = 5;

  /**
   * The most bought resistors tried together with the stock; keeps a search quick. Chosen by hand.
   */
  private static final int MOST_MIXED = 6;

  private final List<LoadResistor> stock;
  private final WiringRequest request;

  Purchase(List<LoadResistor> stock, WiringRequest request) {
    this.stock = stock;
    this.request = request;
  }

  /** Returns what to buy; empty if no count up to the largest stock is enough. */
  Optional<LoadResistor> smallest() {
    List<LoadResistor> kinds = kinds();
    Optional<LoadResistor> alone =
        kinds.stream()
            .flatMap(kind -> grid(kind).stream())
            .min(Comparator.comparingInt(LoadResistor::count));
    int fewest = alone.map(LoadResistor::count).orElse(Integer.MAX_VALUE);
    for (int count = 1; count <= MOST_MIXED && count < fewest; count++) {
      for (LoadResistor kind : kinds) {
        if (makes(kind, count)) {
          return Optional.of(kind.counted(count));
        }
      }
    }
    return alone;
  }

  /** Returns the owner's own kinds first, then values that every shop sells. */
  private List<LoadResistor> kinds() {
    List<LoadResistor> kinds = new ArrayList<>(stock);
    double watts = stock.stream().mapToDouble(LoadResistor::watts).max().orElse(COMMON_WATTS);
    for (double ohms : COMMON_OHMS) {
      if (stock.stream().noneMatch(kind -> kind.ohms() == ohms)) {
        String label = Sentence.of("{} ohm", Figures.three(ohms));
        kinds.add(
            new LoadResistor(
                label, ohms, COMMON_TOLERANCE_PERCENT, watts, 1, OptionalDouble.empty()));
      }
    }
    return kinds;
  }

  /** Tells whether so many more of a kind make the load possible, as far as a search can tell. */
  private boolean makes(LoadResistor kind, int count) {
    List<LoadResistor> larger = new ArrayList<>(stock);
    int owned = larger.remove(kind) ? kind.count() : 0;
    larger.add(kind.counted(owned + count));
    return Stock.tooLarge(larger).isEmpty()
        && WiringSearch.quick(larger, request).wired().isPresent();
  }

  /** Returns the smallest grid of one kind alone that makes all loads, as a count to buy. */
  private Optional<LoadResistor> grid(LoadResistor kind) {
    for (int parts = 1; parts * request.loads() <= Stock.MOST; parts++) {
      double watts = parts * request.share() * kind.watts();
      for (int series = 1; series <= parts; series++) {
        double ohms = kind.ohms() * series * series / parts;
        if (parts % series == 0 && request.isMetBy(ohms, watts)) {
          return Optional.of(kind.counted(parts * request.loads()));
        }
      }
    }
    return Optional.empty();
  }
}
