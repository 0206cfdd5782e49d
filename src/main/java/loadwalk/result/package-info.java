/**
 * Row 2: what the readings of a step amount to, with uncertainty and conditions.
 *
 * <pre>
 *  readings as typed ──> MeasuredStep ──StepComputation──> StepResult ─┐
 *                                                                   ├─ResultComputation─> WalkResult
 *  bench, ratings, meters ──────────────────────────────────────────┘
 * </pre>
 *
 * <p>A step gives watts, efficiency, lead drop and its comparison with the rating; a walk adds
 * bridging, source resistance, rechecks and the power that may be published. Equal sources of error
 * cancel or add before they are squared. Open {@link loadwalk.result.ResultComputation} first.
 */
package loadwalk.result;
