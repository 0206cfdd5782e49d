/** Row 5: the same walk as lines of text, for pipes, scripts and screen readers. */
package loadwalk.plain;
