/**
 * Room of wave: computes the readings of a capture.
 *
 * <pre>
 *  AudioSource ──ToneFinder──> the tone ──┬─ SteadyAnalysis ──┐
 *                                         │                   ├─ MeasuredWave ──> WaveReading
 *                                         └─ ShortAnalysis ───┘
 *  AudioSource ──LimitFinder──> LimitFinding: volts at the THD limit of a rising tone
 *  blocks ──────LiveMeter─────> LiveReading, ten a second
 * </pre>
 *
 * <p>In: samples and a calibration. Out: volts, THD, harmonics, frequency, clipping and the shape
 * of a cycle, with uncertainty; or one sentence on why the capture cannot be judged. Open {@link
 * loadwalk.wave.analysis.WaveAnalysis} first.
 */
package loadwalk.wave.analysis;
