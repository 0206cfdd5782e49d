/**
 * Row 5: the same walk as lines of text, for pipes, scripts and screen readers.
 *
 * <pre>
 *  a line typed ──PlainParser──> PlainAnswer ──> the walk ──PlainWriter──> lines: what changed
 *                                  SimulatedHand: an operator who never slips
 * </pre>
 *
 * <p>Plain mode shows everything that the screen shows. Open {@link loadwalk.plain.PlainWriter}
 * first.
 */
package loadwalk.plain;
