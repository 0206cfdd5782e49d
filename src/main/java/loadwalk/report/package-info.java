/**
 * Row 4: pure: a walk to its sheet, walks to the ledger, in each format.
 *
 * <pre>
 *  a walk ──SheetFold──> Sheet ──SheetPage──> Page of Blocks ──> TextPage, HtmlPage, MarkdownPage
 *                          └──> SheetJson, SheetCsv
 *  walks ──LedgerGathering──> LedgerEntry ──> Ledger ──LedgerPage──> Page …
 *  a plan ──PlanPage──> Page …    a judged wave ──WavePage──> Page …
 * </pre>
 *
 * <p>A page is worded once, whatever the format. Only the writer of a format turns text into
 * markup, so no text goes round its escaping. Open {@link loadwalk.report.sheet.SheetPage} first.
 */
package loadwalk.report;
