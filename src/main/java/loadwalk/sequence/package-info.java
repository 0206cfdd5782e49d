/**
 * Row 2: the scripted procedure, with steps as data, and its reader and checker.
 *
 * <pre>
 *  sequences/NAME.json ──SequenceReader──> Sequence ──> Step (one record a kind) ──> PlannedStep
 * </pre>
 *
 * <p>In: a file. Out: its steps in the order of the walk, each with its own id, or every fault in
 * the file. Each step states its own readings and its instruction to the operator. Open {@link
 * loadwalk.sequence.Step} first.
 */
package loadwalk.sequence;
