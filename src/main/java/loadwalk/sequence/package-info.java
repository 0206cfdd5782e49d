/**
 * Row 2: the scripted procedure: steps as data, their reader and checker.
 *
 * <pre>
 *  sequences/NAME.json ──SequenceReader──> Sequence ──> Step (one record a kind) ──> PlannedStep
 * </pre>
 *
 * <p>In: a file. Out: its steps in the order they are walked, each with an id of its own, or every
 * fault of the file. A step says itself what it reads and what it asks of the operator. Open {@link
 * loadwalk.sequence.Step} first.
 */
package loadwalk.sequence;
