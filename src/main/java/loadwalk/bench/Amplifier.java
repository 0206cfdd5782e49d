package loadwalk.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * The amplifier on the bench; everything but maker and model may be unknown.
 *
 * @param maker the maker's name
 * @param model the model's name
 * @param serial the serial number
 * @param year the year it was made
 * @param amplifierClass the class of its output stage, as written: "A", "AB", "B", "D", "G", "H"
 * @param channels how many channels it has
 * @param ratings its rated powers
 * @param minimumStereoOhms the lowest load allowed on each channel, ohms
 * @param minimumBridgedOhms the lowest bridged load allowed, ohms
 * @param fuses the amplifier's own fuses, amperes each
 * @param regulated whether its rails are regulated, where known
 */
public record Amplifier(
    String maker,
    String model,
    Optional<String> serial,
    OptionalInt year,
    Optional<String> amplifierClass,
    OptionalInt channels,
    List<Rating> ratings,
    OptionalDouble minimumStereoOhms,
    OptionalDouble minimumBridgedOhms,
    List<Double> fuses,
    Optional<Boolean> regulated)
    implements Shaped<Amplifier> {
  /** Checks the fields and copies the lists. */
  public Amplifier {
    Checks.text(maker, "maker");
    Checks.text(model, "model");
    ratings = List.copyOf(ratings);
    fuses = List.copyOf(fuses);
    fuses.forEach(amps -> Checks.positive(amps, "fuses"));
    minimumStereoOhms.ifPresent(ohms -> Checks.positive(ohms, "minimumOhms.stereo"));
    minimumBridgedOhms.ifPresent(ohms -> Checks.positive(ohms, "minimumOhms.bridged"));
  }

  /** Returns an amplifier known only by its name. */
  public static Amplifier named(String maker, String model) {
    return new Amplifier(
        maker,
        model,
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        Optional.empty());
  }

  @Override
  public Amplifier shape(Shape in) {
    String itsMaker = in.text("maker", maker);
    String itsModel = in.text("model", model);
    Optional<String> itsSerial = in.text("serial", serial);
    OptionalInt itsYear = in.whole("year", year, 1900, 2200);
    Optional<String> itsClass = in.text("class", amplifierClass);
    OptionalInt itsChannels = in.whole("channels", channels, 1, 64);
    List<Rating> itsRatings = in.listOr("ratings", ratings, Rating.blank());
    Minimum least = in.part("minimumOhms", minimum(), Minimum.NONE).orElse(Minimum.NONE);
    return new Amplifier(
        itsMaker,
        itsModel,
        itsSerial,
        itsYear,
        itsClass,
        itsChannels,
        itsRatings,
        least.stereo,
        least.bridged,
        in.numbersOr("fuses", fuses, 0.1, 10_000),
        in.flag("regulated", regulated));
  }

  private Optional<Minimum> minimum() {
    boolean none = minimumStereoOhms.isEmpty() && minimumBridgedOhms.isEmpty();
    return none
        ? Optional.empty()
        : Optional.of(new Minimum(minimumStereoOhms, minimumBridgedOhms));
  }

  private record Minimum(OptionalDouble stereo, OptionalDouble bridged) implements Shaped<Minimum> {
    private static final Minimum NONE = new Minimum(OptionalDouble.empty(), OptionalDouble.empty());

    @Override
    public Minimum shape(Shape in) {
      return new Minimum(
          in.number("stereo", stereo, 0.01, 10_000), in.number("bridged", bridged, 0.01, 10_000));
    }
  }

  /** Returns maker and model as one name. */
  public String name() {
    return maker + " " + model;
  }

  /** Returns the lowest load allowed in a mode, ohms; bridged falls back to twice stereo. */
  public OptionalDouble minimumOhms(Mode mode) {
    if (mode == Mode.STEREO) {
      return minimumStereoOhms;
    }
    if (minimumBridgedOhms.isPresent() || minimumStereoOhms.isEmpty()) {
      return minimumBridgedOhms;
    }
    return OptionalDouble.of(2 * minimumStereoOhms.getAsDouble());
  }

  /** Returns the sum of the amplifier's own fuses, amperes, where it has any. */
  public OptionalDouble fuseAmps() {
    return fuses.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(fuses.stream().mapToDouble(Double::doubleValue).sum());
  }

  /** Finds the rating for a mode and load, ohms. */
  public Optional<Rating> rating(Mode mode, double ohms) {
    return ratings.stream()
        .filter(r -> r.mode() == mode && Math.abs(r.ohms() - ohms) <= 0.01 * ohms)
        .findFirst();
  }
}
