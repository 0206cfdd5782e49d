/**
 * Row 2: results computed from readings, with uncertainty and conditions.
 *
 * <pre>
 *  readings as typed ──> MeasuredStep ──StepComputation──> StepResult ─┐
 *                                                                   ├─ResultComputation─> WalkResult
 *  bench, ratings, meters ──────────────────────────────────────────┘
 * </pre>
 *
 * <p>A step gives watts, efficiency, lead drop and a comparison with the rating. A walk adds
 * bridging, source resistance, rechecks and the power that may be published. Errors from the same
 * source cancel or add before they are squared. Open {@link loadwalk.result.ResultComputation}
 * first.
 */
package loadwalk.result;
