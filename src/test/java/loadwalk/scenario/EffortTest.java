package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Counts what a key, an entry and a second cost, where a clock would only measure the machine. The
 * bounds leave room for other Javas, not for another order.
 */
class EffortTest {
  private static final int CELLS_OF_A_KEY = 24;
  private static final int CELLS_OF_A_SECOND = 100;
  private static final int CELLS_OF_AN_ENTRY = 300;
  private static final long BYTES_OF_A_KEY = 64 << 10;
  private static final long BYTES_OF_AN_ENTRY = 1 << 20;
  private static final int KEYS = 100;
  private static final int ENTRIES = 10;

  private final ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @TempDir Path folder;

  /** A measured step that runs, its first reading in focus. */
  private BenchSide running() {
    return BenchSide.at(folder).warmAtStereoFour().press("text:4", "Enter");
  }

  @Test
  void key_givesOneFrameOfAFewCells_andForcesNothing() {
    BenchSide bench = running();
    for (String key : new String[] {"text:1", "text:7", "Back", "text:.", "text:5"}) {
      int frames = bench.frames();
      int cells = bench.cells();
      int forces = bench.disk().forces();
      bench.press(key);
      assertEquals(1, bench.frames() - frames, key);
      int painted = bench.cells() - cells;
      assertTrue(painted > 0 && painted <= CELLS_OF_A_KEY, key + " painted " + painted);
      assertEquals(forces, bench.disk().forces(), key);
    }
  }

  @Test
  void acceptedReading_isForcedOnce_andPaintsOneFrame() {
    BenchSide bench = running().press("text:15.5");
    int frames = bench.frames();
    int cells = bench.cells();
    int forces = bench.disk().forces();
    var meters = bench.program().program().state().practice();
    int judgements = bench.program().judgements();
    bench.press("Enter");
    assertEquals(1, bench.program().judgements() - judgements);
    assertSame(
        meters,
        bench.program().program().state().practice(),
        "the practice bench was reckoned anew");
    assertEquals(1, bench.disk().forces() - forces);
    assertEquals(1, bench.frames() - frames);
    int painted = bench.cells() - cells;
    assertTrue(painted > 0 && painted <= CELLS_OF_AN_ENTRY, "painted " + painted);
  }

  @Test
  void typedReading_isJudgedWhenEntered_andForecastsNothing() {
    BenchSide bench = running();
    int judgements = bench.program().judgements();
    int forecasts = bench.program().forecasts();
    bench.press("text:15.5", "Enter", "text:15.4");
    assertEquals(1, bench.program().judgements() - judgements);
    assertEquals(forecasts, bench.program().forecasts());
  }

  @Test
  void finishedStep_isJudgedOnceMoreAtMost_andForecastsTheNextOnce() {
    BenchSide bench = running().press("F8");
    int judgements = bench.program().judgements();
    int forecasts = bench.program().forecasts();
    bench.press("F9").sees("brief:");
    assertTrue(bench.program().judgements() - judgements <= 1);
    assertEquals(1, bench.program().forecasts() - forecasts);
  }

  @Test
  void second_thatChangesNothing_paintsAndForcesNothing() {
    BenchSide bench = running();
    int frames = bench.frames();
    int forces = bench.disk().forces();
    bench.tick().tick();
    assertEquals(frames, bench.frames());
    assertEquals(forces, bench.disk().forces());
  }

  @Test
  void secondOfWarmUp_paintsWhatChanged_andForcesNothing() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:2");
    for (int second = 0; second < 5; second++) {
      int frames = bench.frames();
      int cells = bench.cells();
      int forces = bench.disk().forces();
      bench.press("wait:1");
      assertTrue(bench.frames() - frames <= 1, "frames");
      int painted = bench.cells() - cells;
      assertTrue(painted <= CELLS_OF_A_SECOND, "painted " + painted);
      assertEquals(forces, bench.disk().forces());
    }
  }

  @Test
  void key_allocatesLittle() {
    long each = bytesOfAKey(running());
    assertTrue(each < BYTES_OF_A_KEY, each + " bytes a key");
  }

  private long bytesOfAKey(BenchSide bench) {
    keys(bench);
    long before = thread.getCurrentThreadAllocatedBytes();
    keys(bench);
    return (thread.getCurrentThreadAllocatedBytes() - before) / KEYS;
  }

  private static void keys(BenchSide bench) {
    for (int key = 0; key < KEYS; key++) {
      bench.press(key % 2 == 0 ? "text:1" : "Back");
    }
  }

  @Test
  void entry_allocatesWhatItsForecastsNeed() {
    BenchSide bench = running();
    entries(bench);
    int forces = bench.disk().forces();
    long before = thread.getCurrentThreadAllocatedBytes();
    entries(bench);
    long each = (thread.getCurrentThreadAllocatedBytes() - before) / ENTRIES;
    assertEquals(ENTRIES, bench.disk().forces() - forces, bench.picture());
    assertTrue(each < BYTES_OF_AN_ENTRY, each + " bytes an entry");
  }

  private static void entries(BenchSide bench) {
    for (int entry = 0; entry < ENTRIES; entry++) {
      bench.press("text:15." + entry % 10, "Enter", "Up");
    }
  }
}
