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
  void unknownCurrent_isNeverClear() {
    StepCautions.Outcome outcome = ask(amplifier(60.0), bench(), STEREO_4, Map.of());
    assertGravity(Verdict.HEED, "unknown-forecast", outcome);
    assertEquals(Verdict.HEED, outcome.verdict());
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
}
