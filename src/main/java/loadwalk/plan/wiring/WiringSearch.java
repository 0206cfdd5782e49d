package loadwalk.plan.wiring;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Figures;
import loadwalk.bench.LoadResistor;
import loadwalk.text.Sentence;

/**
 * Finds how to wire loads from the resistors the owner has.
 *
 * <p>Within the tolerance and with no resistor above its share, the network with the fewest
 * resistors wins; a tie goes to the closest value. All series-parallel networks are searched within
 * a bounded number of steps, which covers any stock of up to seven resistors; beyond that, grids
 * and pairs of grids are searched. The same request always gets the same answer.
 */
public final class WiringSearch {
  /** Most networks built in one search; limits its time. Chosen by hand. */
  private static final long BUDGET = 1_500_000;

  /** Most networks built if a first answer is enough. Chosen by hand. */
  private static final long SMALL_BUDGET = 60_000;

  private final List<LoadResistor> stock;

  /** Prepares a search of the owner's stock of resistors. */
  public WiringSearch(List<LoadResistor> stock) {
    this.stock = List.copyOf(stock);
  }

  /**
   * Finds a wiring, or the reason why there is none and what to buy.
   *
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  public WiringAnswer find(WiringRequest request) {
    WiringAnswer answer = search(stock, request, BUDGET);
    Optional<WiringAnswer.None> lacking = answer.lacking();
    if (lacking.isEmpty()) {
      return answer;
    }
    Optional<LoadResistor> purchase = new Purchase(stock, request).smallest();
    return new WiringAnswer.None(lacking.get().sentence(), purchase);
  }

  /** Finds a wiring quickly, with a shorter exact search and no advice on what to buy. */
  static WiringAnswer quick(List<LoadResistor> stock, WiringRequest request) {
    return search(stock, request, SMALL_BUDGET);
  }

  private static WiringAnswer search(List<LoadResistor> kinds, WiringRequest request, long budget) {
    if (kinds.isEmpty()) {
      return none("The bench lists no load resistors.");
    }
    Stock stock = Stock.of(kinds);
    int total = stock.size(stock.all());
    Optional<String> impossible = impossible(kinds, total, request);
    if (impossible.isPresent()) {
      return none(impossible.get());
    }
    NetworkStore store = new NetworkStore();
    Candidates candidates = new Candidates(stock, request);
    ExactSearch exact = new ExactSearch(stock, store, candidates, request);
    int largest = total - (request.loads() - 1);
    boolean resolved = exact.run(largest, budget);
    if (!resolved) {
      new GridSearch(stock, store, candidates, request).run();
      resolved = !candidates.mayImprove(exact.done() + 1);
    }
    List<Candidates.Candidate> best = candidates.best();
    if (best.isEmpty()) {
      return none(notFound(request, resolved));
    }
    NetworkBuilder builder = new NetworkBuilder(stock, store);
    return new WiringAnswer.Found(best.stream().map(builder::build).toList(), request, resolved);
  }

  /** Returns why no wiring at all is possible, if simple arithmetic shows it. */
  private static Optional<String> impossible(
      List<LoadResistor> kinds, int total, WiringRequest request) {
    double bears = request.share() * kinds.stream().mapToDouble(k -> k.watts() * k.count()).sum();
    double asked = request.watts() * request.loads();
    if (asked > bears * (1 + WiringRequest.ROUNDING)) {
      return Optional.of(
          Sentence.of(
              "All resistors together take {} W at {} % of their ratings. The step needs {} W.",
              Figures.three(bears), Figures.three(100 * request.share()), Figures.three(asked)));
    }
    if (total < request.loads()) {
      return Optional.of("Two loads need at least two resistors.");
    }
    return Optional.empty();
  }

  private static String notFound(WiringRequest request, boolean proved) {
    String ohms = Figures.three(request.ohms());
    String tolerance = Figures.three(request.tolerancePercent());
    String watts = Figures.three(request.watts());
    String share = Figures.three(100 * request.share());
    String loads =
        request.loads() == 2
            ? Sentence.of("two loads of {} Ω within {} %, {} W each", ohms, tolerance, watts)
            : Sentence.of("{} Ω within {} %, {} W", ohms, tolerance, watts);
    return proved
        ? Sentence.of(
            "No wiring of these resistors makes {} at {} % of their ratings.", loads, share)
        : Sentence.of(
            "No wiring was found for {} at {} % of the ratings. Not all were tried.", loads, share);
  }

  private static WiringAnswer none(String sentence) {
    return new WiringAnswer.None(sentence, Optional.empty());
  }
}
