package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;

/**
 * The result of one step; a value is empty if its readings are missing.
 *
 * @param stepId the step's id
 * @param kind what was done
 * @param conditions the conditions that it was reached under
 * @param marks what a reader must know before its numbers, worst first
 * @param outputVolts RMS volts across one load
 * @param watts the power in that load
 * @param otherWatts the power in the other channel's load, if it was measured
 * @param totalWatts the power in all loads
 * @param supplyVolts the volts at the amplifier's terminals
 * @param inputWatts supply volts times supply amperes
 * @param supplyAmps the current drawn from the supply
 * @param efficiency total over input, a fraction
 * @param heatWatts input minus total
 * @param loadOhms the load resistance used to compute the power
 * @param otherOhms that of the other channel
 * @param leadDropVolts supply setting minus the volts at the amplifier, or the computed drop of the
 *     copper leads; a remark says which
 * @param leadWatts the power lost between supply and amplifier
 * @param rating the measured power compared with its rating, if there is one
 * @param remarks the basis of the results
 * @param budget the uncertainty budget of {@code totalWatts}
 */
public record StepResult(
    String stepId,
    Target.Kind kind,
    Conditions conditions,
    List<Mark> marks,
    Optional<Quantity> outputVolts,
    Optional<Quantity> watts,
    Optional<Quantity> otherWatts,
    Optional<Quantity> totalWatts,
    Optional<Quantity> supplyVolts,
    Optional<Quantity> inputWatts,
    Optional<Quantity> supplyAmps,
    Optional<Quantity> efficiency,
    Optional<Quantity> heatWatts,
    Optional<Quantity> loadOhms,
    Optional<Quantity> otherOhms,
    Optional<Quantity> leadDropVolts,
    Optional<Quantity> leadWatts,
    Optional<RatingComparison> rating,
    List<Remark> remarks,
    List<BudgetLine> budget) {
  /** How far nominal loads may differ and still count as the same, a fraction. Chosen by hand. */
  private static final double SAME_OHMS = 1e-3;

  /** Copies the lists. */
  public StepResult {
    Objects.requireNonNull(stepId, "stepId");
    Objects.requireNonNull(conditions, "conditions");
    marks = List.copyOf(marks);
    remarks = List.copyOf(remarks);
    budget = List.copyOf(budget);
  }

  /** Returns how the load was connected. */
  public Mode mode() {
    return conditions.mode();
  }

  /** Returns the nominal load, ohms; NaN if none was connected. */
  public double ohms() {
    return conditions.ohms();
  }

  /** Returns the point at which the output was taken. */
  public Criterion criterion() {
    return conditions.criterion();
  }

  /** Returns the power in each load that was read, channel 1 first. */
  public List<Quantity> channelWatts() {
    return Stream.of(watts, otherWatts).flatMap(Optional::stream).toList();
  }

  /** Tells whether the step has a power to publish. */
  boolean isMeasured() {
    return kind == Target.Kind.LOADED && outputVolts.isPresent() && totalWatts.isPresent();
  }

  /** Tells whether it can be ranked among results like it. */
  boolean isRanked() {
    return marks.stream().allMatch(Mark::isRanked);
  }

  /** Tells whether another step had the same nominal load. */
  boolean sameLoad(StepResult other) {
    return mode() == other.mode() && sameOhms(ohms(), other.ohms());
  }

  /** Tells whether two nominal loads are the same, to 1 in 1000; NaN never equals anything. */
  static boolean sameOhms(double one, double other) {
    return Math.abs(one - other) <= SAME_OHMS * Math.abs(one);
  }
}
