package loadwalk.forecast;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.caution.Stress;
import loadwalk.forecast.standard.Stock;

/** A bench of which the tests of the cautions change one part at a time. */
public final class BriefedBench {
  public List<Supply> supplies = List.of(new Supply(13.8, 50), new Supply(13.8, 50));
  public List<Lead> leads = List.of(run("plus", 0.5, 1), run("minus", 0.5, 1));
  public OptionalDouble fuse = OptionalDouble.of(100);
  public List<LoadResistor> loads = List.of(resistor(4, 5));
  public List<Meter> meters = List.of();
  public List<Double> ownFuses = List.of(200.0);
  public OptionalDouble leastStereo = OptionalDouble.of(0.5);
  public OptionalDouble leastBridged = OptionalDouble.of(1);
  double tone = 40;
  public double asked = 13.8;
  public StepCautions cautions = Stock.cautions();
  public Forecast.Demand demand = Forecast.Demand.unknown();
  public final Map<ReadingId, Band> readings = new EnumMap<>(ReadingId.class);

  /** A run of AWG 4, which may carry 160 A and has 0.911 mΩ/m at 50 °C. */
  public static Lead run(String label, double metres, int parallel) {
    return new Lead(label, new Lead.Awg(4), metres, parallel).insulatedFor(105);
  }

  /** Sixteen resistors of 100 W. */
  public static LoadResistor resistor(double ohms, double tolerancePercent) {
    return new LoadResistor(ohms + " ohm", ohms, tolerancePercent, 100, 16, OptionalDouble.empty())
        .on(Mount.heatsink(1e-9));
  }

  public BriefedBench reads(ReadingId id, double low, double middle, double high) {
    readings.put(id, new Band(low, middle, high));
    return this;
  }

  public BriefedBench amps(double middle, double high) {
    return reads(ReadingId.SUPPLY_AMPS, Math.min(middle, 1), middle, high);
  }

  public Evidence evidence(Observation... walk) {
    Amplifier amplifier = BareAmplifier.limited(leastStereo, leastBridged, ownFuses);
    Bench bench = new Bench("North bench", supplies, leads, fuse, loads, meters, 0.9);
    return new Evidence(amplifier, bench, new Evidence.Conditions(tone, 1, asked), List.of(walk));
  }

  public StepCautions.Outcome ask(Target target) {
    return cautions.of(evidence(), target, readings, demand);
  }

  public List<Stress> stresses(Target target) {
    return cautions.stresses(evidence(), target, readings, demand);
  }

  /** Returns the first caution of a code. */
  public Optional<Caution> find(String code, Target target) {
    return ask(target).cautions().stream().filter(c -> c.code().equals(code)).findFirst();
  }
}
