/**
 * Row 6: main and wiring. This row alone owns threads, files and clocks.
 *
 * <pre>
 *  command line ──Main──> a command of cli, or ProgramStarter: on the screen, as lines, filled in
 *
 *  loop: keys, lines, ticks ──> updates of the program ──Effect──> MachineEffects, ProgramEffects
 *              ^                                                       │
 *              │ ProgramEvent                                          v
 *              └──────────────── store: journals, sequences, photos; meter; sound; *ForScreen
 * </pre>
 *
 * <p>Open {@link loadwalk.app.ProgramStarter} first, then {@link loadwalk.app.ProgramEffects},
 * which has one method for each effect.
 *
 * <p>Rooms, from the bottom up: {@link loadwalk.app.loop}, {@link loadwalk.app.store}, {@link
 * loadwalk.app.meter} and {@link loadwalk.app.sound}.
 */
package loadwalk.app;
