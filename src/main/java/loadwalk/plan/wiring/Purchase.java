package loadwalk.plan.wiring;

import java.util.ArrayList;
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
            .min((a, b) -> Integer.compare(a.count(), b.count()));
    int fewest = alone.map(LoadResistor::count).orElse(MOST_MIXED + 1);
    for (int count = 1; count < Math.min(fewest, MOST_MIXED + 1); count++) {
      for (LoadResistor kind : kinds) {
        if (enoughWatts(kind, count) && makes(kind, count)) {
          return Optional.of(counted(kind, count));
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

  private boolean enoughWatts(LoadResistor kind, int count) {
    double own = stock.stream().mapToDouble(k -> k.watts() * k.count()).sum();
    double bears = request.share() * (own + count * kind.watts());
    return bears >= request.watts() * request.loads();
  }

  private boolean makes(LoadResistor kind, int count) {
    List<LoadResistor> larger = new ArrayList<>();
    boolean merged = false;
    for (LoadResistor own : stock) {
      boolean same = own.equals(kind);
      larger.add(same ? counted(own, own.count() + count) : own);
      merged |= same;
    }
    if (!merged) {
      larger.add(counted(kind, count));
    }
    if (larger.stream().mapToLong(LoadResistor::count).sum() > Stock.MOST) {
      return false;
    }
    return WiringSearch.quick(larger, request).wired().isPresent();
  }

  /** Returns the smallest grid of one kind alone that makes all loads, as a count to buy. */
  private Optional<LoadResistor> grid(LoadResistor kind) {
    int fewest = Integer.MAX_VALUE;
    double slack =
        request.ohms() * request.tolerancePercent() / 100 + Candidates.ROUNDING * request.ohms();
    for (int series = 1; series <= Stock.MOST; series++) {
      double rows = Math.rint(kind.ohms() * series / request.ohms());
      for (double parallel = Math.max(1, rows - 1); parallel <= rows + 1; parallel++) {
        double parts = series * parallel;
        boolean near = Math.abs(kind.ohms() * series / parallel - request.ohms()) <= slack;
        boolean bears = parts * request.share() * kind.watts() >= request.watts();
        if (near && bears && parts * request.loads() <= Stock.MOST) {
          fewest = Math.min(fewest, (int) parts * request.loads());
        }
      }
    }
    return fewest > Stock.MOST ? Optional.empty() : Optional.of(counted(kind, fewest));
  }

  private static LoadResistor counted(LoadResistor kind, int count) {
    return new LoadResistor(
        kind.label(),
        kind.ohms(),
        kind.tolerancePercent(),
        kind.watts(),
        count,
        kind.ppmPerKelvin());
  }
}
