package loadwalk.wave.file;

/**
 * A named place in a recording.
 *
 * @param frame counted from the first frame, 0 or more
 * @param label what begins there
 */
public record Cue(long frame, String label) {}
