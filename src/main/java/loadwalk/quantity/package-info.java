/**
 * Row 0: a value with its uncertainty and unit; reading what an operator types; printing.
 *
 * <pre>
 *  "13,4 V" ──EntryParser──> Typed.Number ─meter's accuracy──> Quantity ──Printer──> "13.4 ± 0.2 V"
 * </pre>
 *
 * <p>In: typed text, or a number with its standard uncertainty by source. Out: a number in SI units
 * or one sentence on what is wrong; text. Prefixes exist at these two ends only. Open {@link
 * loadwalk.quantity.Quantity} first, then {@link loadwalk.quantity.EntryParser}.
 */
package loadwalk.quantity;
