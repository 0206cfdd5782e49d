/** Row 1: what stands on the bench, as plain records: amplifier, ratings, supply, leads, meters. */
package loadwalk.bench;
