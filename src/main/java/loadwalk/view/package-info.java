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
 * <p>Effects are done elsewhere; what comes of them reaches the program as a {@link
 * loadwalk.view.ProgramEvent}. Open {@link loadwalk.view.ProgramUpdate} first, then {@link
 * loadwalk.view.WalkScreen}.
 */
package loadwalk.view;
