/** Row 1: fits, propagation, Monte Carlo, sine fit. */
package loadwalk.numeric;
