package loadwalk.result;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * The results of a walk.
 *
 * @param steps the step results in the order of the steps
 * @param outputFit the output modelled as one source, from two or more different loads
 * @param sourceResistance R·(V₀/V − 1) from the unloaded volts, ohms
 * @param dampingFactor the nominal load divided by the source resistance; empty if that is not
 *     resolved
 * @param rechecks one comparison for each recheck
 * @param bridges one comparison for each bridged step that has a stereo counterpart
 * @param published the power of each load, by the id of its first step, in order
 * @param repeatability how well the limit is set by hand, as these results count it
 * @param pairs the runs of this walk that repeatability can be learned from
 * @param remarks the basis of these results
 */
public record WalkResult(
    List<StepResult> steps,
    Optional<OutputFit> outputFit,
    Optional<Quantity> sourceResistance,
    Optional<Ratio> dampingFactor,
    List<RecheckAgreement> rechecks,
    List<BridgeComparison> bridges,
    Map<String, PublishedPower> published,
    Repeatability repeatability,
    List<Repeatability.Pair> pairs,
    List<Remark> remarks) {
  /** Copies the collections, keeping their order. */
  public WalkResult {
    steps = List.copyOf(steps);
    Objects.requireNonNull(outputFit, "outputFit");
    Objects.requireNonNull(sourceResistance, "sourceResistance");
    Objects.requireNonNull(dampingFactor, "dampingFactor");
    rechecks = List.copyOf(rechecks);
    bridges = List.copyOf(bridges);
    published = Collections.unmodifiableMap(new LinkedHashMap<>(published));
    Objects.requireNonNull(repeatability, "repeatability");
    pairs = List.copyOf(pairs);
    remarks = List.copyOf(remarks);
  }

  /** Finds the result of a step by its id. */
  public Optional<StepResult> step(String stepId) {
    return steps.stream().filter(s -> s.stepId().equals(stepId)).findFirst();
  }
}
