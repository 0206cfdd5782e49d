package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_1;
import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/** What the supply current asks of supplies, fuses and leads, at the edges of each rule. */
class CurrentCautionsTest {
  private static final Target WARM_UP =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);

  private final BriefedBench bench = new BriefedBench();

  @Test
  void supply_atItsEdges_isStillTheLesserWarning() {
    bench.fuse = OptionalDouble.of(400);
    assertNone("supply-amps", bench.amps(60, 72));
    Caution whole = told("supply-amps", bench.amps(60, 90));
    assertEquals(Verdict.HEED, whole.gravity());
    assertEquals(1, whole.severity(), 1e-12);
  }

  @Test
  void supply_notEntered_isSaid_withTheCurrentWhereItIsTold() {
    bench.supplies = List.of();
    assertEquals(
        "The step draws about 2 A, at worst 3 A. No supply is entered: check its rating yourself.",
        told("supply-amps", bench.amps(2, 3)).text());
    bench.readings.clear();
    assertEquals(
        "No supply is entered: check its rating yourself.", told("supply-amps", bench).text());
    assertTrue(bench.find("supply-amps", IDLE).isEmpty());
  }

  @Test
  void supplySetting_aboveWhatIsAsked_isHaltFromFifteenPercent() {
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
  void supplySettings_thatDiffer_loadTheHigherAlone() {
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
    assertEquals(100.0 / 97, heed.severity(), 1e-12);
  }

  @Test
  void supplySetting_belowWhatIsAsked_isTold() {
    bench.asked = 100;
    bench.leads = List.of();
    bench.supplies = List.of(new Supply(95, 50));
    assertNone("supply-volts", bench.amps(1, 2));
    bench.supplies = List.of(new Supply(94, 50));
    assertEquals(100.0 / 94, told("supply-volts", bench).severity(), 1e-12);
  }

  /** 20 m of AWG 4 have 18.2 mΩ: at 60 A 1.09 V of 13.8 V are lost. */
  @Test
  void supplySetting_lessTheDrop_isWhatTheAmplifierGets() {
    bench.leads = List.of(BriefedBench.run("plus", 10, 1), BriefedBench.run("minus", 10, 1));
    Caution heed = told("supply-volts", bench.amps(60, 61));
    assertEquals(
        "The supply is set to 13.8 V and the leads lose 1.09 V: the terminals get about 12.7 V, not"
            + " 13.8 V. Correct the setting or use heavier leads.",
        heed.text());
    assertEquals(13.8 / 12.71, heed.severity(), 1e-3);
    assertNone("supply-volts", bench.amps(30, 31));
    double lost = told("supply-volts", bench.amps(3000, 3001)).severity();
    assertEquals(13_800, lost, 1e-6, "nothing is left");
  }

  @Test
  void fuses_ofWhichNoneIsEntered_areTold_unlessNothingIsDriven() {
    bench.ownFuses = List.of();
    bench.fuse = OptionalDouble.empty();
    List<Caution> told = bench.amps(1, 2).ask(BRIDGED_1).cautions();
    List<Caution> fuses = told.stream().filter(c -> c.code().endsWith("fuse")).toList();
    assertEquals(1, fuses.size(), told.toString());
    assertTrue(fuses.get(0).text().contains("neither the amplifier's nor one at the source"));
    assertTrue(bench.find("bench-fuse", IDLE).isEmpty());
  }

  @Test
  void fuseMissing_besideAnother_isToldOnAHeavyStepOnly() {
    bench.ownFuses = List.of();
    assertTrue(
        bench.amps(1, 2).find("amplifier-fuse", BRIDGED_1).orElseThrow().text().contains("first"));
    assertNone("amplifier-fuse", bench);
    bench.ownFuses = List.of(200.0);
    bench.fuse = OptionalDouble.empty();
    assertTrue(bench.find("bench-fuse", BRIDGED_1).orElseThrow().text().contains("source"));
    assertNone("bench-fuse", bench);
  }

  /** A fuse derated by 25 % for continuous use. */
  @Test
  void fuse_belowItsRating_needNotOpen() {
    assertNone("bench-fuse", bench.amps(70, 75));
    Caution heed = told("bench-fuse", bench.amps(70, 80));
    assertEquals(
        "The bench fuse of 100 A carries about 70 A, at worst 80 A. It is good for 75 A continuous"
            + " and may not blow in time to protect anything.",
        heed.text());
    assertEquals(0.8, heed.severity(), 1e-12);
  }

  /** Type E opens from 60 s at 135 % (datasheet as transcribed): a reading takes a minute. */
  @Test
  void fuse_thatBearsAReadingsMinute_isNoHalt() {
    assertEquals(Verdict.HEED, told("bench-fuse", bench.amps(60, 135)).gravity());
    assertEquals(Verdict.HALT, told("bench-fuse", bench.amps(60, 137)).gravity());
    Caution atRating = bench.amps(60, 100).find("bench-fuse", WARM_UP).orElseThrow();
    assertEquals(Verdict.HEED, atRating.gravity());
  }

  @Test
  void leads_notEntered_areToldWhereTheAmplifierIsDriven() {
    bench.leads = List.of();
    assertEquals(Verdict.CLEAR, told("lead-drop", bench.amps(1, 2)).gravity());
    assertEquals(Verdict.HEED, bench.find("lead-drop", BRIDGED_1).orElseThrow().gravity(), "heavy");
    assertTrue(bench.find("lead-drop", IDLE).isEmpty());
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
    assertEquals(2, burns.severity(), 1e-12);
    assertTrue(bench.find("bench-fuse", IDLE).isEmpty());
  }

  /** 10 m of AWG 4 have 9.11 mΩ: 3 % of 13.8 V are lost at 45.4 A. */
  @Test
  void drop_isToldWithTheHeatItMakes() {
    bench.leads = List.of(BriefedBench.run("plus", 5, 1), BriefedBench.run("minus", 5, 1));
    Caution drop = told("lead-drop", bench.amps(50, 60));
    assertEquals(
        "Of 13.8 V, the leads lose about 0.456 V, at worst 0.547 V; up to 32.8 W turn into heat."
            + " Use shorter or heavier leads.",
        drop.text());
    assertEquals(0.547 / 0.414, drop.severity(), 1e-3);
  }

  @Test
  void run_nearWhatItMayCarry_isToldWithItsSize() {
    bench.supplies = List.of(new Supply(13.8, 1000));
    assertNone("lead-amps", bench.amps(100, 128));
    Caution single = told("lead-amps", bench.amps(160, 168));
    assertEquals(Verdict.HEED, single.gravity(), "the middle is what it may carry");
    assertEquals(
        "The run \"plus\" (AWG 4) is good for 160 A continuous and carries about 160 A, at worst"
            + " 168 A. Use a heavier lead.",
        bench.ask(STEREO_4).cautions().stream()
            .filter(c -> c.text().contains("\"plus\""))
            .findFirst()
            .orElseThrow()
            .text());
    assertEquals(1.05, single.severity(), 1e-12);
    bench.leads = List.of(BriefedBench.run("both", 0.5, 2));
    assertTrue(told("lead-amps", bench.amps(300, 340)).text().contains("(2 × AWG 4)"));
  }

  @Test
  void stresses_nameWhatIsStressed() {
    List<String> names = bench.amps(1, 2).stresses(STEREO_4).stream().map(Stress::what).toList();
    assertEquals(
        List.of("supplies", "bench fuse", "lead \"plus\"", "lead \"minus\"", "amplifier's fuses"),
        names);
  }

  private static Caution told(String code, BriefedBench bench) {
    Optional<Caution> found = bench.find(code, STEREO_4);
    return found.orElseThrow(() -> new AssertionError(code + " is missing"));
  }

  private static void assertNone(String code, BriefedBench bench) {
    assertEquals(Optional.empty(), bench.find(code, STEREO_4));
  }
}
