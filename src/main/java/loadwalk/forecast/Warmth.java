package loadwalk.forecast;

import java.util.OptionalDouble;

/**
 * What a walk's own warm-ups and rests tell of its heatsink.
 *
 * @param endCelsius where the last warm-up that showed it settles
 * @param endU its standard uncertainty, K
 * @param cooled whether the amplifier has rested since it was warm, so that it may be as cold as
 *     the room
 */
public record Warmth(OptionalDouble endCelsius, double endU, boolean cooled) {
  /** Nothing known. */
  public static final Warmth UNKNOWN = new Warmth(OptionalDouble.empty(), 0, false);
}
