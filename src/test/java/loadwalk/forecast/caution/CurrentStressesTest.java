package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.BriefedBench;
import org.junit.jupiter.api.Test;

/** What each part that carries the supply current bears, for a reading and for a warm-up. */
class CurrentStressesTest {
  private static final Target WARM_UP =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
  private static final Target IDLE = Target.idle("idle");

  private final BriefedBench bench = new BriefedBench().amps(1, 2);

  private Bears bears(String what, Target target) {
    return bench.stresses(target).stream()
        .filter(stress -> stress.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(what + " is missing"))
        .bears();
  }

  private static void assertBears(double counted, double most, double stop, Bears bears) {
    assertEquals(counted, bears.counted(), 1e-9);
    assertEquals(most, bears.most(), 1e-9);
    assertEquals(stop, bears.stop(), 1e-9);
  }

  @Test
  void stresses_nameWhatIsStressed() {
    List<String> names = bench.stresses(STEREO_4).stream().map(Stress::what).toList();
    assertEquals(
        List.of("supplies", "bench fuse", "lead \"plus\"", "lead \"minus\"", "amplifier's fuses"),
        names);
  }

  @Test
  void stresses_ofACurrentThatNobodyForecasts_areNone() {
    bench.readings.clear();
    assertEquals(List.of(), bench.stresses(STEREO_4));
  }

  @Test
  void supplies_areCountedOnForAPart_andGiveAtAllOfIt_howeverLong() {
    bench.supplies = List.of(new Supply(13.8, 60), new Supply(13.8, 40));
    assertBears(90, 100, 90, bears("supplies", STEREO_4));
    assertBears(90, 100, 90, bears("supplies", WARM_UP));
  }

  /** Type E, to 120 A: 100 h at its rating, from 60 s at 135 % (datasheet as transcribed). */
  @Test
  void fuse_isLoadedToAQuarterMoreForAReading_andToItsRatingInAWarmUp() {
    assertBears(100, 125, 100, bears("bench fuse", STEREO_4));
    assertBears(75, 100, 75, bears("bench fuse", WARM_UP));
    assertBears(75, 100, 75, bears("bench fuse", IDLE));
  }

  /** Types C and SF30 never open below 110 % (ISO 8820 as in the table): there is where to stop. */
  @Test
  void fuse_stopsWhereItsKindNeverOpens() {
    bench.fuse = OptionalDouble.of(40);
    assertBears(40, 50, 44, bears("bench fuse", STEREO_4));
    bench.fuse = OptionalDouble.of(150);
    assertBears(150, 187.5, 165, bears("bench fuse", STEREO_4));
  }

  /** Three blades of 30 A are of type C, one of 90 A of type E. */
  @Test
  void fusesOfTheAmplifier_areOfTheKindOfOne_andCarryTogether() {
    bench.ownFuses = List.of(30.0, 30.0, 30.0);
    assertBears(90, 112.5, 99, bears("amplifier's fuses", STEREO_4));
    bench.ownFuses = List.of(90.0);
    assertBears(90, 112.5, 90, bears("amplifier's fuses", STEREO_4));
  }

  /**
   * AWG 4 for 105 °C carries 160 A (33 CFR 183.425). Its 21.15 mm² warm with 197 s, so it would
   * bear 201 A for a minute; its lugs bear a quarter more than 160 A.
   */
  @Test
  void lead_bearsMoreForAReading_thanForAWarmUp() {
    assertBears(160, 200, 160, bears("lead \"plus\"", STEREO_4));
    assertBears(160, 160, 160, bears("lead \"plus\"", WARM_UP));
  }
}
