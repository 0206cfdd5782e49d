/**
 * Row 4: the screens, pure: a program and a size to a frame of styled cells.
 *
 * <pre>
 *  Key ──Screen.press──> Answer: the next screen, Intents for the walk, Effects asked
 *                            │
 *  ProgramEvent ──ProgramUpdate──> ProgramNext: the new Program and all Effects
 *                                       │
 *                                  Program.paint ──> Frame
 * </pre>
 *
 * <p>A {@link loadwalk.view.Program} is a screen and the state that it shows. Effects are done
 * elsewhere; what comes of them reaches the program as a {@link loadwalk.view.ProgramEvent}. Open
 * {@link loadwalk.view.ProgramUpdate} first.
 *
 * <p>Rooms, from the bottom up: {@link loadwalk.view.canvas}, {@link loadwalk.view.state}, {@link
 * loadwalk.view.form}, {@link loadwalk.view.screen}, {@link loadwalk.view.home}, {@link
 * loadwalk.view.walk}, and this package on top.
 */
package loadwalk.view;
