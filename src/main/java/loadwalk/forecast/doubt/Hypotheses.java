package loadwalk.forecast.doubt;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Slip;

/**
 * Weighs the possible explanations of one step's entries against each other.
 *
 * <p>Each hypothesis names the readings that are off and the slip, and says how well it predicts
 * all entries of the step together. By Bayes' rule its weight is its prior times that density.
 * Readings are doubted when the hypotheses that fault them outweigh the honest one.
 */
public final class Hypotheses {
  private final List<Hypothesis> all = new ArrayList<>();
  private double honest = Double.NEGATIVE_INFINITY;

  /**
   * One possible explanation.
   *
   * @param faulty the readings that are off
   * @param slip the slip
   * @param meant the value meant, NaN if unknown
   * @param log ln of prior times density
   */
  record Hypothesis(Set<ReadingId> faulty, Slip slip, double meant, double log) {}

  /** Sets ln of the density of the entries if nothing is off. */
  void honest(double log) {
    honest = log;
  }

  /** Adds a hypothesis; a log of NaN counts as impossible. */
  void add(Set<ReadingId> faulty, Slip slip, double meant, double log) {
    if (log > Double.NEGATIVE_INFINITY) {
      all.add(new Hypothesis(faulty, slip, meant, log));
    }
  }

  /**
   * Adds the slips that may have produced one entry.
   *
   * @param faulty the reading that is off
   * @param candidates the slips, each with the value it says was meant
   * @param without ln of the density of the step's other entries, for a slip that does not reveal
   *     the value meant
   * @param density ln of the density of the step's entries with a value in place of this one
   */
  void add(
      ReadingId faulty,
      List<SlipCandidate> candidates,
      double without,
      DoubleUnaryOperator density) {
    for (SlipCandidate candidate : candidates) {
      double fit =
          Double.isNaN(candidate.meant()) ? without : density.applyAsDouble(candidate.meant());
      add(Set.of(faulty), candidate.slip(), candidate.meant(), candidate.logWeight() + fit);
    }
  }

  /**
   * The outcome of the comparison.
   *
   * @param faulty the readings that are off, empty if none is
   * @param slip the likeliest slip among the hypotheses that fault exactly these
   * @param meant the value meant, NaN if unknown
   * @param logOdds ln of the odds of any slip against none
   */
  record Finding(Set<ReadingId> faulty, Slip slip, double meant, double logOdds) {}

  /** Returns the finding, given ln of the odds that a doubt needs. */
  Finding find(double neededLogOdds) {
    Map<Slip, Double> bySlip = new EnumMap<>(Slip.class);
    Map<Set<ReadingId>, Double> byFault = new java.util.LinkedHashMap<>();
    double any = Double.NEGATIVE_INFINITY;
    for (Hypothesis h : all) {
      any = logSum(any, h.log());
      byFault.merge(h.faulty(), h.log(), Hypotheses::logSum);
    }
    double odds = any - honest;
    if (!(odds > neededLogOdds)) {
      return new Finding(Set.of(), Slip.UNNAMED, Double.NaN, odds);
    }
    Set<ReadingId> faulty = best(byFault);
    Hypothesis first = null;
    for (Hypothesis h : all) {
      if (h.faulty().equals(faulty)) {
        bySlip.merge(h.slip(), h.log(), Hypotheses::logSum);
      }
    }
    Slip slip = best(bySlip);
    for (Hypothesis h : all) {
      boolean fits = h.faulty().equals(faulty) && h.slip() == slip;
      if (fits && (first == null || h.log() > first.log())) {
        first = h;
      }
    }
    Set<ReadingId> copy = EnumSet.noneOf(ReadingId.class);
    copy.addAll(faulty);
    return new Finding(copy, slip, first == null ? Double.NaN : first.meant(), odds);
  }

  private static <K> K best(Map<K, Double> logs) {
    K found = null;
    double most = Double.NEGATIVE_INFINITY;
    for (Map.Entry<K, Double> entry : logs.entrySet()) {
      if (found == null || entry.getValue() > most) {
        found = entry.getKey();
        most = entry.getValue();
      }
    }
    return found;
  }

  private static double logSum(double a, double b) {
    double most = Math.max(a, b);
    return most == Double.NEGATIVE_INFINITY
        ? most
        : most + Math.log1p(Math.exp(Math.min(a, b) - most));
  }
}
