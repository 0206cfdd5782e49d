/**
 * Row 0, beneath all others: text that people read. Every sentence is a whole template with slots,
 * filled by {@link loadwalk.text.Sentence}; {@code .ci/sentences} prints them all.
 *
 * <pre>
 *   words and numbers ──> Sentence ──> one line of prose
 * </pre>
 */
package loadwalk.text;
