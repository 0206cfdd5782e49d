/**
 * Row 6: main, wiring and the event loops; owns every thread, file and clock.
 *
 * <pre>
 *  TerminalLoop: keys, ticks ─┐
 *  PlainLoop: lines ──────────┴─> ProgramRunner ──> updates of the program
 *                                    ^      │ Effect
 *                       ProgramEvent │      v
 *                                  MachineEffects, ProgramEffects ──> journal, meters, files
 * </pre>
 *
 * <p>Open {@link loadwalk.app.ProgramStarter} first, then {@link loadwalk.app.ProgramEffects}.
 */
package loadwalk.app;
