package loadwalk.result;

import static loadwalk.result.Readings.bench;
import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.load;
import static loadwalk.result.Readings.meter;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.plain;
import static loadwalk.result.Readings.says;
import static loadwalk.result.Readings.step;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;
import org.junit.jupiter.api.Test;

class StepResultTest {
  @Test
  void total_oneChannelMeasured_isTwiceOneAndSaysSo() {
    StepResult result = step(usual(), stereo(4, volts(20)));
    assertEquals(100, result.watts().orElseThrow().value(), 1e-9);
    assertEquals(200, result.totalWatts().orElseThrow().value(), 1e-9);
    assertTrue(says(result.remarks(), "total-is-twice-one"));
    assertTrue(says(result.remarks(), "other-load-not-measured"));
  }

  /**
   * 20 V into 4 Ω: dP/dV = 10 W/V and dP/dR = 25 W/Ω. One reading counts in both channels, one lead
   * adds to both loads, the loads' tolerances are their own, and 1 % of volts is 2 W of 100 W.
   */
  @Test
  void totalOfOneChannelRead_countsTheOtherAsAnother() {
    StepResult result = step(usual(), stereo(4, volts(20)));
    double reading = 2 * 10 * Math.hypot(0.1, 0.03);
    double loads = Math.hypot(25 * 0.04, 25 * 0.04);
    double lead = 2 * 25 * 0.02;
    double rectangular = Math.hypot(Math.hypot(reading, loads), lead) / Math.sqrt(3);
    assertEquals(Math.hypot(rectangular, 2), result.totalWatts().orElseThrow().u(), 0.01);
  }

  @Test
  void otherLoadMeasured_countsInItsOwnPowerAndInTheTotal() {
    TakenReading other = of(ReadingId.OTHER_LOAD_OHMS, 4.4);
    StepResult both =
        step(usual(), stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 22), other));
    assertEquals(484 / 4.4, both.otherWatts().orElseThrow().value(), 1e-9);
    assertEquals(100 + 484 / 4.4, both.totalWatts().orElseThrow().value(), 1e-9);
    assertFalse(says(both.remarks(), "other-load-not-measured"));
    StepResult one = step(usual(), stereo(4, volts(20), other));
    assertEquals(100 + 400 / 4.4, one.totalWatts().orElseThrow().value(), 1e-9);
    assertEquals(
        List.of("one channel measured, both loaded: the total counts its volts in both loads"),
        one.remarks().stream()
            .filter(r -> r.code().equals("total-is-twice-one"))
            .map(Remark::text)
            .toList());
  }

  /** Channel 1's load was measured as 3.62 Ω; the other one is a load of its own, 4 Ω ± 1 %. */
  @Test
  void loadOfOneChannelMeasured_leavesTheOtherItsStock() {
    StepResult result =
        step(
            usual(),
            stereo(
                4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 20), of(ReadingId.LOAD_OHMS, 3.62)));
    assertEquals(400 / 3.62, result.watts().orElseThrow().value(), 1e-9);
    assertEquals(100, result.otherWatts().orElseThrow().value(), 1e-9);
    assertEquals(
        25 * 0.04 / Math.sqrt(3),
        -result.otherWatts().orElseThrow().contributions().get("other channel's load 4.0 ohm"),
        1e-9);
  }

  @Test
  void total_bothChannelsMeasured_isTheirSum() {
    StepResult result = step(usual(), stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)));
    assertEquals(81, result.otherWatts().orElseThrow().value(), 1e-9);
    assertEquals(181, result.totalWatts().orElseThrow().value(), 1e-9);
    assertFalse(says(result.remarks(), "total-is-twice-one"));
  }

  @Test
  void total_bridged_isTheOneLoad() {
    StepResult result = step(usual(), bridged(2, volts(20)));
    assertEquals(result.watts(), result.totalWatts());
  }

  @Test
  void efficiency_andHeat_comeFromInputLessOutput() {
    StepResult result =
        step(
            usual(),
            bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, 12.5)));
    assertEquals(175, result.inputWatts().orElseThrow().value(), 1e-9);
    assertEquals(100.0 / 175, result.efficiency().orElseThrow().value(), 1e-12);
    assertEquals(75, result.heatWatts().orElseThrow().value(), 1e-9);
    double expected =
        Math.hypot(result.inputWatts().orElseThrow().u(), result.totalWatts().orElseThrow().u());
    assertEquals(expected, result.heatWatts().orElseThrow().u(), 1e-9);
  }

  /**
   * η = V²/(R × Vs × I), so (u/η)² = (2 × 0.6 %)² / 3 + (1² + 0.5² + 0.3² + 1²) %² / 3 (JCGM
   * 100:2008, 5.1.6), 0.5 % being 20 mΩ of lead before 4 Ω; η = 100/175.
   */
  @Test
  void efficiency_hasTheUncertaintyOfAllFourReadings() {
    Bench bench =
        bench(
            List.of(
                meter(ReadingId.OUTPUT_VOLTS, 0.6, 0, 0),
                meter(ReadingId.SUPPLY_VOLTS, 0.3, 0, 0),
                meter(ReadingId.SUPPLY_AMPS, 1, 0, 0)),
            List.of(load(4, 1)));
    StepResult result =
        step(
            bench,
            bridged(
                4,
                fine(ReadingId.OUTPUT_VOLTS, 20),
                fine(ReadingId.SUPPLY_VOLTS, 14),
                fine(ReadingId.SUPPLY_AMPS, 12.5)));
    double relative = Math.sqrt((1.44 + 1 + 0.25 + 0.09 + 1) / 3) / 100;
    assertEquals(100.0 / 175 * relative, result.efficiency().orElseThrow().u(), 1e-6);
  }

  private static TakenReading fine(ReadingId id, double value) {
    return new TakenReading(id, value, 1e-6);
  }

  @Test
  void impossibleEnergy_isSaid() {
    StepResult result =
        step(
            usual(),
            bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, 1)));
    assertTrue(says(result.remarks(), "output-above-input"));
  }

  @Test
  void noSupplyReadings_leaveInputEmpty() {
    StepResult result = step(usual(), stereo(4, volts(20)));
    assertEquals(Optional.empty(), result.inputWatts());
    assertEquals(Optional.empty(), result.efficiency());
    assertEquals(Optional.empty(), result.heatWatts());
  }

  @Test
  void zeroSupplyAmps_giveNoEfficiency() {
    StepResult result =
        step(
            usual(),
            bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, 0)));
    assertEquals(Optional.empty(), result.efficiency());
    assertEquals(-100, result.heatWatts().orElseThrow().value(), 1e-9);
  }

  @Test
  void idle_turnsAllInputIntoHeat() {
    MeasuredStep idle =
        Readings.below(
            "idle",
            Target.Kind.IDLE,
            Mode.STEREO,
            Double.NaN,
            of(ReadingId.SUPPLY_VOLTS, 14),
            of(ReadingId.SUPPLY_AMPS, 1.5));
    StepResult result = step(usual(), idle);
    assertEquals(21, result.heatWatts().orElseThrow().value(), 1e-9);
    assertEquals(Optional.empty(), result.totalWatts());
    assertEquals(Optional.empty(), result.efficiency());
  }

  @Test
  void meterSpecification_splitsIntoGainAndDigits() {
    // Rectangular half-widths, u = a/sqrt(3): JCGM 100:2008, 4.3.7.
    StepResult result = step(usual(), stereo(4, volts(20)));
    Map<String, Double> parts = result.outputVolts().orElseThrow().contributions();
    assertEquals(0.1 / Math.sqrt(3), parts.get("DMM output volts gain"), 1e-12);
    assertEquals(0.03 / Math.sqrt(3), parts.get("DMM output volts stereo-4 digit"), 1e-12);
    assertEquals(2, parts.size());
  }

  @Test
  void coarseTyping_addsHalfAStep() {
    TakenReading coarse = new TakenReading(ReadingId.OUTPUT_VOLTS, 20, 0.1);
    Map<String, Double> parts =
        step(usual(), stereo(4, coarse)).outputVolts().orElseThrow().contributions();
    // 0.29 of the step: JCGM 100:2008, F.2.2.1.
    assertEquals(0.1 / Math.sqrt(12), parts.get("DMM output volts stereo-4 as typed"), 1e-12);
  }

  /** A meter given in percent alone says nothing of the last digit: half of it counts. */
  @Test
  void meterInPercentOnly_keepsTheDigitsTyped() {
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 0, 0)), List.of(load(4, 1)));
    for (double typed : new double[] {1, 0.01}) {
      Map<String, Double> parts =
          step(bench, bridged(4, new TakenReading(ReadingId.OUTPUT_VOLTS, 16, typed)))
              .outputVolts()
              .orElseThrow()
              .contributions();
      assertEquals(
          typed / 2 / Math.sqrt(3), parts.get("DMM output volts bridged-4 as typed"), 1e-12);
    }
  }

  /** Whether the limit was set right changes output and input alike: not their ratio. */
  @Test
  void settingTheLimit_countsInTheWatts_andNotInTheEfficiency() {
    MeasuredStep run =
        bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, 12.5));
    StepResult exact = step(usual(), run);
    StepResult learned = set(run, new Repeatability(0.005, 12));
    double setting = 2 * 100 * 0.005;
    assertEquals(
        Math.hypot(exact.watts().orElseThrow().u(), setting),
        learned.watts().orElseThrow().u(),
        1e-3);
    assertEquals(
        12, learned.watts().orElseThrow().degreesOfFreedom("setting the limit, bridged-4"));
    assertEquals(
        exact.efficiency().orElseThrow().u(), learned.efficiency().orElseThrow().u(), 1e-5);
    MeasuredStep below = Readings.loaded(Mode.BRIDGED, 4, Criterion.BELOW_LIMIT, volts(20));
    assertEquals(step(usual(), below).watts(), set(below, new Repeatability(0.005, 12)).watts());
  }

  private static StepResult set(MeasuredStep step, Repeatability repeatability) {
    return ResultComputation.walk(
            plain(), usual(), 1, 14.4, 40, Readings.WIRE, repeatability, List.of(step))
        .steps()
        .get(0);
  }

  @Test
  void noMeter_isAssumedAndSaid() {
    StepResult result = step(Bench.unknown(), stereo(4, volts(20)));
    assertTrue(says(result.remarks(), "meter-assumed"));
    assertTrue(says(result.remarks(), "load-assumed"));
    double u = Math.hypot(0.2, 0.02) / Math.sqrt(3);
    assertEquals(u, result.outputVolts().orElseThrow().u(), 1e-12);
    // ±5 %, 20 mΩ of lead, and ±100 ppm/K over 0 to 150 K, of which a third is the deviation.
    assertEquals(
        Math.hypot(Math.hypot(0.2, 0.02) / Math.sqrt(3), 4 * 0.015 / 3),
        result.loadOhms().orElseThrow().u(),
        1e-12);
  }

  @Test
  void meterOutsideItsBand_isSaid() {
    Meter narrow =
        new Meter(
            "DMM", ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01, Optional.of(new Meter.Band(45, 1000)));
    Bench bench = bench(List.of(narrow), List.of(load(4, 1)));
    assertTrue(says(step(bench, stereo(4, volts(20))).remarks(), "meter-band"));
    WalkResult at50 =
        ResultComputation.walk(
            plain(),
            bench,
            1,
            14.4,
            50,
            Readings.WIRE,
            Readings.EXACTLY_SET,
            List.of(stereo(4, volts(20))));
    assertFalse(says(at50.steps().get(0).remarks(), "meter-band"));
  }

  @Test
  void measuredLoad_takesThePlaceOfTheNominalOne() {
    Bench bench =
        bench(
            List.of(
                meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01),
                meter(ReadingId.LOAD_OHMS, 0.2, 2, 0.01)),
            List.of(load(4, 5)));
    StepResult result = step(bench, stereo(4, volts(20), of(ReadingId.LOAD_OHMS, 4.1)));
    assertEquals(400 / 4.1, result.watts().orElseThrow().value(), 1e-9);
    // The meter's specification, and ±2 mΩ of its tips' contact.
    assertEquals(
        Math.hypot(Math.hypot(0.0082, 0.02), 0.002) / Math.sqrt(3),
        result.loadOhms().orElseThrow().u(),
        1e-12);
  }

  @Test
  void measuredLoadOfZero_isLeftOutAndSaid() {
    StepResult result = step(usual(), stereo(4, volts(20), of(ReadingId.LOAD_OHMS, 0)));
    assertEquals(100, result.watts().orElseThrow().value(), 1e-9);
    assertTrue(says(result.remarks(), "load-reading-unusable"));
  }

  @Test
  void loadOfEqualParts_takesTheirTolerance() {
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01)), List.of(load(4, 1)));
    StepResult result = step(bench, bridged(0.5, volts(20)));
    assertEquals(
        Math.hypot(0.005, 0.02) / Math.sqrt(3), result.loadOhms().orElseThrow().u(), 1e-12);
    assertTrue(says(result.remarks(), "load-network-assumed"));
    // Sixteen of them would be needed for both channels, eight are there.
    StepResult both = step(bench, stereo(0.5, volts(10)));
    assertTrue(says(both.remarks(), "load-assumed"));
    assertEquals(
        Math.hypot(Math.hypot(0.025, 0.02) / Math.sqrt(3), 0.5 * 0.015 / 3),
        both.loadOhms().orElseThrow().u(),
        1e-12);
  }

  @Test
  void wattsTyped_giveVoltsWithTheNominalLoad() {
    StepResult result = wattsTyped(1, 0);
    assertEquals(20, result.outputVolts().orElseThrow().value(), 1e-12);
    assertEquals(400 / 4.2, result.watts().orElseThrow().value(), 1e-9);
    double u = Math.hypot(2, 0.1) / Math.sqrt(3);
    // The tips' contact of ±2 mΩ, and ±100 ppm/K over 0 to 150 K of a load nobody describes.
    double ohms = Math.hypot(0.002 / Math.sqrt(3), 4.2 * 0.015 / 3);
    assertEquals(
        Math.hypot(u * 4 / 4.2, ohms * 400 / (4.2 * 4.2)), result.watts().orElseThrow().u(), 1e-9);
    assertEquals(u * 4 / (2 * 20), result.outputVolts().orElseThrow().u(), 1e-9);
    assertTrue(says(result.remarks(), "volts-from-watts"));
  }

  /** 100 W read for 4 Ω by a meter of ±(2 % + digits), into 4.2 Ω known to a percentage. */
  private static StepResult wattsTyped(double digits, double loadPercent) {
    Bench bench =
        bench(
            List.of(
                meter(ReadingId.OUTPUT_WATTS, 2, digits, 0.1),
                meter(ReadingId.LOAD_OHMS, loadPercent, 0, 0)),
            List.of());
    return step(
        bench,
        bridged(4, of(ReadingId.OUTPUT_WATTS, 100), new TakenReading(ReadingId.LOAD_OHMS, 4.2, 0)));
  }

  @Test
  void wattsTypedAsZero_giveFiniteUncertainty() {
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_WATTS, 2, 1, 0.1)), List.of(load(4, 1)));
    Quantity volts =
        step(bench, bridged(4, of(ReadingId.OUTPUT_WATTS, 0))).outputVolts().orElseThrow();
    assertEquals(0, volts.value());
    assertEquals(Math.sqrt(0.1 / Math.sqrt(3) * 4), volts.u(), 1e-12);
  }

  @Test
  void leadDrop_isSettingLessTerminalVolts() {
    Bench bench =
        bench(
            List.of(meter(ReadingId.SUPPLY_VOLTS, 0, 0, 0), meter(ReadingId.SUPPLY_AMPS, 0, 0, 0)),
            List.of(),
            List.of(new Supply(14.4, 60), new Supply(14.4, 60)));
    StepResult result =
        step(
            bench,
            bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, 50)));
    assertEquals(0.4, result.leadDropVolts().orElseThrow().value(), 1e-9);
    assertEquals(20, result.leadWatts().orElseThrow().value(), 1e-9);
    // The setting's 1 % and half of the last digit typed, of a meter that states no digits.
    assertEquals(
        Math.hypot(0.144, 0.005) / Math.sqrt(3), result.leadDropVolts().orElseThrow().u(), 1e-9);
    assertTrue(says(result.remarks(), "supply-setting-assumed"));
  }

  @Test
  void total_ofAnAmplifierWithOneChannel_isItsPowerAndSaysSo() {
    Amplifier mono = BareAmplifier.channels(OptionalInt.of(1));
    StepResult one = Readings.walk(mono, usual(), stereo(4, volts(20))).steps().get(0);
    assertEquals(one.watts(), one.totalWatts());
    assertEquals(
        List.of("one-channel"),
        one.remarks().stream().map(Remark::code).filter(c -> c.contains("one")).toList());
    for (OptionalInt channels : List.of(OptionalInt.empty(), OptionalInt.of(2))) {
      StepResult two =
          Readings.walk(BareAmplifier.channels(channels), usual(), stereo(4, volts(20)))
              .steps()
              .get(0);
      assertEquals(200, two.totalWatts().orElseThrow().value(), 1e-9);
      assertFalse(says(two.remarks(), "one-channel"));
    }
  }

  /**
   * 14 V and 7.25 A are 101.5 W for 100 W out: within the uncertainty; 6.9 A and 96.6 W are not.
   */
  @Test
  void moreOutThanIn_isSaidOnlyBeyondTheUncertainty() {
    for (double amps : new double[] {7.25, 7.0, 6.9, 6.5}) {
      StepResult result =
          step(
              usual(),
              bridged(
                  4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14), of(ReadingId.SUPPLY_AMPS, amps)));
      Quantity heat = result.heatWatts().orElseThrow();
      assertEquals(
          -heat.value() > 2 * heat.u(), says(result.remarks(), "output-above-input"), amps + " A");
    }
    assertTrue(
        says(
            step(
                    usual(),
                    bridged(
                        4,
                        volts(20),
                        of(ReadingId.SUPPLY_VOLTS, 14),
                        of(ReadingId.SUPPLY_AMPS, 6.5)))
                .remarks(),
            "output-above-input"));
  }

  @Test
  void wattsBelowZero_giveNoOutput() {
    StepResult result = step(usual(), stereo(4, of(ReadingId.OUTPUT_WATTS, -1)));
    assertEquals(Optional.empty(), result.watts());
    assertEquals(Optional.empty(), result.outputVolts());
  }

  @Test
  void voltsAndWattsTyped_countByTheVolts() {
    StepResult result = step(usual(), stereo(4, volts(20), of(ReadingId.OUTPUT_WATTS, 90)));
    assertEquals(100, result.watts().orElseThrow().value(), 1e-9);
  }

  /**
   * P = V²/R: 2V/R·u(V), V²/R²·u(R) and √2·u²/R of the second order (JCGM 100:2008, 5.1.2). The
   * lead adds 0 to 20 mΩ: 10 mΩ that are not corrected for, and ±10 mΩ.
   */
  @Test
  void budget_namesEverySourceLargestFirst() {
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01)), List.of(load(4, 2)));
    List<BudgetLine> budget = step(bench, bridged(4, volts(20))).budget();
    double root3 = Math.sqrt(3);
    double u = Math.hypot(0.1, 0.03) / root3;
    assertEquals(
        List.of(
            "load 4.0 ohm",
            "DMM output volts gain",
            "load above its cold ohms, not corrected for",
            "DMM output volts bridged-4 digit",
            "speaker lead",
            "bridged-4 second order"),
        budget.stream().map(BudgetLine::source).toList());
    double[][] rows = {
      {0.08 / root3, -25, 2 / root3},
      {0.1 / root3, 10, 1 / root3},
      {0.01, -25, 0.25},
      {0.03 / root3, 10, 0.3 / root3},
      {0.01 / root3, -25, 0.25 / root3},
      {Math.sqrt(2) * u * u / 4, 1, Math.sqrt(2) * u * u / 4},
    };
    for (int i = 0; i < rows.length; i++) {
      assertEquals(rows[i][0], budget.get(i).inputU(), 1e-9, budget.get(i).source());
      assertEquals(rows[i][1], budget.get(i).sensitivity(), 1e-9, budget.get(i).source());
      assertEquals(rows[i][2], budget.get(i).contribution(), 1e-9, budget.get(i).source());
    }
  }

  @Test
  void budgetOfWattsTyped_goesByTheLoadTheMeterAssumed() {
    StepResult result = wattsTyped(0, 1);
    List<BudgetLine> budget = result.budget();
    // P = W·Rn/R: dP/dW = 4/4.2, dP/dR = −100·4/4.2².
    assertEquals(4 / 4.2, budget.get(0).sensitivity(), 1e-12);
    assertEquals(-400 / (4.2 * 4.2), budget.get(1).sensitivity(), 1e-9);
    double byWatts = 2 / Math.sqrt(3) * 4 / 4.2;
    double byOhms = 0.042 / Math.sqrt(3) * 400 / (4.2 * 4.2);
    assertEquals(byWatts, budget.get(0).contribution(), 1e-9);
    assertEquals(byOhms, budget.get(1).contribution(), 1e-9);
    assertEquals(
        List.of(
            "DMM output watts gain",
            "DMM load ohms gain",
            "heat in load 4 Ω, ppm/K not known",
            "DMM output watts bridged-4 as typed",
            "contact at the load ohms, bridged-4"),
        budget.stream().map(BudgetLine::source).toList());
  }

  @Test
  void bandOfAMeter_isSaidOfOutputsAlone() {
    Bench bench =
        bench(
            List.of(
                banded(ReadingId.OUTPUT_VOLTS),
                banded(ReadingId.OUTPUT_WATTS),
                banded(ReadingId.SUPPLY_VOLTS)),
            List.of(load(4, 1)));
    String said =
        "DMM is specified from 45 Hz to 1 kHz and the tone is 40 Hz: its accuracy there is"
            + " unknown";
    for (ReadingId id : List.of(ReadingId.OUTPUT_VOLTS, ReadingId.OUTPUT_WATTS)) {
      List<Remark> remarks = step(bench, stereo(4, of(id, 20))).remarks();
      assertTrue(remarks.contains(new Remark("meter-band", said)), remarks.toString());
    }
    assertFalse(
        says(step(bench, stereo(4, of(ReadingId.SUPPLY_VOLTS, 14))).remarks(), "meter-band"));
  }

  @Test
  void otherChannelOfTheSameMeter_sharesItsGainAndHasItsOwnDigits() {
    Quantity other =
        ResultComputation.reading(usual(), 40, "stereo-4", of(ReadingId.OTHER_OUTPUT_VOLTS, 20));
    assertEquals(
        Set.of("DMM output volts gain", "DMM output volts (other channel volts) stereo-4 digit"),
        other.contributions().keySet());
  }

  @Test
  void meterWithoutAResolution_countsTheDigitsTyped() {
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0, 3, 0)), List.of(load(4, 1)));
    TakenReading coarse = new TakenReading(ReadingId.OUTPUT_VOLTS, 20, 0.1);
    assertEquals(
        0.3 / Math.sqrt(3), step(bench, stereo(4, coarse)).outputVolts().orElseThrow().u(), 1e-12);
  }

  private static Meter banded(ReadingId id) {
    return new Meter("DMM", id, 0.5, 3, 0.01, Optional.of(new Meter.Band(45, 1000)));
  }

  @Test
  void taken_refusesNumbersThatAreNone() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new TakenReading(ReadingId.OUTPUT_VOLTS, Double.NaN, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TakenReading(ReadingId.OUTPUT_VOLTS, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new LimitPair(10, 0));
    assertThrows(IllegalArgumentException.class, () -> stereo(Double.NaN, volts(1)));
  }

  @Test
  void walk_refusesTwoStepsOfOneId() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () -> Readings.walk(usual(), stereo(4, volts(20)), stereo(4, volts(20))));
    assertEquals("two steps have the same id", thrown.getMessage());
  }
}
