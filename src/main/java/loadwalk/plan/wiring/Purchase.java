package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.LoadResistor;

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
  private final ToDoubleFunction<LoadResistor> bears;

  Purchase(List<LoadResistor> stock, WiringRequest request, ToDoubleFunction<LoadResistor> bears) {
    this.stock = stock;
    this.request = request;
    this.bears = bears;
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

  /**
   * Returns the owner's own kinds first, then values that every shop sells, as large as the largest
   * here and mounted like it.
   */
  private List<LoadResistor> kinds() {
    List<LoadResistor> kinds = new ArrayList<>(stock);
    Optional<LoadResistor> largest =
        stock.stream().max(Comparator.comparingDouble(LoadResistor::watts));
    for (double ohms : COMMON_OHMS) {
      if (stock.stream().noneMatch(kind -> kind.ohms() == ohms)) {
        kinds.add(
            new LoadResistor(
                LoadResistor.valueName(ohms),
                ohms,
                COMMON_TOLERANCE_PERCENT,
                largest.map(LoadResistor::watts).orElse(COMMON_WATTS),
                1,
                OptionalDouble.empty(),
                largest.flatMap(LoadResistor::mount)));
      }
    }
    return kinds;
  }

  /** Tells whether so many more of a kind make the load possible, as far as a search can tell. */
  private boolean makes(LoadResistor kind, int count) {
    List<LoadResistor> larger = new ArrayList<>(stock);
    int owned = larger.remove(kind) ? kind.count() : 0;
    larger.add(kind.counted(owned + count));
    return Stock.tooLarge(larger).isEmpty() && new WiringSearch(larger, bears).isWired(request);
  }

  /** Returns the smallest grid of one kind alone that makes all loads, as a count to buy. */
  private Optional<LoadResistor> grid(LoadResistor kind) {
    for (int parts = 1; parts * request.loads() <= Stock.MOST; parts++) {
      double watts = parts * bears.applyAsDouble(kind);
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
