/** Row 5: Lanterna: keys to events, frame to screen. */
package loadwalk.tui;
