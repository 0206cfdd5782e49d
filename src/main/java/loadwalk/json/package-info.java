/**
 * Row 0: reads strict JSON with the place of each key, and writes JSON.
 *
 * <pre>
 *  text ──JsonText──> Node ──ShapeReader──> a record     (Read.Good)
 *                                       └─> every fault  (Read.Bad: line, column, key, nearest key)
 *  a record ──ShapeWriter──> JsonOut ──> text
 * </pre>
 *
 * <p>A record describes its form in a file once, through {@link loadwalk.json.Shape}; reading and
 * writing both use that. A reader does not stop at the first fault and does not throw for what a
 * file holds. Open {@link loadwalk.json.Shaped} first.
 */
package loadwalk.json;
