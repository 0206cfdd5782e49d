package loadwalk.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Makes amplifiers of which little is known, for tests; the maker is invented. */
public final class BareAmplifier {
  private BareAmplifier() {}

  /** Returns one with its least loads in stereo and bridged, ohms, and its own fuses, amperes. */
  public static Amplifier limited(
      OptionalDouble leastStereo, OptionalDouble leastBridged, List<Double> fuses) {
    return of(List.of(), leastStereo, leastBridged, fuses);
  }

  /** Returns one of which nothing but its ratings is known. */
  public static Amplifier rated(Rating... ratings) {
    return of(List.of(ratings), OptionalDouble.empty(), OptionalDouble.empty(), List.of());
  }

  /** Returns one of which nothing but the number of its channels is known. */
  public static Amplifier channels(OptionalInt channels) {
    return of(List.of(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), channels);
  }

  private static Amplifier of(
      List<Rating> ratings,
      OptionalDouble leastStereo,
      OptionalDouble leastBridged,
      List<Double> fuses) {
    return of(ratings, leastStereo, leastBridged, fuses, OptionalInt.empty());
  }

  private static Amplifier of(
      List<Rating> ratings,
      OptionalDouble leastStereo,
      OptionalDouble leastBridged,
      List<Double> fuses,
      OptionalInt channels) {
    return new Amplifier(
        "Halvorsen & Pike",
        "Twin 50",
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        channels,
        ratings,
        leastStereo,
        leastBridged,
        fuses,
        Optional.empty());
  }
}
