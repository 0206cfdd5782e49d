/**
 * The screens of an open walk: the current step, all readings, a captured wave.
 *
 * <pre>
 *  WalkScreen ──press──> BriefKeys | RunKeys | WaveKeys ──> Answer
 *      └──paint──> WalkPainter ──> one panel of the step + SidePanel + WalkFoot
 * </pre>
 *
 * <p>The panels are Brief, Warm, Run, Pause, Done and Stop. Open {@link
 * loadwalk.view.walk.WalkScreen} first, then {@link loadwalk.view.walk.WalkPainter}.
 */
package loadwalk.view.walk;
