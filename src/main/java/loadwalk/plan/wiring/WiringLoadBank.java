package loadwalk.plan.wiring;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Bench;
import loadwalk.bench.Hold;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.forecast.LoadBank;

/**
 * Finds a wiring for each load from the stock and remembers it.
 *
 * <p>Watts are rounded up to two digits before the search, so a small change in the forecast keeps
 * the wiring and needs no new search. The fewest resistors that bear the watts for as long as the
 * step holds them are taken; where none do, the fewest that last longest.
 */
public final class WiringLoadBank implements LoadBank {
  /** The times tried where no wiring bears the step's own, longest first, seconds. By hand. */
  private static final double[] SHORTER = {3600, 900, 300, 60, 40, 30, 20, 15, 10, 5};

  /** Most answers kept, a few kilobytes; then all are forgotten. */
  private static final int MOST_REMEMBERED = 500;

  private final ResistorDerating derating;
  private final Map<Key, WiringAnswer> known = new HashMap<>();

  private record Key(List<LoadResistor> stock, int loads, double ohms, double watts, Hold hold) {}

  /** Prepares the bank with the tables of resistor limits. */
  public WiringLoadBank(Tables tables) {
    derating = new ResistorDerating(tables);
  }

  /**
   * Returns the wiring of a load, or why there is none.
   *
   * @param stock the owner's resistors
   * @param mode stereo for two such loads at once, bridged for one
   * @param ohms the load, ohms
   * @param watts the most watts in one load
   * @param hold how long they are held
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  public synchronized WiringAnswer wiring(
      List<LoadResistor> stock, Mode mode, double ohms, double watts, Hold hold) {
    double rounded =
        watts > 0
            ? new BigDecimal(watts).round(new MathContext(2, RoundingMode.UP)).doubleValue()
            : 0;
    Key key = new Key(stock, mode.loads(), ohms, rounded, hold);
    if (known.size() >= MOST_REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(key, this::search);
  }

  private WiringAnswer search(Key key) {
    WiringRequest request =
        new WiringRequest(
            key.ohms(), key.watts(), key.loads(), WiringRequest.DEFAULT_TOLERANCE_PERCENT);
    Optional<WiringAnswer.Found> found = search(key, key.hold()).wired(request);
    for (int i = 0; i < SHORTER.length && found.isEmpty(); i++) {
      if (SHORTER[i] < key.hold().seconds()) {
        found = search(key, new Hold(SHORTER[i])).wired(request);
      }
    }
    return found.isPresent() ? found.get() : search(key, key.hold()).find(request);
  }

  private WiringSearch search(Key key, Hold hold) {
    return new WiringSearch(key.stock(), kind -> derating.mostWatts(kind, hold));
  }

  @Override
  public Optional<Hottest> hottest(
      Bench bench, Mode mode, double ohms, double loadWatts, Hold hold) {
    boolean asked = ohms > 0 && !Double.isInfinite(ohms) && loadWatts >= 0;
    if (bench.loads().isEmpty() || !asked) {
      return Optional.empty();
    }
    long total = bench.loads().stream().mapToLong(LoadResistor::count).sum();
    Optional<Hottest> evenly =
        LoadBank.evenly(derating).hottest(bench, mode, ohms, loadWatts, hold);
    if (total > Stock.MOST || evenly.orElseThrow().share() > 1) {
      return evenly;
    }
    return wiring(bench.loads(), mode, ohms, loadWatts, hold).wired().stream()
        .flatMap(found -> found.loads().stream())
        .map(load -> hottest(load, loadWatts, hold))
        .max((a, b) -> Double.compare(a.share(), b.share()));
  }

  private Hottest hottest(Network load, double watts, Hold hold) {
    ToDoubleFunction<LoadResistor> bears = kind -> derating.mostWatts(kind, hold);
    Network.Heat heat = load.hottest(watts, bears);
    LoadResistor kind = heat.part().kind();
    return new Hottest(heat.part().name(), heat.watts(), kind.watts(), bears.applyAsDouble(kind));
  }
}
