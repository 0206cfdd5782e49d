/**
 * Row 4: pure: a walk to its sheet, walks to the ledger, plans and waves to pages.
 *
 * <pre>
 *  rehearsal   ledger   plan   wave     what is shown
 *       └──────┬──┘      │      │
 *            sheet       │      │       one walk, and the words for results
 *              └─────────┼──────┘
 *                       page            blocks of text, and the writer of each format
 * </pre>
 *
 * <p>A room imports from those below it alone. A page is worded once, whatever the format. Only the
 * writer of a format turns text into markup, so no text gets past its escaping. Open {@link
 * loadwalk.report.sheet.SheetPage} first.
 */
package loadwalk.report;
