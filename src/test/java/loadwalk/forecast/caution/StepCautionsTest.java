package loadwalk.forecast.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Verdict;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Checks each rule of the cautions at its limit. */
class StepCautionsTest {
  private static final StepCautions CAUTIONS = Stock.cautions();
  private static final Evidence.Conditions CONDITIONS = new Evidence.Conditions(40, 1, 13.8);
  private static final Target STEREO_4 = Target.loaded("stereo-4", Mode.STEREO, 4);
  private static final Target BRIDGED_1 = Target.loaded("bridged-1", Mode.BRIDGED, 1);

  private static Amplifier amplifier(Double... fuses) {
    return BareAmplifier.limited(OptionalDouble.of(0.5), OptionalDouble.of(1), List.of(fuses));
  }

  /** Two supplies of 50 A, 90 A usable; 2 m of AWG 4 each way; 1600 W of 4 Ω resistors. */
  private static Bench bench() {
    return new Bench(
        "North bench",
        List.of(new Supply(13.8, 50), new Supply(13.8, 50)),
        List.of(
            new Lead("plus", new Lead.Awg(4), 0.5, 1).insulatedFor(105),
            new Lead("minus", new Lead.Awg(4), 0.5, 1).insulatedFor(105)),
        OptionalDouble.of(100),
        List.of(
            new LoadResistor("4 ohm", 4, 5, 100, 16, OptionalDouble.empty())
                .on(Mount.heatsink(1e-9))),
        List.of(),
        0.9);
  }

  private static Map<ReadingId, Band> amps(double low, double middle, double high) {
    return new EnumMap<>(Map.of(ReadingId.SUPPLY_AMPS, new Band(low, middle, high)));
  }

  private static StepCautions.Outcome ask(
      Amplifier amplifier, Bench bench, Target target, Map<ReadingId, Band> readings) {
    Evidence evidence = new Evidence(amplifier, bench, CONDITIONS, List.of());
    return CAUTIONS.of(evidence, target, readings, Forecast.Demand.unknown());
  }

  private static Optional<Caution> find(StepCautions.Outcome outcome, String code) {
    return outcome.cautions().stream().filter(c -> c.code().equals(code)).findFirst();
  }

  private static void assertGravity(Verdict expected, String code, StepCautions.Outcome outcome) {
    Optional<Caution> found = find(outcome, code);
    assertTrue(found.isPresent(), code + " is missing in " + outcome.cautions());
    assertEquals(expected, found.get().gravity(), found.get().text());
  }

  @Test
  void lightStep_wellWithinTheBench_isClear() {
    StepCautions.Outcome outcome = ask(amplifier(100.0), bench(), STEREO_4, amps(18, 20, 22));
    assertEquals(Verdict.CLEAR, outcome.verdict(), outcome.cautions().toString());
    assertEquals(List.of(), outcome.cautions());
  }

  @Test
  void supply_fromEightyPercentOfUsable_isHeedAndAboveIsHalt() {
    Amplifier amplifier = amplifier(200.0);
    assertTrue(find(ask(amplifier, bench(), STEREO_4, amps(60, 70, 71)), "supply-amps").isEmpty());
    assertGravity(Verdict.HEED, "supply-amps", ask(amplifier, bench(), STEREO_4, amps(60, 70, 73)));
    StepCautions.Outcome over = ask(amplifier, bench(), STEREO_4, amps(60, 70, 91));
    assertGravity(Verdict.HALT, "supply-amps", over);
    assertEquals(
        "The step draws about 70 A, at worst 91 A. Only 90 A can be counted on from the supplies:"
            + " use a bigger supply or a lighter load.",
        find(over, "supply-amps").orElseThrow().text());
  }

  @Test
  void fuse_fromThreeQuarters_isHeedAndAboveIsHaltWithItsTime() {
    Amplifier amplifier = amplifier(30.0, 30.0);
    assertGravity(
        Verdict.HEED, "amplifier-fuse", ask(amplifier, bench(), STEREO_4, amps(40, 44, 46)));
    StepCautions.Outcome over = ask(amplifier, bench(), STEREO_4, amps(50, 60, 81));
    assertGravity(Verdict.HALT, "amplifier-fuse", over);
    assertEquals(
        "The amplifier's fuses (60 A together) carry about 60 A, at worst 81 A. Time to blow at"
            + " worst: 0.75 s to 10 min. Use a lighter load or less output.",
        find(over, "amplifier-fuse").orElseThrow().text());
    assertGravity(
        Verdict.HALT, "bench-fuse", ask(amplifier(200.0), bench(), STEREO_4, amps(50, 60, 140)));
  }

  /** Type E bears its rating for 100 h and opens from 60 s at 135 % (datasheet as transcribed). */
  @Test
  void fuse_beyondItsRatingThatHoldsForAReading_isHeedButHaltInAWarmUp() {
    Amplifier amplifier = amplifier(200.0);
    assertGravity(Verdict.HEED, "bench-fuse", ask(amplifier, bench(), STEREO_4, amps(50, 60, 110)));
    Target warmUp = new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
    assertGravity(Verdict.HALT, "bench-fuse", ask(amplifier, bench(), warmUp, amps(50, 60, 110)));
  }

  @Test
  void unknownSupplyOrFuse_isNeverClear() {
    Bench noSupply = withSupplies(List.of());
    assertGravity(
        Verdict.HEED, "supply-amps", ask(amplifier(60.0), noSupply, STEREO_4, amps(1, 2, 3)));
    StepCautions.Outcome nothing = ask(amplifier(), Bench.unknown(), STEREO_4, amps(1, 2, 3));
    assertGravity(Verdict.HEED, "bench-fuse", nothing);
    assertGravity(Verdict.HEED, "supply-amps", nothing);
  }

  @Test
  void unknownCurrent_isNeverClear() {
    StepCautions.Outcome outcome = ask(amplifier(60.0), bench(), STEREO_4, Map.of());
    assertGravity(Verdict.HEED, "unknown-forecast", outcome);
    assertEquals(Verdict.HEED, outcome.verdict());
  }

  /** 1 m of AWG 4 in all, 0.815153 mΩ/m · 1.1179 at 50 °C: 3 % of 13.8 V is lost at 454 A. */
  @Test
  void leads_aboveThreePercentOrTheirAmpacity_areTold() {
    Bench strong = withSupplies(List.of(new Supply(13.8, 2000)));
    Map<ReadingId, Band> belowDrop = amps(430, 440, 452);
    Map<ReadingId, Band> aboveDrop = amps(430, 440, 456);
    Amplifier amplifier = amplifier(1000.0);
    assertTrue(find(ask(amplifier, strong, STEREO_4, belowDrop), "lead-drop").isEmpty());
    assertGravity(Verdict.HEED, "lead-drop", ask(amplifier, strong, STEREO_4, aboveDrop));
    assertGravity(Verdict.HEED, "lead-amps", ask(amplifier, strong, STEREO_4, amps(140, 150, 165)));
    assertGravity(Verdict.HALT, "lead-amps", ask(amplifier, strong, STEREO_4, amps(150, 161, 165)));
  }

  @Test
  void supplySetting_farAboveWhatIsAsked_isHalt() {
    assertGravity(
        Verdict.HALT,
        "supply-volts",
        ask(amplifier(60.0), withSupplies(List.of(new Supply(24, 50))), STEREO_4, amps(1, 2, 3)));
    assertGravity(
        Verdict.HEED,
        "supply-volts",
        ask(amplifier(60.0), withSupplies(List.of(new Supply(12, 50))), STEREO_4, amps(1, 2, 3)));
    List<Supply> unequal = List.of(new Supply(13.8, 50), new Supply(14.4, 50));
    assertGravity(
        Verdict.HEED,
        "supply-volts",
        ask(amplifier(60.0), withSupplies(unequal), STEREO_4, amps(1, 2, 3)));
  }

  @Test
  void load_belowTheMinimum_isHaltInBothModes() {
    Target bridged = Target.loaded("bridged-0.5", Mode.BRIDGED, 0.5);
    StepCautions.Outcome outcome = ask(amplifier(60.0), bench(), bridged, amps(1, 2, 3));
    assertGravity(Verdict.HALT, "minimum-load", outcome);
    assertTrue(
        find(outcome, "minimum-load").orElseThrow().text().contains("each channel drives 0.25 Ω"));
    Target stereo = Target.loaded("stereo-0.25", Mode.STEREO, 0.25);
    assertGravity(
        Verdict.HALT, "minimum-load", ask(amplifier(60.0), bench(), stereo, amps(1, 2, 3)));
  }

  @Test
  void load_heavyButAllowed_isHeed() {
    StepCautions.Outcome outcome = ask(amplifier(60.0), bench(), BRIDGED_1, amps(1, 2, 3));
    assertGravity(Verdict.HEED, "minimum-load", outcome);
    assertEquals(Verdict.HEED, outcome.verdict());
  }

  @Test
  void load_ofNoNumber_isHalt() {
    Target unknown = Target.loaded("stereo-x", Mode.STEREO, Double.NaN);
    StepCautions.Outcome outcome = ask(amplifier(60.0), bench(), unknown, amps(1, 2, 3));
    assertGravity(Verdict.HALT, "minimum-load", outcome);
  }

  /** Spread evenly over 1600 W: 1300 W are 81 % of each, 9000 W beyond the five times known. */
  @Test
  void resistors_aboveTheirShare_areTold() {
    Map<ReadingId, Band> readings = amps(1, 2, 3);
    readings.put(ReadingId.OUTPUT_WATTS, new Band(500, 600, 650));
    assertGravity(Verdict.HEED, "load-watts", ask(amplifier(60.0), bench(), STEREO_4, readings));
    Target warmUp = new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
    readings.put(ReadingId.OUTPUT_WATTS, new Band(500, 810, 900));
    assertGravity(Verdict.HALT, "load-watts", ask(amplifier(60.0), bench(), warmUp, readings));
    assertGravity(Verdict.HEED, "load-watts", ask(amplifier(60.0), bench(), STEREO_4, readings));
    readings.put(ReadingId.OUTPUT_WATTS, new Band(4000, 4500, 5000));
    assertGravity(Verdict.HALT, "load-watts", ask(amplifier(60.0), bench(), STEREO_4, readings));
  }

  /** IEC 61140: extra-low voltage ends at 50 V AC rms (from memory). */
  @Test
  void output_above50Volts_isHeed() {
    Map<ReadingId, Band> readings = amps(1, 2, 3);
    readings.put(ReadingId.OUTPUT_VOLTS, new Band(30, 40, 50));
    assertTrue(find(ask(amplifier(60.0), bench(), STEREO_4, readings), "shock-volts").isEmpty());
    readings.put(ReadingId.OUTPUT_VOLTS, new Band(30, 40, 50.5));
    assertGravity(Verdict.HEED, "shock-volts", ask(amplifier(60.0), bench(), STEREO_4, readings));
  }

  @Test
  void meter_outsideItsBand_isHeedButNotWhenIdle() {
    Meter meter =
        new Meter(
            "bench meter",
            ReadingId.OUTPUT_VOLTS,
            0.5,
            3,
            0.01,
            Optional.of(new Meter.Band(45, 1000)));
    Bench plain = bench();
    Bench bench =
        new Bench(
            plain.name(),
            plain.supplies(),
            plain.leads(),
            plain.fuseAmps(),
            plain.loads(),
            List.of(meter),
            0.9);
    assertGravity(Verdict.HEED, "meter-band", ask(amplifier(60.0), bench, STEREO_4, amps(1, 2, 3)));
    StepCautions.Outcome idle = ask(amplifier(60.0), bench, Target.idle("idle"), amps(1, 2, 3));
    assertEquals(Verdict.CLEAR, idle.verdict());
  }

  @Test
  void heatsink_hot_isHeedThenHalt() {
    Map<ReadingId, Band> readings = amps(1, 2, 3);
    readings.put(ReadingId.SINK_CELSIUS, new Band(50, 60, 70));
    assertGravity(Verdict.HEED, "heatsink", ask(amplifier(60.0), bench(), STEREO_4, readings));
    readings.put(ReadingId.SINK_CELSIUS, new Band(80, 86, 95));
    assertGravity(Verdict.HALT, "heatsink", ask(amplifier(60.0), bench(), STEREO_4, readings));
  }

  @Test
  void coldLoad_offByMoreThanItsTolerance_isHalt() {
    Evidence evidence = new Evidence(amplifier(60.0), bench(), CONDITIONS, List.of());
    assertTrue(CAUTIONS.coldLoad(evidence, STEREO_4, 4.2).isEmpty());
    assertTrue(CAUTIONS.coldLoad(evidence, STEREO_4, 3.8).isEmpty());
    for (double ohms : new double[] {4.21, 2, 8, 0, Double.NaN}) {
      Optional<Caution> halt = CAUTIONS.coldLoad(evidence, STEREO_4, ohms);
      assertEquals(Verdict.HALT, halt.orElseThrow().gravity(), ohms + " Ω");
    }
  }

  /** The walk keeps a cold load among the observations, under the step's own id. */
  @Test
  void coldLoadOfTheStepItself_haltsIt() {
    Map<ReadingId, Double> cold = Map.of(ReadingId.LOAD_OHMS, 2.0);
    Observation own = new Observation(STEREO_4, cold);
    Evidence evidence = new Evidence(amplifier(100.0), bench(), CONDITIONS, List.of(own));
    StepCautions.Outcome outcome =
        CAUTIONS.of(evidence, STEREO_4, amps(18, 20, 22), Forecast.Demand.unknown());
    assertGravity(Verdict.HALT, "load-mismatch", outcome);
    StepCautions.Outcome other =
        CAUTIONS.of(evidence, BRIDGED_1, amps(18, 20, 22), Forecast.Demand.unknown());
    assertTrue(find(other, "load-mismatch").isEmpty());
  }

  @Test
  void stresses_areAllTold_worstFirst() {
    Map<ReadingId, Band> readings = amps(18, 20, 30);
    readings.put(ReadingId.OUTPUT_WATTS, new Band(50, 60, 80));
    Evidence evidence = new Evidence(amplifier(60.0), bench(), CONDITIONS, List.of());
    List<Stress> stresses =
        CAUTIONS.stresses(evidence, STEREO_4, readings, Forecast.Demand.unknown());
    assertEquals(
        List.of(
            "amplifier-fuse", "supply-amps", "bench-fuse", "lead-amps", "lead-amps", "load-watts"),
        stresses.stream().map(Stress::code).toList());
    assertEquals(50, stresses.get(0).marginPercent(), 1e-9);
    assertEquals(10, 100 * stresses.get(5).share(), 1e-9, "160 W of 1600 W");
  }

  @Test
  void cautions_areSortedWorstFirst() {
    StepCautions.Outcome outcome =
        ask(amplifier(30.0, 30.0), bench(), BRIDGED_1, amps(80, 95, 110));
    List<Caution> cautions = outcome.cautions();
    assertEquals("amplifier-fuse", cautions.get(0).code());
    for (int i = 1; i < cautions.size(); i++) {
      Caution before = cautions.get(i - 1);
      Caution after = cautions.get(i);
      int order = before.gravity().compareTo(after.gravity());
      assertTrue(order > 0 || order == 0 && before.severity() >= after.severity());
    }
  }

  /** No current above what supply or fuse bears is ever briefed clear, whatever is missing. */
  @Test
  void overload_isNeverClear() {
    long seed = 90;
    Random random = new Random(seed);
    for (int i = 0; i < 3000; i++) {
      double truth = Math.exp(Math.log(1000) * random.nextDouble());
      double limit = truth * random.nextDouble();
      Bench full = bench();
      List<Supply> supplies =
          random.nextInt(3) == 0 ? List.of() : List.of(new Supply(13.8, Math.max(0.1, limit)));
      OptionalDouble fuse =
          random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.max(0.1, limit));
      Bench bench = new Bench("b", supplies, full.leads(), fuse, full.loads(), List.of(), 0.9);
      List<Double> own = new ArrayList<>();
      if (random.nextBoolean()) {
        own.add(Math.max(0.1, limit));
      }
      Map<ReadingId, Band> readings =
          random.nextInt(4) == 0
              ? Map.of()
              : amps(truth * 0.9, truth, truth * (1 + random.nextDouble()));
      StepCautions.Outcome outcome =
          ask(amplifier(own.toArray(Double[]::new)), bench, STEREO_4, readings);
      assertFalse(outcome.verdict() == Verdict.CLEAR, "seed " + seed + ", trial " + i);
    }
  }

  private static Bench withSupplies(List<Supply> supplies) {
    Bench plain = bench();
    return new Bench(
        plain.name(),
        supplies,
        plain.leads(),
        OptionalDouble.of(1000),
        plain.loads(),
        List.of(),
        0.9);
  }
}
