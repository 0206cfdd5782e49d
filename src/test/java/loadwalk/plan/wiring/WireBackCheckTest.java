package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import org.junit.jupiter.api.Test;

/** Checks a lead run against what it should lose, by Ohm's law by hand. */
class WireBackCheckTest {
  /** 4 m of AWG 4 at 50 °C: 4 · 0.815153 mΩ · 284.5/254.5 = 3.64495 mΩ. */
  private static final double COPPER_OHMS = 0.00364495;

  private static final Bench BENCH = bench(List.of());

  private static Bench bench(List<Meter> meters) {
    return new Bench(
        "North bench",
        List.of(),
        List.of(new Lead("plus", new Lead.Awg(4), 2, 1), new Lead("minus", new Lead.Awg(4), 2, 1)),
        OptionalDouble.empty(),
        List.of(),
        meters,
        0.9);
  }

  private static WireBackCheck check(double source, double terminal, double amps) {
    return WireBackCheck.of(BENCH, new Wire(Tables.stock()), source, terminal, amps);
  }

  @Test
  void soundRun_agrees() {
    WireBackCheck check = check(13.8, 13.8 - 100 * COPPER_OHMS, 100);
    assertEquals(WireBackCheck.State.AGREES, check.state());
    assertTrue(
        check.text().contains("measure 3.64 mΩ; their copper alone is 3.64 mΩ"), check.text());
  }

  /** 5 mΩ more at 100 A waste 50 W. */
  @Test
  void badJoint_isToldWithItsWatts() {
    WireBackCheck check = check(13.8, 13.8 - 100 * (COPPER_OHMS + 0.005), 100);
    assertEquals(WireBackCheck.State.BAD_JOINT, check.state());
    assertTrue(check.text().contains("A joint wastes 50 W"), check.text());
    assertTrue(
        check.text().contains("measure 8.64 mΩ; their copper alone is 3.64 mΩ"), check.text());
  }

  @Test
  void smallExcess_isNoJoint() {
    assertEquals(
        WireBackCheck.State.AGREES, check(13.8, 13.8 - 20 * (COPPER_OHMS + 0.005), 20).state());
  }

  /** A meter of ±0.5 V cannot tell half a volt. */
  @Test
  void excessWithinTheMeter_isNoJoint() {
    Meter rough = new Meter("rough", ReadingId.SUPPLY_VOLTS, 0, 5, 0.1, Optional.empty());
    WireBackCheck check =
        WireBackCheck.of(bench(List.of(rough)), new Wire(Tables.stock()), 13.8, 12.9355, 100);
    assertEquals(WireBackCheck.State.AGREES, check.state());
  }

  @Test
  void farTooLittleLost_saysSo() {
    assertEquals(
        WireBackCheck.State.LESS_THAN_ENTERED, check(13.8, 13.8 - 100 * 0.001, 100).state());
  }

  @Test
  void impossibleReadings_cannotTell() {
    assertTrue(check(13.5, 13.8, 100).text().contains("0.3 V more than the supply"));
    double[][] absurd = {
      {13.8, 13.7, 0},
      {13.8, 13.7, -5},
      {Double.NaN, 13.7, 50},
      {13.8, 13.7, Double.NaN},
      {13.8, 13.7, Double.POSITIVE_INFINITY},
      {13.5, 13.8, 100}
    };
    for (double[] a : absurd) {
      assertEquals(WireBackCheck.State.CANNOT_TELL, check(a[0], a[1], a[2]).state());
    }
    WireBackCheck none =
        WireBackCheck.of(Bench.unknown(), new Wire(Tables.stock()), 13.8, 13.3, 100);
    assertEquals(WireBackCheck.State.CANNOT_TELL, none.state());
    assertTrue(none.text().contains("5 mΩ"), none.text());
  }

  @Test
  void hugeCurrent_isComputedNotCrashed() {
    assertEquals(WireBackCheck.State.LESS_THAN_ENTERED, check(13.8, 13.0, 1e9).state());
  }
}
