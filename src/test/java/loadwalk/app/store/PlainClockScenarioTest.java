package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.concurrent.locks.LockSupport;
import loadwalk.app.MachineEffects;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.Model;
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

  /**
   * Lines between which the clocks go on by themselves; the program has to see each piece of it.
   */
  private static final class Waiting extends Reader {
    private interface Between {
      void pass() throws IOException;
    }

    private final StringReader lines = new StringReader("begin\ndone\n");
    private final Between between;
    private int read;

    Waiting(Between between) {
      this.between = between;
    }

    @Override
    public int read(char[] to, int from, int length) throws IOException {
      if (read++ == "begin\n".length()) {
        between.pass();
      }
      return lines.read(to, from, 1);
    }

    @Override
    public void close() {
      // Nothing is held open.
    }
  }

  private ProgramUnderTest practising(Path folder) {
    ProgramUnderTest program = new ProgramUnderTest(folder, clocks, new Look(false));
    program.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 1)));
    return program;
  }

  /** Waits until the program has taken in the time of both clocks. */
  private void await(ProgramUnderTest program) throws IOException {
    for (int i = 0; i < 2000; i++) {
      Model.Clock clock = program.model().clock();
      boolean seen =
          clock.monoNanos().orElse(0) == clocks.monoNanos()
              && clock.wallMillis() == clocks.wallMillis();
      if (seen) {
        return;
      }
      LockSupport.parkNanos(10_000_000);
    }
    throw new IOException("no tick came while nothing was typed");
  }

  private String typed(ProgramUnderTest program, Waiting.Between between) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    program.type(new Waiting(between), new PrintStream(out, true, StandardCharsets.UTF_8));
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void warmUpThatNobodyTypesIn_goesOn_andIsNotTakenForAPause(@TempDir Path folder)
      throws IOException {
    ProgramUnderTest program = practising(folder);
    String said =
        typed(
            program,
            () -> {
              for (int piece = 0; piece < 3; piece++) {
                clocks.goOn(320);
                await(program);
              }
            });
    assertTrue(said.contains("warm-up done."), said);
    assertEquals(1, program.bells());
  }

  @Test
  void wallClockSetForward_isTold_beforeAnythingElseIsTyped(@TempDir Path folder)
      throws IOException {
    ProgramUnderTest program = practising(folder);
    String said =
        typed(
            program,
            () -> {
              clocks.goOn(20);
              await(program);
              clocks.setForward(3 * 3600);
              await(program);
            });
    int told = said.indexOf("The walk stood still for 3 hours: the amplifier has cooled.");
    int brief = said.lastIndexOf("Step 1 of 8, warm-up, brief: CLEAR");
    int refused = said.indexOf("warm-up is not running.");
    assertTrue(0 < told && told < brief && brief < refused, said);
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
