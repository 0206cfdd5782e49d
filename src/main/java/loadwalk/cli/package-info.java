/**
 * Row 5: the commands and their exit codes.
 *
 * <pre>
 *  words ──Loadwalk──> one Command a file ──> an exit code (ExitCode)
 *                          └─ asks World, KeptWalks, KeptSequences, MeterPort
 * </pre>
 *
 * <p>A command reads its options, asks for what it needs through an interface, prints, and returns
 * a code; {@code loadwalk.app} stands behind the interfaces. Open {@link loadwalk.cli.Loadwalk}
 * first.
 */
package loadwalk.cli;
