package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import loadwalk.app.sound.Inputs;
import loadwalk.bench.ReadingId;
import loadwalk.view.Program;
import loadwalk.view.canvas.Key;
import loadwalk.view.state.Live;
import loadwalk.walk.Effect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sound input in the walk screen, played by a fake, and the machine that has none. */
class LiveWalkTest {
  @TempDir private Path folder;

  @Test
  void risingTone_isHeldByItselfAtTheLimit_andEntersAsACapture() throws IOException {
    Path file = Ramps.write(folder.resolve("ramp.wav"), Ramps.rising(10));
    ListeningBench bench = new ListeningBench(folder, Inputs.playing(file, 20));
    bench.listenAtStereoFour().until(Live.State.HEARING).sees("LIVE").until(Live.State.HELD);
    double thd = bench.live().reading().orElseThrow().thdPercent().orElseThrow();
    assertTrue(thd >= 1 && thd < 1.3, () -> thd + " %");
    bench.sees("HELD");
    bench.until(() -> bench.press(Key.Kind.WAVE).picture().contains("Full scale"));
    bench.sees("stereo-4-1.wav").type("2").type("21").press(Key.Kind.F9).sees("at the limit");
    bench.press(Key.Kind.ENTER);
    double expected = 42 * Ramps.LIMIT_RMS;
    double volts = bench.step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value();
    assertEquals(expected, volts, 0.003 * expected);
    assertEquals("stereo-4-1.wav", bench.step().captures().get(0).file());
    String walk = bench.program().model().state().opened().walk();
    assertTrue(Files.exists(folder.resolve("sessions/" + walk + ".waves/stereo-4-1.wav")));
  }

  @Test
  void heldByHand_itGoesOnWhenAsked_andEndsWithTheStep() throws IOException {
    Path file = Ramps.write(folder.resolve("steady.wav"), Ramps.steady(0.4, 60));
    ListeningBench bench = new ListeningBench(folder, Inputs.playing(file, 10));
    bench.listenAtStereoFour().until(Live.State.HEARING).press(Key.Kind.HOLD);
    bench.until(Live.State.HELD).press(Key.Kind.HOLD).until(Live.State.HEARING);
    bench.press(Key.Kind.ESCAPE).until(Live.State.OFF);
    assertTrue(bench.program().model().isStopped());
  }

  @Test
  void withoutAnInput_itSaysSo_andTheRestWorks() {
    ListeningBench bench = new ListeningBench(folder, Inputs.NONE);
    bench.listenAtStereoFour().until(Live.State.NONE).sees("This computer has no sound input");
    bench.type("13.4 V");
    assertEquals(13.4, bench.step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    bench.press(Key.Kind.HOLD).sees("There is no sound to hold");
  }

  @Test
  void inputThatHangs_keepsNobodyWaiting() {
    CountDownLatch latch = new CountDownLatch(1);
    ListeningBench bench = new ListeningBench(folder, Inputs.hanging(latch));
    bench.listenAtStereoFour();
    assertEquals(Live.State.OPENING, bench.live().state());
    bench.type("13.4 V");
    assertEquals(13.4, bench.step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    bench.press(Key.Kind.LISTEN);
    assertEquals(Live.State.OFF, bench.live().state());
    latch.countDown();
    bench.program().look();
    assertEquals(Live.State.OFF, bench.live().state());
  }

  @Test
  void cautions_comeBeforeTheFirstSound() {
    List<Boolean> opened = new CopyOnWriteArrayList<>();
    ListeningBench bench =
        new ListeningBench(
            folder,
            () -> {
              opened.add(true);
              return Inputs.NONE.open();
            });
    onPracticeBench(bench);
    Program before = bench.program().program();
    bench.press(Key.Kind.LISTEN).sees("reads output volts");
    assertEquals(before.state().live(), bench.live());
    assertEquals(List.of(), opened);
  }

  @Test
  void practiceBench_hasAnInputOfItsOwn_whoseDividerIsKnown() {
    ListeningBench bench = new ListeningBench(folder, Inputs.NONE);
    onPracticeBench(bench);
    bench.toStereoFour().press(Key.Kind.LISTEN).sees("only through a divider");
    bench.press(Key.Kind.ENTER).until(Live.State.OPENING);
    double divider = bench.program().program().state().waves().setup().divider().orElseThrow();
    assertEquals(57, divider);
  }

  private static void onPracticeBench(ListeningBench bench) {
    bench
        .program()
        .open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)));
  }
}
