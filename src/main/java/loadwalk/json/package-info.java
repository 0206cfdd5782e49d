/**
 * Row 0: strict JSON that remembers where each key stood; writing JSON.
 *
 * <pre>
 *  text ──JsonText──> Node ──Fields──> a record     (Read.Good)
 *                                  └─> every fault  (Read.Bad: line, column, key, nearest key)
 *  a record ──JsonOut──> text
 * </pre>
 *
 * <p>A reader never stops at the first fault and never throws for what a file holds. Open {@link
 * loadwalk.json.Fields} first.
 */
package loadwalk.json;
