package loadwalk.experiment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;

/**
 * Draws benches around the amplifiers of a population: of every quality, or sane ones.
 *
 * <p>A sane bench has supplies, fuses and leads of 1.6 times the true worst of the walk, resistors
 * that bear four times as they are mounted, a load below none that is allowed, and all of it is
 * entered and read. Of the others each part is drawn from far too small to ample for some step, and
 * one in ten is not entered.
 *
 * @param population whose amplifiers
 * @param seed the seed of the draw
 * @param sane whether the benches are sane
 */
record TrialDraw(Population population, long seed, boolean sane) {
  private static final double SANE_AMPS = 1.6;
  private static final double SANE_WATTS = 4;

  /** The K/W of its heatsink over those from wire to case. */
  private static final double SANE_SINK = 0.3;

  /** The rise of the wire over the case at the rated watts, K. */
  private static final double WIRE_KELVIN = 225;

  private static final double LEFT_OUT = 0.1;
  private static final double SET_VOLTS = 13.8;
  private static final double UNIT_OHMS = 4;
  private static final double[] SINGLES = {4, 2, 1};

  /** Returns one bench; the same number gives the same. */
  TrialBench bench(int number) {
    return new Drawn(population.specimen(seed, number), number).bench();
  }

  /** One bench as it is drawn. */
  private final class Drawn {
    private final Specimen specimen;
    private final int number;
    private final Device free;
    private final Draw draw;
    private final double levelAmps;

    Drawn(Specimen specimen, int number) {
      this.specimen = specimen;
      this.number = number;
      free = specimen.device().unlimited();
      draw = new Draw(seed ^ (sane ? 0x5A4E : 0x616E79), number);
      levelAmps = levelAmps();
    }

    TrialBench bench() {
      List<Supply> supplies = supplies();
      Amplifier printed = printed();
      double sum = supplies.stream().mapToDouble(Supply::amps).sum();
      double counted = sane || draw.chance(0.8) ? 0.9 : draw.uniform(0.75, 1);
      List<Lead> leads = leads();
      double fuse = fuseAmps();
      boolean ammeter = sane || draw.chance(0.75);
      Bench bench =
          new Bench(
              "Bench " + number,
              supplies,
              leads,
              Double.isInfinite(fuse) ? OptionalDouble.empty() : OptionalDouble.of(fuse),
              loads(),
              meters(ammeter),
              counted);
      Device device = free;
      if (!supplies.isEmpty()) {
        device = free.withSupplyAmps(sum * draw.uniform(0.95, 1.15));
      }
      TrueLimits limits =
          new TrueLimits(
              supplies.isEmpty() ? Double.POSITIVE_INFINITY : counted * sum,
              printed.fuses().isEmpty()
                  ? Double.POSITIVE_INFINITY
                  : printed.fuses().stream().mapToDouble(a -> a).sum(),
              fuse,
              leads.stream().mapToDouble(CopperTable::amps).min().orElse(Double.POSITIVE_INFINITY),
              printed.minimumStereoOhms().orElse(0),
              leastBridged(printed),
              protectsBelow(printed));
      TrialBench.Habits habits =
          new TrialBench.Habits(
              ammeter,
              sane || draw.chance(0.5),
              draw.chance(0.5),
              draw.uniform(0.9, 1.1),
              draw.uniform(0.3, 0.9));
      String name = (sane ? "sane " : "any ") + specimen.name() + ", seed " + seed;
      return new TrialBench(name, printed, bench, device, limits, specimen, habits);
    }

    /** Returns so many amperes as one part of the bench is made for. */
    private double amps() {
      double factor = draw.logUniform(0.6, 1.7);
      return sane ? SANE_AMPS * worst(Truth::supplyAmps) : factor * levelAmps;
    }

    /** Returns so many amperes as the bench is made for: too few for some step, or ample. */
    private double levelAmps() {
      int step = 1 + draw.whole(Ladder.STEPS.size() - 1);
      return draw.logUniform(0.5, 4) * asked(Ladder.STEPS.get(step), step).supplyAmps();
    }

    private boolean leftOut() {
      return draw.chance(LEFT_OUT) && !sane;
    }

    private List<Supply> supplies() {
      int count = 1 + draw.whole(4);
      double each = amps() / count;
      return leftOut()
          ? List.of()
          : Collections.nCopies(count, new Supply(SET_VOLTS, Math.max(0.5, each)));
    }

    private double fuseAmps() {
      double amps = amps();
      return leftOut()
          ? Double.POSITIVE_INFINITY
          : Draw.fuseNotBelow(amps) >= amps ? Draw.fuseNotBelow(amps) : amps;
    }

    private Amplifier printed() {
      Amplifier was = specimen.amplifier();
      double amps = amps();
      int count = 1 + draw.whole(3);
      List<Double> fuses =
          leftOut()
              ? List.of()
              : Collections.nCopies(count, Math.max(amps / count, Draw.fuseNotBelow(amps / count)));
      OptionalDouble bridged =
          was.minimumStereoOhms().isPresent() && draw.chance(0.4)
              ? OptionalDouble.of(2 * was.minimumStereoOhms().getAsDouble())
              : OptionalDouble.empty();
      return new Amplifier(
          was.maker(),
          was.model(),
          Optional.empty(),
          was.year(),
          was.amplifierClass(),
          was.channels(),
          was.ratings(),
          sane ? OptionalDouble.of(0.25) : was.minimumStereoOhms(),
          sane ? OptionalDouble.of(0.5) : bridged,
          fuses,
          was.regulated());
    }

    private double leastBridged(Amplifier printed) {
      return printed.minimumBridgedOhms().orElse(2 * printed.minimumStereoOhms().orElse(0));
    }

    /** A maker states what the amplifier bears; of one that states nothing its ratings tell. */
    private double protectsBelow(Amplifier printed) {
      double stated = draw.uniform(0.4, 0.98);
      double unstated = draw.uniform(0.2, 0.98);
      if (sane) {
        return 0;
      }
      double rated =
          printed.ratings().stream().mapToDouble(this::channelOhms).min().orElse(UNIT_OHMS);
      return printed.minimumStereoOhms().isPresent()
          ? stated * printed.minimumStereoOhms().getAsDouble()
          : unstated * rated;
    }

    private double channelOhms(Rating rating) {
      return rating.mode() == Mode.STEREO ? rating.ohms() : rating.ohms() / 2;
    }

    /** Two runs that together are most of what lies between supply and terminals. */
    private List<Lead> leads() {
      double amps = amps();
      double part = draw.uniform(0.2, 0.5);
      if (leftOut()) {
        return List.of();
      }
      Truth idle = free.idle();
      Truth four = asked(Ladder.STEPS.get(1), 1);
      double ohms =
          (idle.supplyVolts() - four.supplyVolts()) / (four.supplyAmps() - idle.supplyAmps());
      Lead some = CopperTable.notBelow("plus", amps, 1);
      double metres = Math.max(0.2, Math.min(10, CopperTable.metres(some, part * ohms)));
      return List.of(insulated("plus", amps, metres), insulated("minus", amps, metres));
    }

    /** Half say that they are for 105 °C, a quarter 75 °C, a quarter nothing. */
    private Lead insulated(String label, double amps, double metres) {
      Lead run = CopperTable.notBelow(label, amps, metres);
      boolean hot = sane || draw.chance(0.5);
      Lead silent = new Lead(label, run.gauge(), metres, run.parallel());
      return hot ? run : draw.chance(0.5) ? run.insulatedFor(75) : silent;
    }

    /** Half of the benches are of equal units, half have a resistor for each load. */
    private List<LoadResistor> loads() {
      boolean units = draw.chance(0.5);
      int count = 8;
      double tolerance = draw.uniform(1, 5);
      List<LoadResistor> loads = new ArrayList<>();
      if (leftOut()) {
        return loads;
      }
      if (units) {
        double watts = worstWatts(UNIT_OHMS, 1.0 / 8) * ample();
        loads.add(resistor("unit", UNIT_OHMS, tolerance, watts, count));
        return loads;
      }
      for (double ohms : SINGLES) {
        double watts = worstWatts(ohms, ohms == 1 ? 0.5 : 1) * ample();
        loads.add(resistor("R" + (int) ohms, ohms, tolerance, watts, 2));
      }
      return loads;
    }

    private double ample() {
      double factor = draw.logUniform(0.1, 8);
      return sane ? SANE_WATTS * (1 + SANE_SINK) : factor;
    }

    /** Returns the most that one resistor takes where equal ones lie side by side in a load. */
    private double worstWatts(double ohms, double least) {
      double most = 0;
      for (int step = 1; step < Ladder.STEPS.size(); step++) {
        Target target = Ladder.STEPS.get(step);
        double share = target.ohms() / ohms;
        if (share <= 1 && share >= least) {
          Truth truth = asked(target, step);
          double volts = Math.max(truth.outputVolts(), truth.otherVolts());
          most = Math.max(most, share * volts * volts / target.ohms());
        }
      }
      return most;
    }

    private LoadResistor resistor(
        String label, double ohms, double tolerance, double watts, int count) {
      LoadResistor silent =
          new LoadResistor(label, ohms, tolerance, watts, count, OptionalDouble.empty());
      double sinkPart = sane ? SANE_SINK : draw.logUniform(0.05, 3);
      Mount sink = Mount.heatsink(Math.max(0.001, sinkPart * WIRE_KELVIN / watts));
      int kind = draw.whole(8);
      return switch (sane ? 0 : kind) {
        case 0, 1, 2 -> silent.on(sink);
        case 3 -> silent.on(Mount.of(Mount.Kind.METAL));
        case 4 -> silent.on(Mount.of(Mount.Kind.FREE_AIR));
        case 5 -> silent.on(Mount.of(Mount.Kind.FAN));
        default -> silent;
      };
    }

    private double worst(ToDoubleFunction<Truth> asked) {
      double most = 0;
      for (int step = 1; step < Ladder.STEPS.size(); step++) {
        most = Math.max(most, asked.applyAsDouble(asked(Ladder.STEPS.get(step), step)));
      }
      return most;
    }

    private Truth asked(Target target, int step) {
      return free.at(target.mode(), target.ohms(), specimen.celsius(step));
    }

    private List<Meter> meters(boolean ammeter) {
      return BenchMeters.ALL.stream()
          .filter(meter -> ammeter || meter.reads() != ReadingId.SUPPLY_AMPS)
          .toList();
    }
  }
}
