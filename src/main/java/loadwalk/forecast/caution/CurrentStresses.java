package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Hold;
import loadwalk.bench.Lead;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** What the supply current of a step stresses: supplies, fuses and leads. */
final class CurrentStresses {
  static final String SUPPLY = "supply-amps";
  static final String AMPLIFIER_FUSE = "amplifier-fuse";
  static final String BENCH_FUSE = "bench-fuse";
  static final String LEAD = "lead-amps";

  /**
   * Ratio of current to rating up to which a fuse is loaded for a reading, whatever its curve.
   * Common practice, no source.
   */
  private static final double MOST_OF_A_FUSE = 1.25;

  private final Tables tables;
  private final Wire wire;

  CurrentStresses(Tables tables, Wire wire) {
    this.tables = tables;
    this.wire = wire;
  }

  /** Returns each part that the current stresses and of which it is known what it bears. */
  List<Stress> of(StepQuestion step) {
    List<Stress> found = new ArrayList<>();
    step.amps().ifPresent(amps -> collect(step, amps, found));
    return found;
  }

  private void collect(StepQuestion step, Band amps, List<Stress> found) {
    Hold hold = Hold.of(step.target().kind(), tables);
    supplies(step, amps).ifPresent(found::add);
    OptionalDouble own = step.amplifier().fuseAmps();
    if (own.isPresent()) {
      double single = step.amplifier().fuses().get(0);
      Bears bears = fuse(tables.fuseFor(single), own.getAsDouble(), hold);
      String part = "the amplifier's fuses carry";
      found.add(new Stress(AMPLIFIER_FUSE, "amplifier's fuses", part, amps, bears, Unit.AMPERE));
    }
    OptionalDouble source = step.bench().fuseAmps();
    if (source.isPresent()) {
      double rating = source.getAsDouble();
      Bears bears = fuse(tables.fuseFor(rating), rating, hold);
      String part = "the bench fuse carries";
      found.add(new Stress(BENCH_FUSE, "bench fuse", part, amps, bears, Unit.AMPERE));
    }
    step.bench().leads().forEach(lead -> found.add(lead(lead, amps, hold)));
  }

  /**
   * The supplies are counted on for a part of their sum, and give at all of it; where they ended a
   * step, at what they bore then.
   */
  private static Optional<Stress> supplies(StepQuestion step, Band amps) {
    double usable = step.bench().usableAmps().orElse(Double.POSITIVE_INFINITY);
    double bore = EndedCautions.suppliesBore(step).orElse(Double.POSITIVE_INFINITY);
    double counted = Math.min(usable, bore);
    String part = bore < usable ? "the supplies bore" : "the supplies bear";
    if (Double.isInfinite(counted)) {
      return Optional.empty();
    }
    double most = Math.min(usable / step.bench().usableFraction(), bore);
    Bears bears = new Bears(counted, most, counted);
    return Optional.of(new Stress(SUPPLY, "supplies", part, amps, bears, Unit.AMPERE));
  }

  private Bears fuse(FuseCurve curve, double rating, Hold hold) {
    if (hold.isContinuous()) {
      double counted = tables.limit("fuse-continuous-percent") / 100 * rating;
      return new Bears(counted, rating, counted);
    }
    double lasting = Math.min(MOST_OF_A_FUSE, curve.multipleLasting(hold.seconds()));
    double neverOpens = Math.min(lasting, curve.points().get(0).multiple());
    return new Bears(rating, lasting * rating, neverOpens * rating);
  }

  private Stress lead(Lead lead, Band amps, Hold hold) {
    double ampacity = wire.ampacity(lead);
    Bears bears = new Bears(ampacity, wire.mostAmps(lead, hold), ampacity);
    String what = Sentence.of("lead \"{}\"", lead.label());
    String part = Sentence.of("the lead \"{}\" carries", lead.label());
    return new Stress(LEAD, what, part, amps, bears, Unit.AMPERE);
  }
}
