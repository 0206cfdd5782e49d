package loadwalk.forecast.caution;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_1;
import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.GivesFirst;
import org.junit.jupiter.api.Test;

/** What gives first, and where to stop. */
class OpeningTest {
  private final BriefedBench bench = new BriefedBench();

  private Optional<GivesFirst> ask(Target target) {
    return bench.cautions.givesFirst(bench.evidence(), target, bench.readings, bench.demand);
  }

  private String line(Target target) {
    return ask(target).orElseThrow().line();
  }

  @Test
  void supplies_giveFirst_whereTheyBearLeast() {
    bench.amps(34, 40);
    assertEquals("34 A of the 90 A that the supplies bear; stop at 90 A.", line(STEREO_4));
  }

  /** A blade of 30 A never opens below 110 % (ISO 8820 as in the table): 3 of them below 99 A. */
  @Test
  void fuses_stopWhereTheyStillCarry() {
    bench.ownFuses = List.of(30.0, 30.0, 30.0);
    bench.supplies = List.of(new Supply(13.8, 200));
    bench.fuse = OptionalDouble.of(200);
    bench.amps(34, 40).reads(ReadingId.SINK_CELSIUS, 40, 45, 50);
    assertEquals(
        "34 A of the 90 A that the amplifier's fuses carry; stop at 95 A or 75 °C.",
        line(STEREO_4));
  }

  /** 1600 W of resistors spread evenly, two loads: 400 W in each are 50 W of 100 W. */
  @Test
  void loadResistors_areToldAsTheLoadThatTheyMake_withItsVolts() {
    bench.amps(1, 2).reads(ReadingId.OUTPUT_WATTS, 300, 400, 500);
    String line = line(STEREO_4);
    assertTrue(
        line.matches("400 W of the \\d+ W that the load resistors bear; stop at \\d+ V or 90 A\\."),
        line);
  }

  @Test
  void whatIsNotDriven_orNotKnown_hasNoOpening() {
    assertEquals(Optional.empty(), ask(STEREO_4));
    bench.amps(1, 2);
    assertEquals(Optional.empty(), ask(IDLE));
    assertTrue(ask(BRIDGED_1).isPresent());
  }
}
