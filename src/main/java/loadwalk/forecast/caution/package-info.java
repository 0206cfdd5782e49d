/**
 * The cautions of a step, the same for brief and plan.
 *
 * <pre>
 *  Evidence, Target, bands, Demand ──> StepQuestion ──LoadCautions────┐
 *                                                  ──CurrentCautions─┴──> Stress ──> Caution
 * </pre>
 *
 * <p>In: the forecast readings of a step, the bench and its tables. Out: cautions, worst first, and
 * the limit of each part. Open {@link loadwalk.forecast.caution.StepCautions} first.
 */
package loadwalk.forecast.caution;
