package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.TimeZone;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wall clocks that tell the wrong time, and summer time. */
class OddClockScenarioTest {
  private static final Instant BATTERY_DEAD = Instant.parse("1970-01-01T00:00:40Z");

  @TempDir Path folder;

  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void setZoneBack() {
    TimeZone.setDefault(zone);
  }

  private static List<String> cooled(BenchSide bench) {
    return bench.facts().stream()
        .map(Stamped::fact)
        .filter(Fact.Cooled.class::isInstance)
        .map(f -> ((Fact.Cooled) f).why())
        .toList();
  }

  @Test
  void clockThatSays1970_runsAWholeWarmUp() {
    BenchSide bench = BenchSide.at(folder);
    bench.clocks().setWall(BATTERY_DEAD);
    bench.tick().warmAtStereoFour();
    assertEquals(List.of(), cooled(bench));
    bench.journalTellsTheSame();
  }

  @Test
  void clockThatSays1970AfterABoot_takesTheAmplifierAsCold() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.clocks().boot();
    bench.clocks().setWall(BATTERY_DEAD);
    bench.killedAndStartedAgain().press("Up", "Enter");
    bench.sees("stereo-4 brief: HEED", "went backwards", "Take it as cold");
    assertEquals(1, cooled(bench).size());
    bench.press("F7").sees(">warm-up", "warm-up brief").journalTellsTheSame();
  }

  @Test
  void clockThatIsSetFrom1970_inMidWalk_isNotTakenForYearsOfWaiting() {
    BenchSide bench = BenchSide.at(folder);
    Instant today = Instant.ofEpochMilli(bench.clocks().wallMillis());
    bench.clocks().setWall(BATTERY_DEAD);
    bench.tick().warmAtStereoFour();
    bench.clocks().setWall(today);
    bench.tick().sees("stereo-4 brief: HEED", "set forward by more than a year");
    assertEquals(1, cooled(bench).size());
    bench.journalTellsTheSame();
  }

  @Test
  void clockSetForwardByAnHour_warmsOnceMoreRatherThanTooLittle() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:10");
    bench.clocks().setForward(3600);
    bench.tick().sees("warm-up brief", "The walk stood still for 60 minutes");
    bench.press("Enter").seesLeft(15, 0);
    assertEquals(1, cooled(bench).size());
  }

  @Test
  void summerTimeBeginsAndEnds_changesNothing() {
    TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
    String[] changes = {"2026-03-29T00:59:53Z", "2026-10-25T00:59:53Z"};
    for (String justBefore : changes) {
      BenchSide bench = BenchSide.at(folder.resolve(justBefore.substring(0, 7)));
      bench.clocks().setWall(Instant.parse(justBefore));
      bench.tick().practising().press("Enter", "wait:5").seesLeft(10, 0);
      bench.press("wait:10", "Enter").sees("idle brief");
      assertEquals(List.of(), cooled(bench));
      bench.journalTellsTheSame();
    }
  }
}
