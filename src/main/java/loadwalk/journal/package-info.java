/** Row 2: framed append-only records and their recovery; knows no amplifier. */
package loadwalk.journal;
