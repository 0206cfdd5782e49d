/**
 * The ledger: all walks side by side.
 *
 * <pre>
 *  journals ──NeededRecords──> LedgerEntry ─┐
 *  LedgerIndex: entries already known ──────┴─LedgerBuilder──> Ledger
 *  Ledger ──> LedgerPage, LedgerJson, LedgerCsv     two to four walks ──> ComparisonPage
 * </pre>
 *
 * <p>Only walks measured the same way are ranked against each other. Open {@link
 * loadwalk.report.ledger.LedgerEntry} first: it holds everything a ledger knows about a walk.
 */
package loadwalk.report.ledger;
