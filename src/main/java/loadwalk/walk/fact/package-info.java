/**
 * What happened in a walk, as its journal keeps it, and the state that the facts fold into.
 *
 * <pre>
 *  body of a journal record ──> FactText ──> Fact ── applyTo ──> WalkState, one StepState a step
 *                           &lt;──          &lt;──
 * </pre>
 *
 * <p>In: facts, from a journal or from the running walk. Out: the state of the walk. Each fact
 * defines what it changes and which fields the journal keeps. No forecast is made here: briefs and
 * doubts are stored in their facts. Open {@link loadwalk.walk.fact.Fact} first, then {@link
 * loadwalk.walk.fact.WalkState}.
 */
package loadwalk.walk.fact;
