/**
 * Row 5: the same walk as lines of text, for pipes, scripts and screen readers.
 *
 * <pre>
 *  a line typed ──PlainParser──> PlainAnswer ──> the walk ──PlainWriter──> lines: what changed
 *                                  SimulatedHand: what a hand that never slips would type next
 * </pre>
 *
 * <p>It says all that the screen says. Open {@link loadwalk.plain.PlainWriter} first.
 */
package loadwalk.plain;
