/** Row 4: pure: model and size to a frame of styled cells. */
package loadwalk.view;
