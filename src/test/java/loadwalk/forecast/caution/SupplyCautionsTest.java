package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Supply;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/** How the supplies are set, what the leads lose, and whether the fuse protects them. */
class SupplyCautionsTest {
  private final BriefedBench bench = new BriefedBench();

  @Test
  void setting_aboveWhatIsAsked_isHaltFromFifteenPercent() {
    bench.asked = 10;
    bench.supplies = List.of(new Supply(11.5, 100));
    assertNone("supply-volts", bench.amps(1, 2));
    bench.supplies = List.of(new Supply(12, 100));
    Caution halt = told("supply-volts", bench);
    assertEquals(Verdict.HALT, halt.gravity());
    assertEquals(
        "A supply is set to 12 V; the sequence asks for 10 V. Turn it down first.", halt.text());
    assertEquals(1.2, halt.severity(), 1e-12);
    bench.asked = 0;
    assertNone("supply-volts", bench);
  }

  @Test
  void settings_thatDiffer_loadTheHigherAlone() {
    bench.asked = 100;
    bench.supplies = List.of(new Supply(100, 50), new Supply(98, 50));
    assertNone("supply-volts", bench.amps(1, 2));
    bench.supplies = List.of(new Supply(100, 50), new Supply(97, 50));
    Caution heed = told("supply-volts", bench);
    assertEquals(
        "Paralleled supplies are set to 97 V and 100 V: the higher one carries the load alone until"
            + " it limits. Set them alike.",
        heed.text());
    assertEquals(Verdict.HEED, heed.gravity());
    assertEquals(100.0 / 97, heed.number().orElseThrow(), 1e-12);
  }

  @Test
  void setting_belowWhatIsAsked_isToldAndHoldsNothing() {
    bench.asked = 100;
    bench.leads = List.of();
    bench.supplies = List.of(new Supply(95, 50));
    assertNone("supply-volts", bench.amps(1, 2));
    bench.supplies = List.of(new Supply(94, 50));
    Caution low = told("supply-volts", bench);
    assertEquals(
        "The supply is set to 94 V; the sequence asks for 100 V. Turn it up, or its ratings do not"
            + " apply.",
        low.text());
    assertEquals(Verdict.CLEAR, low.gravity());
    assertEquals(6, low.number().orElseThrow(), 1e-12, "volts missing");
  }

  /** 20 m of AWG 4 have 18.2 mΩ: at 60 A 1.09 V of 13.8 V are lost. */
  @Test
  void setting_lessTheDrop_isWhatTheAmplifierGets() {
    bench.leads = List.of(BriefedBench.run("plus", 10, 1), BriefedBench.run("minus", 10, 1));
    Caution low = told("supply-volts", bench.amps(60, 61));
    assertEquals(
        "The supply is set to 13.8 V and the leads lose 1.09 V: the terminals get about 12.7 V, not"
            + " 13.8 V. Correct the setting or use heavier leads.",
        low.text());
    assertEquals(1.09, low.number().orElseThrow(), 0.005);
    assertNone("supply-volts", bench.amps(30, 31));
  }

  /** 10 m of AWG 4 have 9.11 mΩ: 3 % of 13.8 V are lost at 45.4 A. */
  @Test
  void drop_isToldWithTheHeatItMakes_andHoldsNothing() {
    bench.leads = List.of(BriefedBench.run("plus", 5, 1), BriefedBench.run("minus", 5, 1));
    assertNone("lead-drop", bench.amps(45, 60));
    Caution drop = told("lead-drop", bench.amps(50, 60));
    assertEquals(
        "Of 13.8 V, the leads lose about 0.456 V: about 22.8 W turn into heat. Use shorter or"
            + " heavier leads.",
        drop.text());
    assertEquals(Verdict.CLEAR, drop.gravity());
    assertEquals(0.456, drop.number().orElseThrow(), 1e-3);
  }

  /** 100 m of AWG 4 have 91.1 mΩ: 30 % of 13.8 V are lost at 45.4 A. */
  @Test
  void bench_thatLosesNearlyAThirdInItsLeads_cannotFeedTheStep() {
    bench.leads = List.of(BriefedBench.run("plus", 50, 1), BriefedBench.run("minus", 50, 1));
    assertEquals(Verdict.CLEAR, told("lead-drop", bench.amps(45, 46)).gravity());
    Caution halt = told("lead-drop", bench.amps(60, 62));
    assertEquals(
        "The bench cannot feed this step: at 60 A the leads alone would lose 5.47 V of 13.8 V. Use"
            + " shorter or heavier leads.",
        halt.text());
    assertEquals(Verdict.HALT, halt.gravity());
    assertNone("supply-volts", bench);
  }

  /** ABYC E-11 (from memory): a fuse at most 150 % of what the conductor carries. */
  @Test
  void fuse_thatDoesNotProtectTheThinnestRun_isTold() {
    bench.leads = List.of(BriefedBench.run("plus", 0.5, 2), BriefedBench.run("minus", 0.5, 1));
    bench.fuse = OptionalDouble.of(240);
    assertNone("bench-fuse", bench.amps(1, 2));
    bench.fuse = OptionalDouble.of(480);
    Caution burns = told("bench-fuse", bench);
    assertEquals(
        "The bench fuse of 480 A does not protect the run \"minus\", good for 160 A: in a short"
            + " the lead burns first. Fit a smaller fuse or a heavier lead.",
        burns.text());
    assertEquals(Verdict.HEED, burns.gravity());
    assertEquals("minus", burns.about());
    assertTrue(bench.find("bench-fuse", IDLE).isEmpty());
  }

  private static Caution told(String code, BriefedBench bench) {
    Optional<Caution> found = bench.find(code, STEREO_4);
    return found.orElseThrow(() -> new AssertionError(code + " is missing"));
  }

  private static void assertNone(String code, BriefedBench bench) {
    assertEquals(Optional.empty(), bench.find(code, STEREO_4));
  }
}
