/**
 * The page of a bench plan.
 *
 * <p>In: a {@link loadwalk.plan.BenchPlan} and the tables of resistors. Out: a {@link
 * loadwalk.report.page.Page}: the forecast of each step, what gives first, how each load is wired,
 * what the bench needs. Open {@link loadwalk.report.plan.PlanPage}.
 */
package loadwalk.report.plan;
