package loadwalk.plan;

import static loadwalk.plan.PlanExample.sequence;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.forecast.Verdict;
import loadwalk.plan.PlanExample.Told;
import loadwalk.plan.wiring.WiringSummary;
import loadwalk.sequence.Measure;
import loadwalk.sequence.Note;
import loadwalk.sequence.OpenLoad;
import loadwalk.sequence.Sequence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan says of its steps together. */
class BenchPlanTest {
  private static final Measure STEREO_4 = new Measure(Mode.STEREO, 4, false);
  private static final Measure BRIDGED_4 = new Measure(Mode.BRIDGED, 4, false);
  private static final Measure STEREO_2 = new Measure(Mode.STEREO, 2, false);
  private static final Amplifier AMPLIFIER = BareAmplifier.rated();

  private static BenchPlan plan(Sequence sequence, Function<Target, Told> told) {
    return PlanExample.plan(sequence, AMPLIFIER, PlanExample.BENCH, told);
  }

  /**
   * A step is the same as an earlier one only if nothing that its reader acts on differs: 700 W are
   * too much for the load resistors, though volts and amps are foretold alike.
   */
  @Test
  void step_isTheSameOnlyIfNothingDiffers() {
    Told light = Told.amps(3, 4, 5).watts(10);
    Told lightToo = Told.amps(3, 4, 5).watts(11);
    Told heavy = Told.amps(30, 40, 81).watts(10);
    Told hot = Told.amps(3, 4, 5).watts(700);
    BenchPlan plan =
        plan(
            sequence(
                STEREO_4,
                STEREO_2,
                BRIDGED_4,
                new OpenLoad(),
                STEREO_4,
                STEREO_4,
                STEREO_4,
                STEREO_4),
            target ->
                switch (target.stepId()) {
                  case "stereo-4#3" -> heavy;
                  case "stereo-4#4" -> lightToo;
                  case "stereo-4#5" -> hot;
                  default -> light;
                });
    assertEquals(
        List.of(
            "stereo-4 new",
            "stereo-2 new",
            "bridged-4 new",
            "open-load new",
            "stereo-4#2 as stereo-4",
            "stereo-4#3 new",
            "stereo-4#4 as stereo-4",
            "stereo-4#5 new"),
        plan.steps().stream()
            .map(
                step ->
                    step.target().stepId()
                        + plan.sameBefore(step)
                            .map(same -> " as " + same.target().stepId())
                            .orElse(" new"))
            .toList());
  }

  /** What an earlier step told and this one does not is not told of this one. */
  @Test
  void step_isNotTheSameAsOneOfAGraverVerdict() {
    BenchPlan plan =
        plan(
            sequence(STEREO_4, STEREO_4),
            target -> Told.amps(3, 4, 5).watts(target.stepId().equals("stereo-4") ? 700 : 10));
    assertEquals(Verdict.HEED, plan.steps().get(0).forecast().verdict());
    assertEquals(Optional.empty(), plan.sameBefore(plan.steps().get(1)));
  }

  /**
   * Before fuses of 60 A, which bear 75 A for a reading: of 90 A at worst and half of it as likely,
   * 45 · 2^(1.645/1.960) = 80.5 A are passed by 5 %, with no ammeter entered, so halt; of 70 A it
   * is 62.6 A, so heed.
   */
  @ParameterizedTest
  @CsvSource({"5 90 5, HALT", "90 5 5, HALT", "70 90 5, HALT", "5 5 70, HEED", "5 5 5, CLEAR"})
  void verdict_isTheGravestOfAllSteps(String worstAmps, Verdict verdict) {
    String[] amps = worstAmps.split(" ");
    Amplifier amplifier =
        BareAmplifier.limited(OptionalDouble.of(2), OptionalDouble.of(4), List.of(30.0, 30.0));
    int[] asked = {0};
    BenchPlan plan =
        PlanExample.plan(
            sequence(STEREO_4, STEREO_4, STEREO_4),
            amplifier,
            PlanExample.BENCH,
            any -> Told.worstAmps(Double.parseDouble(amps[asked[0]++])).watts(10));
    assertEquals(verdict, plan.verdict());
  }

  /** One wiring for each load, drawn for the step that heats it most. */
  @Test
  void wirings_areOneForEachLoad_atItsWorstWatts() {
    BenchPlan plan =
        plan(
            sequence(STEREO_4, BRIDGED_4, STEREO_4, STEREO_4),
            target ->
                switch (target.stepId()) {
                  case "stereo-4" -> Told.worstAmps(20).watts(60);
                  case "stereo-4#2" -> Told.worstAmps(20).watts(144);
                  case "stereo-4#3" -> Told.worstAmps(20).watts(100);
                  default -> Told.worstAmps(20).watts(200);
                });
    List<WiringSummary> wirings = plan.wirings(PlanExample.TABLES);
    assertEquals(
        List.of("stereo 4 Ω: 144.0 W", "bridged 4 Ω: 200.0 W"),
        wirings.stream().map(w -> w.title() + ": " + w.watts() + " W").toList());
  }

  @Test
  void everyStep_isAskedInItsOrder_andFoundAgainByItsId() {
    BenchPlan plan =
        plan(sequence(STEREO_4, new Note("Look."), BRIDGED_4), any -> Told.worstAmps(20));
    assertEquals(
        List.of("stereo-4", "note", "bridged-4"),
        plan.asked().stream().map(BenchPlan.Asked::stepId).toList());
    assertEquals(
        "Connect one 4 Ω load across the bridge; both terminals are live. Raise the 1 kHz tone to 1"
            + " % THD, then read. Read volts and, amplifier off, ohms at its terminals, no grounded"
            + " clip: 20 mΩ of lead is 2 % at 1 Ω.",
        plan.instruction(plan.steps().get(1)));
  }
}
