/**
 * Row −1, below all others: text that people read. A sentence is a whole template with slots
 * ({@link loadwalk.text.Sentence}; {@code .ci/sentences} prints them all). Typed text is made safe
 * first, then put into ASCII if wanted, and only then laid out, because ASCII is longer. Open
 * {@link loadwalk.text.Sentence} first.
 *
 * <pre>
 *   template, words ──> Sentence ──> Visible ──> Ascii ──> Columns ──> lines of a screen or page
 *                                    (safe)     (if wanted) (width, wrap, cut)
 * </pre>
 */
package loadwalk.text;
