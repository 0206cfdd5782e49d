package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import loadwalk.app.sound.Inputs;
import loadwalk.view.canvas.Key;
import loadwalk.walk.Effect;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A comparison that is ready just after the operator has left the ledger. */
class LateComparisonTest {
  @TempDir Path folder;

  private ListeningBench bench;

  @BeforeEach
  void askForAComparison() {
    bench = new ListeningBench(folder, Inputs.NONE);
    for (long seed : List.of(1L, 2L)) {
      bench
          .program()
          .open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", seed, 60)));
      bench.press(Key.Kind.F10);
    }
    bench.press(Key.Kind.HOME, Key.Kind.DOWN, Key.Kind.DOWN, Key.Kind.ENTER).sees("mark");
    bench.slow().letters(" ").press(Key.Kind.DOWN).letters(" ").press(Key.Kind.F8);
    assertEquals(1, bench.undone());
  }

  @Test
  void onTheLedger_itIsShown() {
    bench.work().sees("Comparison");
  }

  @Test
  void behindIt_nothingOpensOverWhatTheOperatorDoes() {
    Runnable late = bench.putOff();
    bench.press(Key.Kind.F10).sees("New walk").press(Key.Kind.HOME, Key.Kind.ENTER).sees("seed 1");
    String before = bench.picture();
    late.run();
    assertEquals(before, bench.picture());
  }
}
