package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/** What is said of a supply, a fuse and a lead that may give, with an ammeter and without. */
class CurrentCautionsTest {
  private final BriefedBench bench = new BriefedBench();

  private Caution told(String code) {
    return bench.find(code, STEREO_4).orElseThrow(() -> new AssertionError(code + " is missing"));
  }

  private void assertTold(String code, Verdict gravity, String text) {
    Caution told = told(code);
    assertEquals(text, told.text());
    assertEquals(gravity, told.gravity());
  }

  private void watch() {
    bench.meters = List.of(new Meter("clamp", ReadingId.SUPPLY_AMPS, 1, 0, 0.1, Optional.empty()));
  }

  @Test
  void supply_thatBearsTheWorst_isNoCaution() {
    bench.amps(60, 90);
    assertEquals(List.of(), bench.ask(STEREO_4).cautions());
  }

  @Test
  void supply_thatMayLimit_isAHeedWithTheCurrentToStopAt() {
    bench.amps(60, 91);
    assertTold(
        "supply-amps",
        Verdict.HEED,
        "The step draws about 60 A, at worst 91 A; the supplies bear 90 A. Read the supply current"
            + " while you raise the output and stop at 90 A.");
    assertEquals(91.0 / 90, told("supply-amps").severity(), 1e-12);
    assertEquals(60, told("supply-amps").number().orElseThrow());
    watch();
    assertTold(
        "supply-amps",
        Verdict.HEED,
        "The step draws about 60 A, at worst 91 A; the supplies bear 90 A. Raise the output slowly"
            + " and stop at 90 A.");
  }

  /** 70 A times (100/70) to the power of 1.645/1.960 is 94 A: one chance in twenty. */
  @Test
  void supply_thatMayLimit_andNobodyReadsTheCurrent_isAHalt() {
    bench.amps(70, 110);
    assertTold(
        "supply-amps",
        Verdict.HALT,
        "The step draws about 70 A, at worst 110 A; the supplies bear 90 A. No ammeter is entered"
            + " that shows it in time. Enter one, or use a lighter load or a bigger supply.");
    watch();
    assertEquals(Verdict.HEED, told("supply-amps").gravity());
  }

  @Test
  void amperesReadBefore_showThatThereIsAnAmmeter() {
    bench.amps(70, 110);
    Observation read =
        new Observation(
            Target.loaded("before", STEREO_4.mode(), 4), Map.of(ReadingId.SUPPLY_AMPS, 20.0));
    Evidence evidence = bench.evidence(read);
    assertEquals(
        Verdict.HEED,
        bench.cautions.of(evidence, STEREO_4, bench.readings, bench.demand).verdict());
  }

  @Test
  void supply_thatLikelyLimits_isAHalt_watchedOrNot() {
    watch();
    bench.amps(101, 105);
    assertTold(
        "supply-amps",
        Verdict.HALT,
        "The step draws about 101 A, at worst 105 A; the supplies bear 90 A. Use a bigger supply or"
            + " a lighter load.");
  }

  /** A blade of 40 A at 135 % opens from 0.75 s to 10 min (ISO 8820-3 as in the table). */
  @Test
  void fuse_thatLikelyOpens_isAHaltWithItsTime() {
    bench.fuse = OptionalDouble.of(40);
    watch();
    bench.amps(51, 54);
    assertTold(
        "bench-fuse",
        Verdict.HALT,
        "The step draws about 51 A, at worst 54 A; the bench fuse carries 40 A. Time to blow at"
            + " worst: 0.75 s to 10 min. Use a lighter load or less output.");
    bench.fuse = OptionalDouble.of(100);
    bench.ownFuses = List.of(20.0, 20.0);
    assertTrue(
        told("amplifier-fuse").text().contains("the amplifier's fuses carry 40 A. Time to blow"));
  }

  /** The stop is what a dial shows, rounded down: 110 % of 40 A. */
  @Test
  void fuse_thatMayOpen_isAHeedThatStopsWhereItNeverOpens() {
    bench.fuse = OptionalDouble.of(40);
    bench.amps(30, 42);
    assertTold(
        "bench-fuse",
        Verdict.HEED,
        "The step draws about 30 A, at worst 42 A; the bench fuse carries 40 A. Read the supply"
            + " current while you raise the output and stop at 44 A.");
  }

  @Test
  void fuse_thatMayOpen_andNobodyReadsTheCurrent_isAHalt() {
    bench.fuse = OptionalDouble.of(40);
    bench.amps(48, 51);
    assertTold(
        "bench-fuse",
        Verdict.HALT,
        "The step draws about 48 A, at worst 51 A; the bench fuse carries 40 A. No ammeter is"
            + " entered that shows it in time. Enter one, or use a lighter load.");
  }

  @Test
  void leads_areToldApart_eachWithWhatItCarries() {
    bench.supplies = List.of(new Supply(13.8, 1000));
    bench.fuse = OptionalDouble.of(220);
    bench.leads = List.of(BriefedBench.run("plus", 0.5, 2), BriefedBench.run("minus", 0.5, 1));
    bench.amps(140, 168);
    assertTold(
        "lead-amps",
        Verdict.HEED,
        "The step draws about 140 A, at worst 168 A; the lead \"minus\" carries 160 A. Read the"
            + " supply current while you raise the output and stop at 160 A.");
    assertEquals("lead \"minus\"", told("lead-amps").about());
    watch();
    bench.amps(201, 210);
    assertTold(
        "lead-amps",
        Verdict.HALT,
        "The step draws about 201 A, at worst 210 A; the lead \"minus\" carries 160 A. Use a"
            + " heavier lead or a lighter load.");
  }
}
