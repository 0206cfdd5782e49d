/** Row 5: the commands and their exit codes. */
package loadwalk.cli;
