package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import loadwalk.app.sound.Inputs;
import loadwalk.view.canvas.Key;
import loadwalk.view.state.Live;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is held or read of a wave reaches its form, whatever is pressed before the disk is done. */
class HeldWaveTest {
  @TempDir private Path folder;

  /** A ramp that was held at its limit by itself, its input over since. */
  private ListeningBench held() throws IOException, InterruptedException {
    Path file = Ramps.write(folder.resolve("ramp.wav"), Ramps.rising(10));
    CountDownLatch closed = new CountDownLatch(1);
    ListeningBench bench =
        new ListeningBench(folder, Inputs.telling(Inputs.playing(file, 1000), closed));
    bench.listenAtStereoFour();
    assertTrue(closed.await(60, TimeUnit.SECONDS), bench::picture);
    bench.program().look();
    return bench.slow();
  }

  private List<String> waves() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve("sessions"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".wav"))
          .sorted()
          .toList();
    }
  }

  @Test
  void inputThatStops_losesNothingOfWhatIsHeld() throws Exception {
    ListeningBench bench = held().sees("HELD", "Ctrl-W takes the held wave");
    bench.press(Key.Kind.WAVE).work().sees("Full scale", "stereo-4-1.wav");
    bench.press(Key.Kind.F10).press(Key.Kind.HOLD).sees("The sound input stopped.");
    assertEquals(Live.State.NONE, bench.live().state());
  }

  @Test
  void keyPressedAgain_whileTheWaveIsBeingKept_waits() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE).sees("Keeping the wave.");
    bench.press(Key.Kind.WAVE).sees("Keeping the wave.").seesNot("Full scale");
    assertEquals(1, bench.undone());
    bench.work().sees("Full scale", "stereo-4-1.wav");
    bench.press(Key.Kind.F10, Key.Kind.WAVE).sees("Full scale", "stereo-4-1.wav");
    assertEquals(0, bench.undone());
    assertEquals(List.of("stereo-4-1.wav"), waves());
  }

  @Test
  void nextHold_makesAFileOfItsOwn() throws Exception {
    Path file = Ramps.write(folder.resolve("steady.wav"), Ramps.steady(0.4, 60));
    ListeningBench bench = new ListeningBench(folder, Inputs.playing(file, 20));
    bench.listenAtStereoFour().until(Live.State.HEARING).press(Key.Kind.HOLD);
    bench.until(() -> bench.press(Key.Kind.WAVE).picture().contains("stereo-4-1.wav"));
    bench.press(Key.Kind.F10, Key.Kind.HOLD).until(Live.State.HEARING).press(Key.Kind.HOLD);
    bench.until(() -> bench.press(Key.Kind.WAVE).picture().contains("stereo-4-2.wav"));
    assertEquals(List.of("stereo-4-1.wav", "stereo-4-2.wav"), waves());
  }

  @Test
  void formOpenedMeanwhile_isFilledOnceTheFileIsThere() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE, Key.Kind.LISTEN, Key.Kind.WAVE);
    bench.sees("Full scale").seesNot("stereo-4-1.wav");
    bench.work().sees("Full scale", "stereo-4-1.wav");
  }

  @Test
  void formOpenedMeanwhile_keepsTheFileThatWasTypedIntoIt() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE, Key.Kind.LISTEN, Key.Kind.WAVE);
    bench.letters("other.wav").work().sees("other.wav", "The held wave is kept in");
  }

  @Test
  void stopPressedMeanwhile_isNotCoveredByTheForm() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE, Key.Kind.ESCAPE).sees("S T O P");
    bench.work().sees("S T O P").seesNot("Full scale");
    assertEquals(List.of("stereo-4-1.wav"), waves());
  }

  @Test
  void stopThatWaitsForTheDisk_isNotCoveredByTheForm() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE);
    bench.program().disk().fill();
    bench.press(Key.Kind.ESCAPE).work().sees("S T O P").seesNot("Full scale");
  }

  @Test
  void noteBegunMeanwhile_isNotTakenAway() throws Exception {
    ListeningBench bench = held().press(Key.Kind.WAVE, Key.Kind.F2).letters("warm ro");
    bench.work().sees("warm ro").seesNot("Full scale");
  }

  @Test
  void answerThatNobodyWaitsFor_doesNotTakeThePlaceOfTheWaveShown() throws Exception {
    Path first = Ramps.write(folder.resolve("first.wav"), Ramps.steady(0.3, 3));
    Path second = Ramps.write(folder.resolve("second.wav"), Ramps.steady(0.2, 3));
    ListeningBench bench = held().press(Key.Kind.LISTEN, Key.Kind.WAVE);
    bench.letters(first.toString()).press(Key.Kind.ENTER).type("2").type("21");
    bench.press(Key.Kind.F9).sees("Reading the wave.").press(Key.Kind.F10);
    bench.press(Key.Kind.WAVE).letters(second.toString()).press(Key.Kind.ENTER);
    bench.type("2").type("21").press(Key.Kind.F9);
    Runnable late = bench.putOff();
    bench.work().sees("second.wav", "take it as the reading");
    late.run();
    bench.sees("second.wav", "take it as the reading").seesNot("first.wav");
    bench.press(Key.Kind.ENTER);
    assertEquals("second.wav", bench.step().captures().get(0).file());
  }
}
