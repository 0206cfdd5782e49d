/**
 * Waves: files of a recorder, the sound input heard live, and the sound output for test tones.
 *
 * <pre>
 *  file ──CaptureReader──> WaveFound: volts, THD and tone, fit to enter a step, or why not
 *  SoundInput or PracticeSource ──LiveListener (a thread)──WalkSound──> Live: levels and THD
 *                                     └── held at the limit ──> NAME.waves/STEP-1.wav
 *  samples of a tone ──> SoundOutput
 * </pre>
 *
 * <p>Open {@link loadwalk.app.sound.CaptureReader} for files, {@link loadwalk.app.sound.WalkSound}
 * for what is heard.
 */
package loadwalk.app.sound;
