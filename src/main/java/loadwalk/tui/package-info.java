/**
 * Row 5: the terminal, through Lanterna; the only package that knows it.
 *
 * <pre>
 *  bytes ──PatientInput, KeyMap──> Key: a key, the ends of a paste, leaving
 *  Frame ──Surface──> the cells that changed, on a TtyTerminal
 * </pre>
 *
 * <p>Open {@link loadwalk.tui.Surface} first.
 */
package loadwalk.tui;
