/**
 * Row 3: the bench planned before anything is connected: supplies, leads, fuses, load wiring.
 *
 * <pre>
 *  sequence, amplifier, bench ──BenchPlanner──> BenchPlan: a StepPlan a step, Needs to buy
 *                                   │
 *                                   └─ WiringLoadBank ──WiringSearch──> Network ──> WiringPicture
 * </pre>
 *
 * <p>Forecast and cautions are those of the walk; the planner adds shares, drops and wiring. The
 * search is exact for small stocks ({@link loadwalk.plan.wiring.WiringSearch}), by grids for large
 * ones. {@link loadwalk.plan.Rules} is the one set of rules that every forecast, plan and result
 * goes by. {@link loadwalk.plan.Rules} makes tables, wiring, forecaster and planner once, for walk,
 * plan, rehearsal, replay, screens and sheet. Open {@link loadwalk.plan.BenchPlanner} first.
 */
package loadwalk.plan;
