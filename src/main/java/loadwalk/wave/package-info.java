/**
 * Row 2: test tones and captured waves, and their readings: volts, THD and clipping.
 *
 * <pre>
 *  tone:  Tone ──WavWriter──> a test tone
 *
 *  file:  WAV, CSV ──> AudioSource ──┬─ analysis: WaveAnalysis ──> WaveReading
 *                                    ├─           LimitFinder ───> LimitFinding
 *                                    └─           LiveMeter ─────> LiveReading
 *                                             │
 *                                  spectrum: Fft, blocks, harmonic bands
 * </pre>
 *
 * <p>This package holds the results; the rooms compute them. Samples are fractions of the input's
 * full scale until {@link loadwalk.wave.Calibration} turns them into volts. Nothing here opens a
 * file or a sound card. Open {@link loadwalk.wave.WaveReading} first, then {@link
 * loadwalk.wave.analysis.WaveAnalysis}.
 */
package loadwalk.wave;
