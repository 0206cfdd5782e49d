/**
 * Room of wave: what a block of samples holds at each frequency.
 *
 * <pre>
 *  a block ──Window──> Fft ──> BlockSpectrum ──┬─ Peaks: the strongest tone
 *                                              └─ HarmonicBands: power at the tone, its harmonics,
 *                                                 the rest
 * </pre>
 *
 * <p>In: samples of one channel. Out: powers; no volts, no verdict. Open {@link
 * loadwalk.wave.spectrum.BlockSpectrum} first.
 */
package loadwalk.wave.spectrum;
