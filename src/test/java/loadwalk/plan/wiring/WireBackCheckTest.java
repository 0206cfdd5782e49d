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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** Terminals that read 0.3 V above the supply are swapped by a good meter, not by a rough one. */
  @Test
  void terminalsAboveTheSupply_withinTheMeter_areNotSwapped() {
    Meter rough = new Meter("rough", ReadingId.SUPPLY_VOLTS, 0, 5, 0.1, Optional.empty());
    Bench bench = bench(List.of(rough));
    Wire wire = new Wire(Tables.stock());
    assertEquals(
        WireBackCheck.State.AGREES, WireBackCheck.of(bench, wire, 13.5, 13.8, 100).state());
    assertEquals(
        WireBackCheck.State.CANNOT_TELL, WireBackCheck.of(bench, wire, 13.5, 14.6, 100).state());
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

  /**
   * The edges, with 10 mΩ of copper and no doubt of the meters. By hand: a joint is blamed above
   * 1.5 times the copper and from 10 W; the leads are doubted below half of it; 1 A is enough to
   * tell.
   */
  @ParameterizedTest
  @CsvSource({
    // amps, mΩ measured, what is said
    "100, 10, AGREES",
    "100, 15.1, BAD_JOINT",
    "100, 14.9, AGREES",
    "44, 15.1, AGREES",
    "45, 15.1, BAD_JOINT",
    "30, 21.2, BAD_JOINT",
    "30, 21, AGREES",
    "100, 4.9, LESS_THAN_ENTERED",
    "100, 5.1, AGREES",
    "1, 4.9, LESS_THAN_ENTERED",
    "0.999, 4.9, CANNOT_TELL",
    "100, 0, LESS_THAN_ENTERED",
    "100, -0.1, CANNOT_TELL"
  })
  void lossAgainstCopper(double amps, double milliohms, WireBackCheck.State state) {
    assertEquals(state, tenMilliohms(List.of(), amps, milliohms).state());
  }

  /**
   * Two readings of one meter may each be off by its accuracy: at 0.2 V each, what differs by less
   * than 0.4 V from the copper's 1 V tells nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 13.9, AGREES", "100, 14.1, AGREES", "100, 16.1, BAD_JOINT", "50, 17.9, AGREES",
    "50, 18.1, BAD_JOINT", "60, 4, AGREES", "100, 4, LESS_THAN_ENTERED",
        "100, -3.9, LESS_THAN_ENTERED",
    "100, -4.1, CANNOT_TELL"
  })
  void lossWithinTheMeters_tellsNothing(double amps, double milliohms, WireBackCheck.State state) {
    Meter rough = new Meter("rough", ReadingId.SUPPLY_VOLTS, 0, 2, 0.1, Optional.empty());
    assertEquals(state, tenMilliohms(List.of(rough), amps, milliohms).state());
  }

  /** The accuracy of both readings counts: 2 % of 13.8 V and of 12.275 V are 0.5215 V. */
  @ParameterizedTest
  @CsvSource({"1.52, AGREES", "1.53, BAD_JOINT"})
  void lossWithinBothReadings_tellsNothing(double lostVolts, WireBackCheck.State state) {
    Meter meter = new Meter("meter", ReadingId.SUPPLY_VOLTS, 2, 0, 0, Optional.empty());
    assertEquals(state, tenMilliohms(List.of(meter), 100, 10 * lostVolts).state());
  }

  @Test
  void everyOutcome_isSaidInASentence() {
    assertEquals(
        "The leads measure 10 mΩ; their copper alone is 10 mΩ. They lose what they should.",
        tenMilliohms(List.of(), 100, 10).text());
    assertEquals(
        "The leads measure 16 mΩ; their copper alone is 10 mΩ. A joint wastes 60 W. With the output"
            + " down, feel for it, then tighten or clean it.",
        tenMilliohms(List.of(), 100, 16).text());
    assertEquals(
        "The leads measure 4 mΩ; their copper alone is 10 mΩ. These are not the leads entered, or"
            + " the volts were taken elsewhere.",
        tenMilliohms(List.of(), 100, 4).text());
    assertEquals(
        "At 0.5 A the leads lose too little to measure. Compare under load.",
        tenMilliohms(List.of(), 0.5, 10).text());
    assertEquals(
        "The terminals read 0.3 V more than the supply. The readings are swapped, or were not taken"
            + " at the same time.",
        check(13.5, 13.8, 100).text());
    assertEquals(
        "The leads measure 5 mΩ. The bench lists no leads to compare with.",
        WireBackCheck.of(Bench.unknown(), new Wire(Tables.stock()), 13.8, 13.3, 100).text());
  }

  private static WireBackCheck tenMilliohms(List<Meter> meters, double amps, double milliohms) {
    return WireBackCheck.of(
        tenMilliohms(meters), new Wire(Tables.stock()), 13.8, 13.8 - amps * milliohms / 1000, amps);
  }

  /** 2.729758 m of AWG 10 at 50 °C: 2.729758 · 3.277037 mΩ · 284.5/254.5 = 10 mΩ. */
  private static Bench tenMilliohms(List<Meter> meters) {
    return new Bench(
        "b",
        List.of(),
        List.of(new Lead("plus", new Lead.Awg(10), 2.729758, 1)),
        OptionalDouble.empty(),
        List.of(),
        meters,
        0.9);
  }

  @Test
  void hugeCurrent_isComputedNotCrashed() {
    assertEquals(WireBackCheck.State.LESS_THAN_ENTERED, check(13.8, 13.0, 1e9).state());
  }
}
