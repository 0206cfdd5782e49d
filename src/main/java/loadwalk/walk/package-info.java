/**
 * Row 3: a walk, which is the fold of its facts.
 *
 * <pre>
 *  Intent: what the operator wants ─┐
 *  Event: what else reaches a walk ─┴─> Walker ──> Fact, waiting in the Model
 *                                                   │ Effect.AppendJournal
 *                                                   v
 *  WalkState &lt;── Fact.applyTo &lt;── Event.Kept &lt;── the journal, on disk
 * </pre>
 *
 * <p>Each intent, event and fact says itself what comes of it, and each effect is done by the
 * method of {@link loadwalk.walk.EffectPerformer} that bears its name. Nothing counts before it is
 * on disk. Open {@link loadwalk.walk.Walker} first, then {@link loadwalk.walk.Intent}.
 *
 * <p>Rooms, from the bottom up: {@link loadwalk.walk.fact}, the facts and the state they fold into;
 * this package, which makes facts of what is wanted; {@link loadwalk.walk.rehearse}, walks without
 * an operator.
 */
package loadwalk.walk;
