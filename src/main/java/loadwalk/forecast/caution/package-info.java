/**
 * What a step asks of the bench that deserves a warning, the same for the brief and the plan.
 *
 * <pre>
 *  Evidence, Target, bands, Demand ──> StepQuestion ──LoadCautions────┐
 *                                                  ──CurrentCautions─┴──> Stress ──> Caution
 * </pre>
 *
 * <p>In: what a step is forecast to read, the bench and its tables. Out: cautions, the worst first,
 * and what each part bears. Open {@link loadwalk.forecast.caution.StepCautions} first.
 */
package loadwalk.forecast.caution;
