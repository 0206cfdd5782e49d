/**
 * Room of wave: the test tones that drive the amplifier.
 *
 * <pre>
 *  Tone: steady, levels, burst ──┬─ WavWriter ──> WAV with a cue at each level
 *     └─ Periods, Levels         └─ AudioSink ──> a sound output, opened by its owner
 *
 *  samples of one channel ─────────── MonoWav ────> WAV of 16 bits
 * </pre>
 *
 * <p>In: frequency, level and length. Out: samples that start and end without a click, whole
 * periods throughout. Open {@link loadwalk.wave.tone.Tone} first.
 */
package loadwalk.wave.tone;
