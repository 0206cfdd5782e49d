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
 * the wiring and needs no new search. A wiring that handles the watts with no time limit is
 * preferred, then one that lasts for a ten-second reading, then one that lasts for the shortest
 * burst.
 */
public final class WiringLoadBank implements LoadBank {
  /** How long a load is held for one reading, seconds. Common practice, no source. */
  private static final double READING_SECONDS = 10;

  /** Most answers kept, a few kilobytes; then all are forgotten. */
  private static final int MOST_REMEMBERED = 500;

  private final ResistorDerating derating;
  private final double readingShare;
  private final Map<Key, WiringAnswer> known = new HashMap<>();

  private record Key(List<LoadResistor> stock, int loads, double ohms, double watts) {}

  /** Prepares the bank with the tables of resistor limits. */
  public WiringLoadBank(Tables tables) {
    derating = new ResistorDerating(tables);
    double most = tables.limit("resistor-burst-multiple");
    double energy = most * tables.limit("resistor-burst-seconds");
    readingShare = Math.min(most, energy / READING_SECONDS);
  }

  /**
   * Returns the wiring of a load, or why there is none.
   *
   * @param stock the owner's resistors
   * @param mode stereo for two such loads at once, bridged for one
   * @param ohms the load, ohms
   * @param watts the most watts in one load
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  public synchronized WiringAnswer wiring(
      List<LoadResistor> stock, Mode mode, double ohms, double watts) {
    double rounded =
        watts > 0
            ? new BigDecimal(watts).round(new MathContext(2, RoundingMode.UP)).doubleValue()
            : 0;
    Key key = new Key(stock, mode.loads(), ohms, rounded);
    if (known.size() >= MOST_REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(key, this::search);
  }

  private WiringAnswer search(Key key) {
    WiringSearch search = new WiringSearch(key.stock());
    WiringRequest continuous =
        new WiringRequest(
            key.ohms(),
            key.watts(),
            key.loads(),
            WiringRequest.DEFAULT_TOLERANCE_PERCENT,
            derating.continuousShare());
    WiringAnswer first = search.find(continuous);
    if (first.wired().isPresent()) {
      return first;
    }
    WiringAnswer reading = search.find(continuous.withShare(readingShare));
    if (reading.wired().isPresent()) {
      return reading;
    }
    WiringAnswer shortest = search.find(continuous.withShare(derating.largestMultiple()));
    return shortest.wired().isPresent() ? shortest : first;
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
    return wiring(bench.loads(), mode, ohms, loadWatts).wired().stream()
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
