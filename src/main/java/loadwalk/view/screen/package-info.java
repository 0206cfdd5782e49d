/**
 * Says what a screen is, and holds the two that only show: a text and its charts.
 *
 * <pre>
 *  Key ──Screen.press──> Answer: the next screen, Intents for the walk, Effects asked
 *  ProgramState ──Screen.paint──> Canvas
 * </pre>
 *
 * <p>A screen sees the state and never the program. Open {@link loadwalk.view.screen.Screen} first.
 */
package loadwalk.view.screen;
