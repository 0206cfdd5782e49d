package loadwalk.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything on the bench but the amplifier.
 *
 * @param name what the bench is called
 * @param supplies the supplies, taken as in parallel
 * @param leads the conductor runs from supply to amplifier, in series
 * @param fuseAmps the bench fuse at the source, amperes, where there is one
 * @param loads the stock of load resistors
 * @param meters the meters
 * @param usableFraction the part of the summed supply current that may be counted on
 */
public record Bench(
    String name,
    List<Supply> supplies,
    List<Lead> leads,
    OptionalDouble fuseAmps,
    List<LoadResistor> loads,
    List<Meter> meters,
    double usableFraction) {

  /** The part of the summed supply current counted on where the bench does not say. */
  public static final double DEFAULT_USABLE_FRACTION = 0.9;

  /** Checks and copies. */
  public Bench {
    Checks.text(name, "name");
    supplies = List.copyOf(supplies);
    leads = List.copyOf(leads);
    loads = List.copyOf(loads);
    meters = List.copyOf(meters);
    fuseAmps.ifPresent(amps -> Checks.positive(amps, "fuse.amps"));
    if (!(usableFraction > 0 && usableFraction <= 1)) {
      throw new IllegalArgumentException(
          "usableFraction must lie above 0 and up to 1, got " + usableFraction);
    }
  }

  /** Returns a bench of which nothing is known. */
  public static Bench unknown() {
    return new Bench(
        "bench not described",
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        DEFAULT_USABLE_FRACTION);
  }

  /** Returns the current that may be counted on, amperes, where supplies are known. */
  public OptionalDouble usableAmps() {
    if (supplies.isEmpty()) {
      return OptionalDouble.empty();
    }
    double sum = supplies.stream().mapToDouble(Supply::amps).sum();
    return OptionalDouble.of(sum * usableFraction);
  }

  /** Finds the meter that takes a reading; watts and the other channel fall back to the volts'. */
  public Optional<Meter> meterFor(ReadingId id) {
    Optional<Meter> direct = meters.stream().filter(m -> m.reads() == id).findFirst();
    boolean volts = id == ReadingId.OTHER_OUTPUT_VOLTS || id == ReadingId.OPEN_VOLTS;
    return direct.isPresent() || !volts ? direct : meterFor(ReadingId.OUTPUT_VOLTS);
  }
}
