/**
 * Row 2: test tones and captured waves: reading, judging, finding the limit.
 *
 * <pre>
 *  Tone ──WavWriter──> a test tone
 *  WAV ──WavReader─┐
 *                  ├─ AudioSource ──WaveAnalysis──> WaveReading: volts, THD, clipping, frequency
 *  CSV ──ScopeCsv──┘             ├─ LimitFinder ──> LimitFinding: volts at the THD limit of a ramp
 *                                └─ LiveMeter ────> LiveReading, ten a second
 * </pre>
 *
 * <p>Samples are fractions of the input's full scale until {@link loadwalk.wave.Calibration} makes
 * volts of them. Nothing here opens a file or a sound card. Open {@link
 * loadwalk.wave.analysis.WaveAnalysis} first.
 */
package loadwalk.wave;
