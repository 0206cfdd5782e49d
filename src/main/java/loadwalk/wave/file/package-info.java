/**
 * Room of wave: reads captured samples from a stream of any supported form.
 *
 * <pre>
 *  WAV stream ──WavReader──┐
 *                          ├──> AudioSource: blocks of samples, one row a channel
 *  CSV text ────ScopeCsv───┘
 * </pre>
 *
 * <p>In: a stream that somebody else opened, and the {@link loadwalk.wave.file.CaptureSetup} an
 * operator gave: full scale, divider, units. Out: samples, their rate, what was odd about the file,
 * or one sentence on why it cannot be read. Open {@link loadwalk.wave.file.AudioSource} first.
 */
package loadwalk.wave.file;
