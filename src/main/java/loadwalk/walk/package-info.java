/**
 * Row 3: the walk, which is the fold of its facts.
 *
 * <pre>
 *  Intent: what the operator wants ─┐
 *  Event: what else reaches a walk ─┴─> Walker ──> Fact, waiting in the Model
 *                                                   │ Effect.AppendJournal
 *                                                   v
 *  WalkState &lt;── Fact.applyTo &lt;── Event.Kept &lt;── the journal, on disk
 * </pre>
 *
 * <p>Each intent, event and fact defines its own outcome. Each effect is performed by the method of
 * {@link loadwalk.walk.EffectPerformer} with its name. Nothing counts before it is on disk. Open
 * {@link loadwalk.walk.Walker} first, then {@link loadwalk.walk.Intent}.
 *
 * <p>Rooms, from the bottom up: {@link loadwalk.walk.fact}, the facts and the state they fold into;
 * this package, which turns intents into facts; {@link loadwalk.walk.rehearse}, walks without an
 * operator.
 */
package loadwalk.walk;
