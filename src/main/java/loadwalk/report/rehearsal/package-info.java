/**
 * A rehearsed walk as one line of JSON: each step with brief, doubts and result, then the sheet.
 *
 * <p>In: what a rehearsal came to. Out: the line that {@code loadwalk rehearse} prints. Open {@link
 * loadwalk.report.rehearsal.RehearsalJson}.
 */
package loadwalk.report.rehearsal;
