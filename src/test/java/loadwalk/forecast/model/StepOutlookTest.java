package loadwalk.forecast.model;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_1;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;

class StepOutlookTest {
  private static final Target HALF_POWER =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 2, 0.5);

  /** The worked amplifier at 4 and 2 Ω; at 1 Ω it would ask some 50 A. */
  private final WalkModel ample = Amplifiers.measured(Bench.unknown());

  private final WalkModel scarce = Amplifiers.measured(supplies(40));

  @Test
  void bridgedStep_isOfOneChannel() {
    StepOutlook bridged = ample.outlook(BRIDGED_4);
    assertEquals(2, bridged.channelOhms());
    assertEquals(ample.outlook(STEREO_2).logVolts().mean(), bridged.logVolts().mean(), 0.003);
    double stereo = ample.outlook(STEREO_2).logVolts().deviation();
    assertTrue(bridged.logVolts().deviation() > stereo, "bridged readings share an offset");
  }

  /** The supply volts reckoned with are those at the current that the step asks. */
  @Test
  void supplyVolts_areThoseAtTheCurrentAsked() {
    StepOutlook outlook = ample.outlook(STEREO_1);
    double volts = Math.exp(outlook.logVolts().mean());
    double efficiency = Math.exp(outlook.efficiency().mean(outlook.logVolts().mean()));
    double amps = ample.idle().amps() + 2 * volts * volts / (efficiency * outlook.supplyVolts());
    assertEquals(ample.sag().volts(amps), outlook.supplyVolts(), 0.005);
    assertTrue(outlook.supplyVolts() < ample.sag().volts(10));
  }

  /** P goes as V²: at half the power the volts are lower by √2, as near as a hand aims. */
  @Test
  void partOfThePower_lowersTheVolts_andTheCurrentLessThanInProportion() {
    StepOutlook whole = ample.outlook(STEREO_2);
    StepOutlook half = ample.outlook(HALF_POWER);
    double rise = 0.5 * Math.log(2);
    assertEquals(whole.logVolts().mean() - rise, half.logVolts().mean(), 0.01);
    assertEquals(Math.hypot(0.15, whole.logVolts().deviation()), half.logVolts().deviation(), 1e-6);
    double lower = whole.asked().logAbove().mean() - half.asked().logAbove().mean();
    assertEquals(rise, lower, 0.01, "class AB: the current goes with the volts");
    double deviation = Math.hypot(0.2, whole.asked().logAbove().deviation());
    assertEquals(deviation, half.asked().logAbove().deviation(), 1e-6);
  }

  @Test
  void suppliesAskedForMoreThanTheirRating_mayGiveWay() {
    StepOutlook free = ample.outlook(STEREO_1);
    StepOutlook tied = scarce.outlook(STEREO_1);
    assertEquals(0, free.asked().overload());
    double logRoom = Math.log(40 - Amplifiers.IDLE_AMPS);
    double beyond = 1 - free.asked().logAbove().cumulative(logRoom);
    assertEquals(0.3 * beyond, tied.asked().overload(), 1e-6);
    assertTrue(beyond > 0.5, "the step asks more than 40 A: " + beyond);
    assertTaken(free, tied, tied.asked().overload(), logRoom);
  }

  /** Where they do, the volts fall by the excess current at most, evenly up to a tenth more. */
  private static void assertTaken(
      StepOutlook free, StepOutlook tied, double overload, double logRoom) {
    Mixture asked = free.asked().logAbove();
    double excess = asked.mean() + 0.8 * asked.deviation() - logRoom;
    assertTrue(excess > 0.03 && excess < 0.6, "" + excess);
    double mean = free.logVolts().mean() - overload * 0.55 * excess;
    assertEquals(mean, tied.logVolts().mean(), 1e-5);
    double strata = 1.1 * 1.1 / 12 * (1 - 1.0 / 16);
    double moved = excess * excess * (strata + 0.01);
    double apart = overload * (1 - overload) * Math.pow(0.55 * excess, 2);
    double before = free.logVolts().deviation();
    double variance = before * before + overload * moved + apart;
    assertEquals(Math.sqrt(variance), tied.logVolts().deviation(), 1e-5);
  }

  @Test
  void excess_beyondWhatKeepsASupplyOn_isBounded() {
    Target heavy = Target.loaded("stereo-0.5", Mode.STEREO, 0.5);
    StepOutlook tied = Amplifiers.measured(supplies(26)).outlook(heavy);
    double mean = ample.outlook(heavy).logVolts().mean();
    double overload = tied.asked().overload();
    // A limit that sets in at once asks no more than 2 Ω did, so the chance stays below 0.3.
    assertEquals(0.28, overload, 0.02);
    assertEquals(mean - overload * 0.55 * 0.6, tied.logVolts().mean(), 1e-5);
  }

  @Test
  void loadsReachedAlready_andSuppliesThatGaveMore_giveNoWay() {
    WalkModel small = Amplifiers.measured(supplies(26));
    assertEquals(0, small.outlook(STEREO_2).asked().overload());
    assertTrue(small.outlook(STEREO_1).asked().overload() > 0.2);
    WalkModel exceeded = Amplifiers.measured(supplies(22));
    assertEquals(0, exceeded.outlook(STEREO_1).asked().overload(), "it gave 27 A already");
  }

  /** Supply volts that stay up tell that the supplies mostly have not given way. */
  @Test
  void supplyVoltsEntered_tellWhetherTheSuppliesGaveWay() {
    StepOutlook before = scarce.outlook(STEREO_1);
    double expected = before.supplyVolts();
    StepOutlook free = StepOutlook.of(ample, STEREO_1, 1, expected);
    StepOutlook up = StepOutlook.of(scarce, STEREO_1, 1, expected);
    double logRoom = Math.log(40 - Amplifiers.IDLE_AMPS);
    double overload = before.asked().overload();
    Mixture asked = before.asked().logAbove();
    double excess = asked.mean() + 0.8 * asked.deviation() - logRoom;
    assertEquals(
        free.logVolts().mean() - 0.4 * overload * 0.55 * excess, up.logVolts().mean(), 1e-4);
    double sagging = expected * 0.93;
    StepOutlook freeLow = StepOutlook.of(ample, STEREO_1, 1, sagging);
    StepOutlook low = StepOutlook.of(scarce, STEREO_1, 1, sagging);
    assertEquals(freeLow.logVolts().mean() - overload * 0.55 * excess, low.logVolts().mean(), 2e-3);
    assertEquals(sagging, low.supplyVolts());
    assertTrue(freeLow.logVolts().mean() < free.logVolts().mean());
  }

  /** Supplies that cannot be asked for too much are as good as endless; near ones are not. */
  @Test
  void overload_isReckonedWhereTheCurrentMayComeNear() {
    double expected = ample.outlook(STEREO_1).supplyVolts();
    Mixture free = StepOutlook.of(ample, STEREO_1, 1, expected).logVolts();
    Mixture rich = StepOutlook.of(measured(2000), STEREO_1, 1, expected).logVolts();
    assertEquals(free.size(), rich.size());
    assertEquals(free.mean(), rich.mean());
    for (double amps : new double[] {60, 80}) {
      double overload = measured(amps).outlook(STEREO_1).asked().overload();
      Mixture near = StepOutlook.of(measured(amps), STEREO_1, 1, expected).logVolts();
      assertTrue(overload < 0.005 / 0.4 || near.mean() < free.mean(), amps + " A: " + overload);
    }
  }

  private static WalkModel measured(double amps) {
    return Amplifiers.measured(supplies(amps));
  }

  /** A density of ln of the amperes typed sums to one, whether the volts are known or not. */
  @Test
  void densityOfTheAmpsTyped_sumsToOne() {
    StepOutlook outlook = ample.outlook(STEREO_1);
    Mixture above = outlook.logAbove(ample, STEREO_1);
    assertEquals(1, sum(amps -> StepOutlook.logAmpsDensity(ample, above, amps)), 1e-3);
    double volts = outlook.logVolts().mean();
    assertEquals(1, sum(amps -> outlook.logAmpsDensity(ample, STEREO_1, volts, amps)), 1e-3);
    StepOutlook half = ample.outlook(HALF_POWER);
    double lower = half.logVolts().mean();
    assertEquals(1, sum(amps -> half.logAmpsDensity(ample, HALF_POWER, lower, amps)), 1e-3);
  }

  /** Asked anew with the supply volts entered, the current is much the same. */
  @Test
  void logAbove_withTheSupplyEntered_isToldFromItsVolts() {
    StepOutlook before = ample.outlook(STEREO_1);
    StepOutlook entered = StepOutlook.of(ample, STEREO_1, 1, before.supplyVolts());
    Mixture told = entered.logAbove(ample, STEREO_1);
    assertEquals(before.asked().logAbove().mean(), told.mean(), 1e-3);
    assertEquals(before.asked().logAbove().deviation(), told.deviation(), 1e-2);
  }

  private static double sum(DoubleUnaryOperator logDensity) {
    double sum = 0;
    double step = 0.0005;
    for (double log = Math.log(1.45); log < Math.log(800); log += step) {
      sum += step * Math.exp(logDensity.applyAsDouble(Math.exp(log)));
    }
    return sum;
  }

  private static Bench supplies(double amps) {
    return new Bench(
        "b",
        List.of(new Supply(13.8, amps)),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        0.9);
  }
}
