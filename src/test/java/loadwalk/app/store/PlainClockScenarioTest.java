package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalLong;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In plain mode the warm-up goes by the clock that only goes forward. */
class PlainClockScenarioTest {
  private final FakeClocks clocks = new FakeClocks();

  /** Lines typed a minute apart; before the third the wall clock is set back three hours. */
  private final class Typed extends Reader {
    private final String text;
    private int at;

    Typed(String text) {
      this.text = text;
    }

    @Override
    public int read(char[] to, int from, int length) {
      if (at == text.length()) {
        return -1;
      }
      if (at > 0 && text.charAt(at - 1) == '\n') {
        clocks.goOn(60);
        clocks.setForward(text.startsWith("sinkCelsius 31", at) ? -3 * 3600 : 0);
      }
      to[from] = text.charAt(at++);
      return 1;
    }

    @Override
    public void close() {
      // Nothing is held open.
    }
  }

  @Test
  void wallClockSetBack_leavesTheWarmUpRunning(@TempDir Path folder) throws IOException {
    ProgramUnderTest program = new ProgramUnderTest(folder, clocks, new Look(false));
    program.open(
        new Effect.OpenWalk(
            "stereo-only",
            Amplifier.named("Verrin", "V1"),
            Bench.unknown(),
            OptionalLong.empty(),
            1));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    program.type(
        new Typed("arm 4\nsinkCelsius 30\nsinkCelsius 31\ndone\n"),
        new PrintStream(out, true, StandardCharsets.UTF_8));
    String said = out.toString(StandardCharsets.UTF_8);
    assertTrue(said.contains("kept warm-up sinkCelsius 31"), said);
    assertEquals(Status.RUNNING, program.model().state().step("warm-up").status(), said);
    assertEquals(180, program.model().clock().warmSeconds(), 1, said);
  }
}
