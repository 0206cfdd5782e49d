package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;

/**
 * What the readings of one step amount to; a part is empty where its readings are missing.
 *
 * @param stepId the step's id
 * @param kind what was done
 * @param mode how the load was connected
 * @param ohms the nominal load, ohms; NaN where none was connected
 * @param criterion at what point the output stands: the THD limit where it was interpolated
 * @param outputVolts RMS volts across one load
 * @param watts the power in that load
 * @param otherWatts the power in the other channel's load, where it was measured
 * @param totalWatts the power in all loads
 * @param inputWatts supply volts times supply amperes
 * @param supplyAmps what the supply gave
 * @param efficiency total over input, a fraction
 * @param heatWatts input less total
 * @param loadOhms the load the power was computed with
 * @param leadDropVolts supply setting less the volts at the amplifier, else what the copper of the
 *     leads drops; a remark says which
 * @param leadWatts the power lost on that way
 * @param rating the measured power beside its rating, where there is one
 * @param remarks what the results rest on
 * @param budget the uncertainty budget of {@code watts}
 */
public record StepResult(
    String stepId,
    Target.Kind kind,
    Mode mode,
    double ohms,
    Criterion criterion,
    Optional<Quantity> outputVolts,
    Optional<Quantity> watts,
    Optional<Quantity> otherWatts,
    Optional<Quantity> totalWatts,
    Optional<Quantity> inputWatts,
    Optional<Quantity> supplyAmps,
    Optional<Quantity> efficiency,
    Optional<Quantity> heatWatts,
    Optional<Quantity> loadOhms,
    Optional<Quantity> leadDropVolts,
    Optional<Quantity> leadWatts,
    Optional<RatingComparison> rating,
    List<Remark> remarks,
    List<BudgetLine> budget) {
  /** How far nominal loads may differ and be the same, a fraction. Chosen by hand. */
  private static final double SAME_OHMS = 1e-3;

  /** Copies the lists. */
  public StepResult {
    Objects.requireNonNull(stepId, "stepId");
    remarks = List.copyOf(remarks);
    budget = List.copyOf(budget);
  }

  /** Tells whether the step has a power to publish. */
  boolean isMeasured() {
    return kind == Target.Kind.LOADED && outputVolts.isPresent() && totalWatts.isPresent();
  }

  /** Tells whether another step had the same load, nominally. */
  boolean sameLoad(StepResult other) {
    return mode == other.mode && sameOhms(ohms, other.ohms);
  }

  /** Tells whether two nominal loads are the same, to 1 in 1000; NaN never is. */
  static boolean sameOhms(double one, double other) {
    return Math.abs(one - other) <= SAME_OHMS * Math.abs(one);
  }
}
