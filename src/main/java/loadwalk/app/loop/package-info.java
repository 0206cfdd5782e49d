/**
 * The event loops: what happens outside becomes events, one at a time, on one thread.
 *
 * <pre>
 *  keys, resizes ──TerminalLoop──┐                             ┌──> frame, or lines of text
 *  lines ──LineFeed──PlainLoop───┼──> ProgramRunner: update ───┤
 *  meters, Background, ticks ────┘        ^                    └──> Effect ──EffectRunner──┐
 *                                         └───────────────── ProgramEvent ─────────────────┘
 * </pre>
 *
 * <p>In: keystrokes, lines, clocks, and what other threads offer. Out: frames or lines, and the
 * effects of each update. Open {@link loadwalk.app.loop.ProgramRunner} first; it is the whole loop
 * without its threads.
 */
package loadwalk.app.loop;
