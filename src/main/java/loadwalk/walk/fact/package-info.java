/**
 * What happened in a walk, as its journal keeps it, and the state that the facts fold into.
 *
 * <pre>
 *  body of a journal record ──> FactText ──> Fact ── applyTo ──> WalkState, one StepState a step
 *                           <──          <──
 * </pre>
 *
 * <p>In come facts, from a journal or from the walk that goes on; out comes where the walk stands.
 * A fact says itself what it changes and which fields the journal keeps of it. No forecast is made
 * here: a brief or a doubt is kept in the fact that tells of it. Open {@link
 * loadwalk.walk.fact.Fact} first, then {@link loadwalk.walk.fact.WalkState}.
 */
package loadwalk.walk.fact;
