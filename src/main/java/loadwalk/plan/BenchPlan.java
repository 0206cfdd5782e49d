package loadwalk.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Tables;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Verdict;
import loadwalk.plan.wiring.WiringSummary;

/**
 * A sequence planned on a bench before anything is connected.
 *
 * @param sequence the sequence's name
 * @param evidence the amplifier, bench, conditions and measurements so far
 * @param asked what each step asks of the operator, in order
 * @param steps the steps that ask something of the bench, in order
 * @param needs what the bench needs for the whole sequence, one sentence each
 */
public record BenchPlan(
    String sequence,
    Evidence evidence,
    List<Asked> asked,
    List<StepPlan> steps,
    List<String> needs) {
  /** The format of the plan in JSON. */
  public static final String FORMAT = "loadwalk-plan/1";

  /** Copies the lists. */
  public BenchPlan {
    asked = List.copyOf(asked);
    steps = List.copyOf(steps);
    needs = List.copyOf(needs);
  }

  /**
   * What a step asks of the operator.
   *
   * @param stepId the step
   * @param instruction what to connect, to do and to read
   */
  public record Asked(String stepId, String instruction) {}

  /** Returns the operator instruction for a planned step. */
  String instruction(StepPlan step) {
    return asked.stream()
        .filter(a -> a.stepId().equals(step.target().stepId()))
        .findFirst()
        .orElseThrow()
        .instruction();
  }

  /**
   * Returns an earlier step with the same load, forecast and verdict that tells every caution of
   * this one, if there is one. What the earlier step told, this one need not tell again.
   */
  public Optional<StepPlan> sameBefore(StepPlan step) {
    return steps.stream().takeWhile(s -> s != step).filter(s -> same(s, step)).findFirst();
  }

  /**
   * Returns the wirings that the steps use, one for each load, at its worst-case watts; a warm-up
   * has one of its own where it needs other resistors.
   */
  public List<WiringSummary> wirings(Tables tables) {
    Map<String, WiringSummary> byTitle = new LinkedHashMap<>();
    for (StepPlan step : steps) {
      step.wired(tables).ifPresent(w -> byTitle.merge(w.title(), w, BenchPlan::worse));
    }
    Map<String, WiringSummary> byNetwork = new LinkedHashMap<>();
    byTitle.values().forEach(w -> byNetwork.merge(w.network(), w, BenchPlan::worse));
    return List.copyOf(byNetwork.values());
  }

  private static WiringSummary worse(WiringSummary a, WiringSummary b) {
    if (a.isEnough() != b.isEnough()) {
      return a.isEnough() ? b : a;
    }
    return b.watts() > a.watts() ? b : a;
  }

  private static boolean same(StepPlan a, StepPlan b) {
    return a.target().kind() == b.target().kind()
        && a.target().mode() == b.target().mode()
        && Double.compare(a.target().ohms(), b.target().ohms()) == 0
        && a.forecast().readings().equals(b.forecast().readings())
        && a.forecast().verdict() == b.forecast().verdict()
        && a.forecast().cautions().containsAll(b.forecast().cautions());
  }

  /** Returns the most serious verdict of all steps. */
  public Verdict verdict() {
    return steps.stream()
        .map(step -> step.forecast().verdict())
        .reduce(Verdict.CLEAR, Verdict::graver);
  }
}
