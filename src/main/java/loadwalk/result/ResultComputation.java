package loadwalk.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Wire;
import loadwalk.quantity.Quantity;
import loadwalk.text.Sentence;

/**
 * Computes the results of a walk from its raw readings; the same readings always give the same
 * results.
 */
public final class ResultComputation {
  private ResultComputation() {}

  /**
   * Computes the results of a walk, finished or not.
   *
   * @param limitThdPercent the distortion at which volts are read, percent
   * @param supplyVolts the supply volts specified at the amplifier's terminals
   * @param toneHertz the test tone, hertz
   * @param wire the copper of the leads
   * @param repeatability how well the limit is set by hand on this bench
   * @param taken the steps in the order they were done
   * @throws IllegalArgumentException if two steps have the same id, or a condition is not above 0
   */
  public static WalkResult walk(
      Amplifier amplifier,
      Bench bench,
      double limitThdPercent,
      double supplyVolts,
      double toneHertz,
      Wire wire,
      Repeatability repeatability,
      List<MeasuredStep> taken) {
    Objects.requireNonNull(amplifier, "amplifier");
    Objects.requireNonNull(bench, "bench");
    Asked asked = new Asked(limitThdPercent, supplyVolts, toneHertz);
    requireDistinct(taken);
    List<StepResult> steps =
        taken.stream()
            .map(s -> StepComputation.of(amplifier, bench, asked, wire, repeatability, s))
            .toList();
    Map<String, StepResult> byId =
        steps.stream().collect(Collectors.toMap(StepResult::stepId, Function.identity()));
    Map<String, PublishedPower> published = Publication.of(steps, new Ratings(amplifier, asked));
    List<StepResult> standing =
        published.values().stream().map(p -> byId.get(p.fromStepId())).toList();
    List<Remark> remarks = new ArrayList<>();
    Optional<OutputFit> fit = fit(standing, remarks);
    SourceResistance source = SourceResistance.of(taken, bench, toneHertz, remarks);
    return new WalkResult(
        steps,
        fit,
        source.ohms(),
        source.dampingFactor(),
        rechecks(taken, byId),
        Bridges.of(standing, fit),
        published,
        repeatability,
        RunPairs.of(setByHand(taken, byId)),
        List.copyOf(new LinkedHashSet<>(remarks)));
  }

  /** Returns one raw reading of a step with the uncertainty of the meter that took it. */
  public static Quantity reading(Bench bench, double toneHertz, String stepId, TakenReading taken) {
    return new ReadingUncertainty(bench, toneHertz, stepId, new ArrayList<>()).of(taken);
  }

  /** Fits the output at the criterion that has the most loads; the stated limit wins a tie. */
  private static Optional<OutputFit> fit(List<StepResult> standing, List<Remark> remarks) {
    Map<Criterion, List<StepResult>> byCriterion =
        standing.stream()
            .filter(s -> s.criterion().isStated())
            .collect(Collectors.groupingBy(StepResult::criterion));
    Optional<List<StepResult>> most =
        byCriterion.values().stream()
            .max(
                Comparator.<List<StepResult>>comparingInt(List::size)
                    .thenComparing(l -> l.get(0).criterion(), Comparator.reverseOrder()));
    if (byCriterion.size() > 1) {
      remarks.add(
          new Remark(
              "fit-one-criterion",
              Sentence.of(
                  "the output fit uses only the steps read {}",
                  most.orElseThrow().get(0).criterion().text())));
    }
    return most.flatMap(OutputFits::of);
  }

  private static List<RecheckAgreement> rechecks(
      List<MeasuredStep> taken, Map<String, StepResult> byId) {
    List<RecheckAgreement> agreements = new ArrayList<>();
    for (MeasuredStep step : taken) {
      step.recheckOf()
          .map(byId::get)
          .ifPresent(first -> agreements.add(RecheckComparison.of(first, byId.get(step.stepId()))));
    }
    return agreements;
  }

  private static List<StepResult> setByHand(
      List<MeasuredStep> taken, Map<String, StepResult> byId) {
    return taken.stream().filter(s -> s.pairs().isEmpty()).map(s -> byId.get(s.stepId())).toList();
  }

  private static void requireDistinct(List<MeasuredStep> taken) {
    long ids = taken.stream().map(MeasuredStep::stepId).distinct().count();
    if (ids < taken.size()) {
      throw new IllegalArgumentException("two steps have the same id");
    }
  }
}
