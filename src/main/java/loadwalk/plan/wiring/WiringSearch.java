package loadwalk.plan.wiring;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Figures;
import loadwalk.bench.LoadResistor;
import loadwalk.text.Sentence;

/**
 * Finds how to wire loads from the resistors the owner has.
 *
 * <p>Within the tolerance and with no resistor above what it bears, the network with the fewest
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
  private final ToDoubleFunction<LoadResistor> bears;

  /**
   * Prepares a search of the owner's stock of resistors.
   *
   * @param stock the stock
   * @param bears the watts that a resistor of a kind bears
   */
  public WiringSearch(List<LoadResistor> stock, ToDoubleFunction<LoadResistor> bears) {
    this.stock = List.copyOf(stock);
    this.bears = bears;
  }

  /**
   * Finds a wiring, or the reason why there is none and what to buy.
   *
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  public WiringAnswer find(WiringRequest request) {
    WiringAnswer answer = search(BUDGET, request);
    Optional<WiringAnswer.None> lacking = answer.lacking();
    if (lacking.isEmpty()) {
      return answer;
    }
    Optional<LoadResistor> purchase = new Purchase(stock, request, bears).smallest();
    return new WiringAnswer.None(lacking.get().sentence(), purchase);
  }

  /**
   * Finds a wiring, with no advice on what to buy where there is none.
   *
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  Optional<WiringAnswer.Found> wired(WiringRequest request) {
    return search(BUDGET, request).wired();
  }

  /** Tells quickly, by a shorter exact search, whether a wiring is found. */
  boolean isWired(WiringRequest request) {
    return search(SMALL_BUDGET, request).wired().isPresent();
  }

  private WiringAnswer search(long budget, WiringRequest request) {
    if (stock.isEmpty()) {
      return none("The bench lists no load resistors.");
    }
    Stock packed = Stock.of(stock);
    int total = packed.size(packed.all());
    Optional<String> impossible = impossible(total, request);
    if (impossible.isPresent()) {
      return none(impossible.get());
    }
    NetworkStore store = new NetworkStore();
    Candidates candidates = new Candidates(packed, request);
    ExactSearch exact = new ExactSearch(packed, store, candidates, request, bears);
    int largest = total - (request.loads() - 1);
    boolean resolved = exact.run(largest, budget);
    if (!resolved) {
      new GridSearch(packed, store, candidates, request).run();
      resolved = !candidates.mayImprove(exact.done() + 1);
    }
    List<Candidates.Candidate> best = candidates.best();
    if (best.isEmpty()) {
      return none(notFound(request, resolved));
    }
    NetworkBuilder builder = new NetworkBuilder(packed, store);
    return new WiringAnswer.Found(best.stream().map(builder::build).toList(), request, resolved);
  }

  /** Returns why no wiring at all is possible, if simple arithmetic shows it. */
  private Optional<String> impossible(int total, WiringRequest request) {
    double all = stock.stream().mapToDouble(k -> bears.applyAsDouble(k) * k.count()).sum();
    double asked = request.watts() * request.loads();
    if (asked > all * (1 + WiringRequest.ROUNDING)) {
      return Optional.of(
          Sentence.of(
              "All resistors together bear {} W. The step needs {} W.",
              Figures.three(all),
              Figures.three(asked)));
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
    String loads =
        request.loads() == 2
            ? Sentence.of("two loads of {} Ω within {} %, {} W each", ohms, tolerance, watts)
            : Sentence.of("{} Ω within {} %, {} W", ohms, tolerance, watts);
    return Sentence.of(
        proved
            ? "No wiring of these resistors makes {}."
            : "No wiring was found for {}. Not all were tried.",
        loads);
  }

  private static WiringAnswer none(String sentence) {
    return new WiringAnswer.None(sentence, Optional.empty());
  }
}
