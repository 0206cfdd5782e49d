package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A load typed at a heed step arms it; only who goes to the cold load measures it. */
class ArmingScenarioTest {
  private static final String ARMS = "The load you type here arms and starts the step.";
  private static final String KEPT = "This is kept as the cold load; it does not arm the step.";

  @TempDir Path folder;

  private BenchSide heed() {
    return BenchSide.at(folder).heedAtStereoFour().sees("> To arm", ARMS);
  }

  private static List<String> measured(BenchSide bench) {
    return bench.typed("stereo-4", ReadingId.LOAD_OHMS);
  }

  @Test
  void loadTypedAtOnce_armsTheStep_andIsNoMeasurement() {
    BenchSide bench = heed().press("text:4", "Enter").sees("stereo-4 running");
    assertEquals(List.of(), measured(bench));
    bench.journalTellsTheSame();
  }

  @Test
  void coldLoad_isReachedOnPurpose_saysSo_andLeadsBackToArming() {
    for (String way : List.of("Tab", "Down", "Up")) {
      BenchSide bench = BenchSide.at(folder.resolve(way)).heedAtStereoFour();
      bench.press(way).sees("> Load measured cold", KEPT).seesNot(ARMS);
      bench.press("text:4.01", "Enter").sees("first 4.01 Ω", "stereo-4 brief", ARMS);
      assertEquals(List.of("4.01"), measured(bench));
      bench.press("Tab").sees("> Other load cold").press("text:4.03", "Enter");
      bench.sees("4.03 Ω kept", "stereo-4 brief", ARMS);
    }
  }

  @Test
  void coldLoadLeftEmpty_goesBackToArming_withoutStarting() {
    heed().press("Down", "Enter").sees("> To arm", ARMS).seesNot("stereo-4 running");
  }

  /** A clear step starts without a load; one that is typed must be the one it needs. */
  @Test
  void clearStep_isStartedWithoutALoad_orWithOneThatMatches() {
    BenchSide bench = BenchSide.at(folder.resolve("without")).warmAtStereoFour();
    bench.sees("stereo-4 brief: CLEAR", "> Load really connected, in ohms (optional)");
    bench.press("Enter").sees("stereo-4 running").journalTellsTheSame();
    assertTrue(bench.step("stereo-4").armedOhms().isEmpty());
    BenchSide typed = BenchSide.at(folder.resolve("typed")).warmAtStereoFour();
    typed.press("text:8", "Enter").sees("Check the wiring").seesNot("stereo-4 running");
    typed.press("Back", "text:4", "Enter").sees("stereo-4 running").journalTellsTheSame();
    assertEquals(4, typed.step("stereo-4").armedOhms().orElseThrow());
    assertEquals(List.of(), measured(typed));
  }

  @Test
  void coldLoadOfAClearStep_saysWhatEnterDoesThere() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().sees("Enter starts the step.");
    bench.press("Tab").sees("A number typed here is kept as the cold load. Enter alone starts");
    bench.press("text:4.01", "Enter").sees("first 4.01 Ω", "stereo-4 brief");
    bench.press("Tab", "Enter").sees("stereo-4 running");
    assertEquals(List.of("4.01"), measured(bench));
  }

  @Test
  void cursorLeftAtTheColdLoad_doesNotGoAlongToTheNextStep() {
    BenchSide bench = heed().press("Tab", "F3", "text:another load first", "Enter");
    bench.sees("stereo-2 brief: HEED", "> To arm", ARMS);
    assertTrue(measured(bench).isEmpty());
  }
}
