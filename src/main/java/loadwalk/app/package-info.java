/** Row 6: main, wiring, event loop, effect runner; owns every thread, file and clock. */
package loadwalk.app;
