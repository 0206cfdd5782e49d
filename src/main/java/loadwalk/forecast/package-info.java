/** Row 2: what the next readings should be, what contradicts them, and what a step asks. */
package loadwalk.forecast;
