/** Row 2: the simulated amplifier on the simulated bench, a peer of the real one. */
package loadwalk.practice;
