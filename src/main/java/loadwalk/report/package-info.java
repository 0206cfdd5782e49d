/** Row 4: pure: a walk to its sheet, walks to the ledger, in each format. */
package loadwalk.report;
