/** Row 3: the bench planned before anything is connected: leads, fuses, load wiring. */
package loadwalk.plan;
