/**
 * Row 2: the simulated amplifier on the simulated bench, a peer of the real one.
 *
 * <pre>
 *  seed ──> PracticeAmplifier ─┐
 *                              ├─ PracticeRig ──Circuit──> OperatingPoint ──> what the meters show
 *  PracticeBench ──────────────┘                                 SimulatedOperator ──> what is typed
 * </pre>
 *
 * <p>It solves a circuit and shares no formula with the forecast, because it exists to test the
 * forecast. The same question at the same moment gets the same answer. Open {@link
 * loadwalk.practice.PracticeRig} first.
 */
package loadwalk.practice;
