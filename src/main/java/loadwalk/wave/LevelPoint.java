package loadwalk.wave;

import java.util.List;

/**
 * What one short block of a tone shows, in the units of the samples.
 *
 * @param seconds the time of its middle from the start
 * @param rms without the mean
 * @param thd harmonics 2 to 10 over the fundamental, as a ratio
 * @param harmonics each of them, in percent, from number 2 on
 */
public record LevelPoint(double seconds, double rms, double thd, List<Double> harmonics) {}
