/**
 * Row 3: the bench planned before anything is connected: supplies, leads, fuses, load wiring.
 *
 * <pre>
 *  sequence, amplifier, bench ──BenchPlanner──> BenchPlan: a StepPlan a step, Needs to buy
 *                                   │
 *                                   └─ wiring: each load from the resistors on the bench
 * </pre>
 *
 * <p>In: a sequence, an amplifier, a bench and the measurements so far. Out: what each step demands
 * of supplies, leads, fuses and loads, with the forecast and cautions of the walk. {@link
 * loadwalk.plan.Rules} is the one set of rules: it makes tables, wiring, forecaster and planner
 * once, for walk, plan, rehearsal, replay, screens and sheet. Open {@link
 * loadwalk.plan.BenchPlanner} first; the room {@code wiring} wires the loads.
 */
package loadwalk.plan;
