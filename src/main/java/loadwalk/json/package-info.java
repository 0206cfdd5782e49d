/**
 * Row 0: strict JSON that remembers where each key stood; writing JSON.
 *
 * <pre>
 *  text ──JsonText──> Node ──ShapeReader──> a record     (Read.Good)
 *                                       └─> every fault  (Read.Bad: line, column, key, nearest key)
 *  a record ──ShapeWriter──> JsonOut ──> text
 * </pre>
 *
 * <p>A record says once, by its {@link loadwalk.json.Shape}, how it looks in a file; reading and
 * writing both go by it. A reader never stops at the first fault and never throws for what a file
 * holds. Open {@link loadwalk.json.Shaped} first.
 */
package loadwalk.json;
