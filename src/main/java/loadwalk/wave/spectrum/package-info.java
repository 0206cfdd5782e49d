/**
 * Room of wave: the power of a block of samples at each frequency.
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
