package loadwalk.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * Everything on the bench but the amplifier.
 *
 * @param name what the bench is called
 * @param supplies the supplies, assumed to be in parallel
 * @param leads the conductor runs from supply to amplifier, in series
 * @param fuseAmps the bench fuse at the source, amperes, where there is one
 * @param loads the stock of load resistors
 * @param meters the meters
 * @param usableFraction the usable part of the summed supply current
 */
public record Bench(
    String name,
    List<Supply> supplies,
    List<Lead> leads,
    OptionalDouble fuseAmps,
    List<LoadResistor> loads,
    List<Meter> meters,
    double usableFraction)
    implements Shaped<Bench> {

  /** The usable part of the summed supply current where the bench does not state it. */
  public static final double DEFAULT_USABLE_FRACTION = 0.9;

  private static final String MIXED =
      "a battery beside a supply cannot be forecast: enter the one that carries the current";

  /** Checks the fields and copies the lists. */
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

  static Bench blank() {
    return named("bench without a name");
  }

  @Override
  public Bench shape(Shape in) {
    String itsName = in.textOr("name", name);
    List<Supply> itsSupplies = in.listOr("supplies", supplies, new Supply(1, 1));
    if (isMixed(itsSupplies)) {
      in.refuse("supplies", MIXED);
    }
    double usable = in.numberOr("usableFraction", usableFraction, 0.01, 1);
    List<Lead> itsLeads = in.listOr("leads", leads, Lead.blank());
    Optional<Fuse> fuse = in.part("fuse", Fuse.of(fuseAmps), new Fuse(1));
    return new Bench(
        itsName,
        itsSupplies,
        itsLeads,
        fuse.map(f -> OptionalDouble.of(f.amps)).orElse(OptionalDouble.empty()),
        in.listOr("loads", loads, LoadResistor.blank()),
        in.listOr("meters", meters, Meter.blank()),
        usable);
  }

  private record Fuse(double amps) implements Shaped<Fuse> {
    static Optional<Fuse> of(OptionalDouble amps) {
      return amps.isPresent() ? Optional.of(new Fuse(amps.getAsDouble())) : Optional.empty();
    }

    @Override
    public Fuse shape(Shape in) {
      return new Fuse(in.number("amps", amps, 0.1, 100_000));
    }
  }

  /** Returns a bench with everything unknown. */
  public static Bench unknown() {
    return named("bench not described");
  }

  private static Bench named(String name) {
    return new Bench(
        name,
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        DEFAULT_USABLE_FRACTION);
  }

  /** Returns this bench with other meters. */
  public Bench with(List<Meter> others) {
    return new Bench(name, supplies, leads, fuseAmps, loads, others, usableFraction);
  }

  private static boolean isMixed(List<Supply> supplies) {
    return supplies.stream().map(s -> s.battery().isPresent()).distinct().count() > 1;
  }

  /** Tells whether batteries stand for the supplies. */
  public boolean onBattery() {
    return supplies.stream().anyMatch(s -> s.battery().isPresent());
  }

  /** Returns what feeds the leads, where supplies are known. */
  public Optional<Source> source() {
    return Source.of(supplies);
  }

  /** Returns the highest volts a supply is set to; empty for batteries, whose volts fall. */
  public OptionalDouble setVolts() {
    return supplies.stream().filter(s -> s.battery().isEmpty()).mapToDouble(Supply::volts).max();
  }

  /**
   * Returns how long the batteries last from full at a current, amperes, in seconds: the shortest
   * of them, each with its share of the current; empty where one does not say what it holds.
   */
  public OptionalDouble batterySeconds(double amps) {
    double together = source().map(Source::ohms).orElse(0.0);
    List<OptionalDouble> each =
        supplies.stream()
            .map(
                s ->
                    s.battery()
                        .map(b -> b.lastsSeconds(amps * together / b.ohms()))
                        .orElse(OptionalDouble.empty()))
            .toList();
    return each.stream().allMatch(OptionalDouble::isPresent)
        ? each.stream().mapToDouble(OptionalDouble::getAsDouble).min()
        : OptionalDouble.empty();
  }

  /** Returns the usable supply current, amperes, where supplies are known. */
  public OptionalDouble usableAmps() {
    if (supplies.isEmpty()) {
      return OptionalDouble.empty();
    }
    double sum = supplies.stream().mapToDouble(Supply::amps).sum();
    return OptionalDouble.of(sum * usableFraction);
  }

  /** Finds the meter for a reading, or for the one it is {@link ReadingId#meteredAs metered as}. */
  public Optional<Meter> meterFor(ReadingId id) {
    return named(id).or(() -> named(id.meteredAs()));
  }

  private Optional<Meter> named(ReadingId id) {
    return meters.stream().filter(m -> m.reads() == id).findFirst();
  }
}
