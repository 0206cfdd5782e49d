package loadwalk.practice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.ThdKind;

/**
 * The simulated bench: what its file says, and how it really is.
 *
 * @param described the bench as the operator would describe it
 * @param source supplies and leads as seen from the amplifier
 * @param roomCelsius the temperature of the room
 * @param seed the seed of the errors of its meters and loads
 */
public record PracticeBench(Bench described, SourceLine source, double roomCelsius, long seed) {
  private static final double SUPPLY_VOLTS = 13.8;
  private static final double SUPPLY_AMPS_EACH = 80;
  private static final double FUSE_AMPS = 150;
  private static final double LOAD_TOLERANCE_PERCENT = 1;

  /** The heatsink of each load, big and blown at, K/W. */
  private static final double KELVIN_PER_WATT = 0.1;

  /**
   * The source resistance: 0.2 mΩ in the supplies, about 1.4 mΩ in the leads, the rest in the
   * joints.
   */
  private static final double SOURCE_OHMS = 0.002;

  /** Returns the bench called "Practice bench". */
  public static PracticeBench ofSeed(long seed) {
    Supply supply = new Supply(SUPPLY_VOLTS, SUPPLY_AMPS_EACH);
    Bench bench =
        new Bench(
            "Practice bench",
            List.of(supply, supply),
            List.of(lead("plus"), lead("minus")),
            OptionalDouble.of(FUSE_AMPS),
            List.of(
                load("4 ohm bank", 4, 300, 2),
                load("2 ohm bank", 2, 500, 2),
                load("1 ohm bank", 1, 1000, 2),
                load("0.5 ohm bank", 0.5, 1500, 1)),
            meters(),
            Bench.DEFAULT_USABLE_FRACTION);
    double room = 21 + 2 * Noise.signed(seed, "room");
    SourceLine source = new SourceLine(SUPPLY_VOLTS, SOURCE_OHMS, 2 * SUPPLY_AMPS_EACH);
    return new PracticeBench(bench, source, room, seed);
  }

  /** Returns the true value of a nominal load, ohms: within 0.4 % of nominal. */
  double trueOhms(double nominalOhms) {
    return nominalOhms * (1 + 0.004 * Noise.signed(seed, "load", nominalOhms));
  }

  /** Returns what a meter shows for a true value, with its gain error, scatter and rounding. */
  double shown(ReadingId id, double value, double scatterFraction, Object... occasion) {
    Meter meter = described.meterFor(id).orElseThrow();
    double gain = 0.5 * meter.percent() / 100 * Noise.signed(seed, "gain", meter.label());
    double scatter = scatterFraction * Noise.normal(seed, id.key(), List.of(occasion));
    double reading = value * (1 + gain + scatter);
    return Math.rint(reading / meter.resolution()) * meter.resolution();
  }

  private static Lead lead(String label) {
    return new Lead(label, new Lead.Awg(4), 1.5, 2).insulatedFor(105);
  }

  private static LoadResistor load(String label, double ohms, double watts, int count) {
    return new LoadResistor(
            label, ohms, LOAD_TOLERANCE_PERCENT, watts, count, OptionalDouble.of(50))
        .on(Mount.heatsink(KELVIN_PER_WATT));
  }

  private static List<Meter> meters() {
    Optional<Meter.Band> audio = Optional.of(new Meter.Band(20, 20000));
    return List.of(
        new Meter("AC volts", ReadingId.OUTPUT_VOLTS, 0.5, 2, 0.01, audio),
        new Meter("DC volts", ReadingId.SUPPLY_VOLTS, 0.3, 2, 0.01, Optional.empty()),
        new Meter("DC clamp", ReadingId.SUPPLY_AMPS, 1.5, 2, 0.1, Optional.empty()),
        new Meter("thermocouple", ReadingId.SINK_CELSIUS, 0.5, 1, 0.1, Optional.empty()),
        new Meter("four-wire ohms", ReadingId.LOAD_OHMS, 0.2, 2, 0.001, Optional.empty()),
        new Meter("room thermometer", ReadingId.AMBIENT_CELSIUS, 0, 1, 0.5, Optional.empty()),
        new Meter("distortion meter", ReadingId.THD_PERCENT, 5, 1, 0.01, audio)
            .counting(Optional.of(ThdKind.THD_F), OptionalDouble.empty()));
  }
}
