package loadwalk.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.Supply;

/** Draws what surrounds a device: leaflet, fuses, supplies, meters. */
final class Draw {
  private static final double[] FUSES = {
    7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150, 200, 250, 300, 400, 500, 800, 1200
  };
  private static final double[] SUPPLIES = {20, 30, 50, 60, 80, 100, 200};

  /** 3 dB in decades of power. */
  private static final double MOST_OFF = 0.3;

  private final RandomGenerator random;

  Draw(long seed, int number) {
    this.random = new SplittableRandom(seed * 1_000_003L + number);
  }

  double uniform(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  double logUniform(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  double normal(double deviation) {
    return deviation * random.nextGaussian();
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  int whole(int below) {
    return random.nextInt(below);
  }

  /** Returns the smallest standard fuse that is not below, or the largest there is. */
  static double fuseNotBelow(double amps) {
    for (double fuse : FUSES) {
      if (fuse >= amps) {
        return fuse;
      }
    }
    return FUSES[FUSES.length - 1];
  }

  /** Returns fuses of one size whose sum is near the wanted one. */
  List<Double> fuses(double sumAmps) {
    int count = 1 + whole(3);
    double each = fuseNotBelow(sumAmps / count);
    List<Double> fuses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      fuses.add(each);
    }
    return fuses;
  }

  /** Returns a bench whose supplies bear about the wanted current. */
  Bench bench(double amps) {
    double each = SUPPLIES[whole(SUPPLIES.length)];
    int count = (int) Math.max(1, Math.min(12, Math.rint(amps / each)));
    if (count == 12) {
      each = 10 * Math.ceil(amps / 120);
    }
    List<Supply> supplies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      supplies.add(new Supply(13.8, each));
    }
    OptionalDouble fuse =
        chance(0.5)
            ? OptionalDouble.of(fuseNotBelow(count * each * uniform(0.7, 1.2)))
            : OptionalDouble.empty();
    double usable = Bench.DEFAULT_USABLE_FRACTION;
    return new Bench("Bench", supplies, List.of(), fuse, List.of(), BenchMeters.ALL, usable);
  }

  /** Returns a leaflet: watts off by up to 3 dB either way, some lines and facts missing. */
  Amplifier leaflet(Device device, String letters, boolean regulated, int channels, double fuses) {
    double[] settings = {13.8, 14.4, 12.0};
    double volts = settings[chance(0.5) ? 0 : 1 + whole(2)];
    OptionalDouble stated = chance(0.7) ? OptionalDouble.of(volts) : OptionalDouble.empty();
    double scale = regulated || stated.isEmpty() ? 1 : volts / 13.8 * volts / 13.8;
    double off = uniform(-MOST_OFF, MOST_OFF);
    List<Rating> ratings = new ArrayList<>();
    ratings.add(rating(device, Mode.STEREO, 4, off, scale, stated));
    if (chance(0.6)) {
      ratings.add(rating(device, Mode.STEREO, 2, off, scale, stated));
    }
    if (chance(0.6)) {
      ratings.add(rating(device, Mode.BRIDGED, 4, off, scale, stated));
    }
    double minimum = new double[] {4, 2, 1, 0.5, 0.25}[whole(5)];
    return new Amplifier(
        "Brightmoor",
        "X" + whole(1000),
        Optional.empty(),
        OptionalInt.of(1985 + whole(25)),
        chance(0.7) ? Optional.of(letters) : Optional.empty(),
        OptionalInt.of(channels),
        ratings,
        chance(0.7) ? OptionalDouble.of(minimum) : OptionalDouble.empty(),
        OptionalDouble.empty(),
        fuses(fuses),
        chance(0.4) ? Optional.of(regulated) : Optional.empty());
  }

  /** Off by the leaflet's common part and a little of its own, never by more than 3 dB. */
  private Rating rating(
      Device device, Mode mode, double ohms, double off, double scale, OptionalDouble supplyVolts) {
    double output = device.at(mode, ohms, 50).outputVolts();
    double decades = Math.max(-MOST_OFF, Math.min(MOST_OFF, off + normal(0.03)));
    double watts = output * output / ohms * scale * Math.pow(10, decades);
    double printed = watts < 50 ? Math.max(1, Math.rint(watts)) : 5 * Math.rint(watts / 5);
    OptionalDouble thd = chance(0.7) ? OptionalDouble.of(1) : OptionalDouble.empty();
    return new Rating(mode, ohms, printed, supplyVolts, thd);
  }

  /** Returns meters: 0.3 % gain, scatter 0.6 % in volts and 1 % in amps (standard deviations). */
  Specimen.Meters meters(double supplyScatter) {
    return new Specimen.Meters(
        1 + normal(0.003),
        1 + normal(0.003),
        1 + normal(0.003),
        0.006,
        supplyScatter,
        0.01,
        chance(0.5) ? 0.1 : 0.01,
        chance(0.15));
  }
}
