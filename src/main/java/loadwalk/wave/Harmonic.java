package loadwalk.wave;

/**
 * One harmonic of a captured tone.
 *
 * @param number 2 for twice the frequency
 * @param hertz its frequency
 * @param percent its rms as a percentage of the fundamental's
 */
public record Harmonic(int number, double hertz, double percent) {}
