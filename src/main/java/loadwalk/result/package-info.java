/** Row 2: what the readings of a step amount to, with uncertainty. */
package loadwalk.result;
