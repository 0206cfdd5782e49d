/**
 * The sheet of one walk.
 *
 * <pre>
 *  WalkState ──SheetFold──> Sheet ──SheetPage──> Page (worded, with SheetCharts)
 *                             ├───SheetJson───> JSON, by loadwalk/schema/sheet.schema.json
 *                             └───SheetCsv────> CSV, one fact a line
 * </pre>
 *
 * <p>The page is put together from its parts: {@code BenchBlocks}, {@code ComputedSections}, {@code
 * WaveSections}, {@code WalkRecordSections}, {@code BudgetSection}. Open {@link
 * loadwalk.report.sheet.Sheet} first, then {@link loadwalk.report.sheet.SheetPage}.
 */
package loadwalk.report.sheet;
