package loadwalk.wave;

import java.util.List;

/**
 * The level and distortion of one short block of a tone, in the units of the samples.
 *
 * @param seconds the time of its middle, from the start
 * @param rms the rms about the mean
 * @param thd harmonics 2 to 10 over the fundamental, as a ratio
 * @param harmonics each harmonic in percent, from number 2 up
 */
public record LevelPoint(double seconds, double rms, double thd, List<Double> harmonics) {}
