/**
 * What a captured wave shows, as a page and as JSON.
 *
 * <p>In: a {@link loadwalk.report.wave.JudgedWave}. Out: the page or the line that {@code loadwalk
 * wave} prints. Open {@link loadwalk.report.wave.WavePage} first.
 */
package loadwalk.report.wave;
