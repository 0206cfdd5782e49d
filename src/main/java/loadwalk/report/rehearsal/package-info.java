/**
 * A rehearsed walk as one line of JSON: each step with brief, doubts and result, then the sheet.
 *
 * <p>In: the outcome of a rehearsal. Out: the line that {@code loadwalk rehearse} prints. Open
 * {@link loadwalk.report.rehearsal.RehearsalJson}.
 */
package loadwalk.report.rehearsal;
