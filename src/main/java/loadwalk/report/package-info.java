/**
 * Row 4: turns a walk into its sheet, walks into the ledger, plans and waves into pages; all pure.
 *
 * <pre>
 *  rehearsal   ledger   plan   wave     what people read
 *       └──────┬──┘      │      │
 *            sheet       │      │       one walk, and how results are worded
 *              └─────────┼──────┘
 *                       page            blocks of text, and the writer of each format
 * </pre>
 *
 * <p>A room imports only from the rooms below it. A page is worded once for all formats. Only the
 * writer of a format turns text into markup, so no text gets past its escaping. Open {@link
 * loadwalk.report.sheet.SheetPage} first.
 */
package loadwalk.report;
