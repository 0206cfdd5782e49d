package loadwalk.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A walk from somebody else names meters: nobody is called before the operator has said so. */
class StrangersBenchIT {
  private static final long SEED = 18_009;
  private static final String ASKED = "To open them, type connect.";
  private static final String KNOWN = ".meters-used";

  @TempDir Path folder;

  private ListeningMeter meter;
  private Path strangers;
  private Path own;

  @BeforeEach
  void strangerWalks() throws Exception {
    meter = new ListeningMeter();
    strangers = TinyWalk.home(folder.resolve("strangers"));
    Files.writeString(strangers.resolve("bench.json"), meter.bench("DMM"));
    Program.Running running = program().start(TinyWalk.begin(strangers));
    running.type("begin\n").hears("idle is running");
    awaitCaller(1);
    Ran begun = running.type("fill\n").hears("supplyVolts 13.7").end().ends(0);
    assertFalse(begun.said().contains(ASKED), "a bench file given by hand was asked about");
    own = TinyWalk.home(folder.resolve("own"));
    copy(strangers.resolve("sessions"), own.resolve("sessions"));
  }

  @AfterEach
  void endMeter() throws IOException {
    meter.close();
  }

  private Program program() {
    return Program.shipped(folder);
  }

  private void awaitCaller(int wanted) throws InterruptedException {
    for (int i = 0; i < 3000 && meter.callers() < wanted; i++) {
      Thread.sleep(10);
    }
    assertTrue(meter.callers() >= wanted, "nobody called the meter");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path there = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(there);
        } else {
          Files.copy(path, there);
        }
      }
    }
  }

  /**
   * Resumes, lets it take what it wants, and returns what was said; nobody may have been called.
   */
  private Ran asksFirst(Path home) throws Exception {
    int before = meter.callers();
    Program.Running running = program().start(TinyWalk.resume(home));
    running.type("begin\nfill\nnote I am here\n").hears("kept note: I am here");
    Ran ran = running.end().ends(0).says(ASKED).says(meter.address()).says("No meter is connected");
    assertEquals(before, meter.callers(), "the meter was called without a word");
    return ran;
  }

  private void connectsAtOnce(Path home) throws Exception {
    int before = meter.callers();
    Program.Running running = program().start(TinyWalk.resume(home));
    running.hears("walk ");
    awaitCaller(before + 1);
    assertFalse(running.end().ends(0).said().contains(ASKED), "it was asked once more");
  }

  @Test
  void strangersWalk_isAskedAbout_andGoesOnByHand_untilTheOperatorSaysConnect() throws Exception {
    asksFirst(own).says("supply volts");
    asksFirst(own);
    int before = meter.callers();
    Program.Running running = program().start(TinyWalk.resume(own));
    running.hears(ASKED).type("connect\n").hears("The meters are asked from now on.");
    awaitCaller(before + 1);
    running.end().ends(0);
    connectsAtOnce(own);
  }

  @Test
  void whereTheBenchWasGivenByHand_theWalkGoesOnWithoutAQuestion() throws Exception {
    connectsAtOnce(strangers);
  }

  /** A stranger may send a whole home, with the file that lets addresses be opened. */
  @Test
  void fileOfUsedMeters_fromAnotherHome_opensNothing() throws Exception {
    Files.copy(strangers.resolve(KNOWN), own.resolve(KNOWN));
    asksFirst(own);
    Path sent = folder.resolve("sent");
    copy(strangers, sent);
    asksFirst(sent);
    Path moved = folder.resolve("away");
    Files.move(strangers, moved);
    copy(moved, strangers);
    asksFirst(strangers);
  }

  @Test
  void fileOfUsedMeters_thatIsNotAsItWasKept_opensNothing() throws Exception {
    Path file = strangers.resolve(KNOWN);
    byte[] kept = Files.readAllBytes(file);
    Random random = new Random(SEED);
    System.out.println("changed files of used meters, seed " + SEED);
    for (int i = 0; i < 8; i++) {
      byte[] changed = kept.clone();
      int at = i == 0 ? changed.length - 2 : random.nextInt(changed.length - 1);
      changed[at] ^= (byte) (1 << random.nextInt(7));
      Files.write(file, changed);
      asksFirst(strangers);
    }
    Files.write(file, (new String(kept, UTF_8) + "192.0.2.7:5025\n").getBytes(UTF_8));
    asksFirst(strangers);
    Files.write(file, new byte[0]);
    asksFirst(strangers);
    Files.delete(file);
    Files.createSymbolicLink(file, Files.write(folder.resolve("linked"), kept));
    asksFirst(strangers);
    Files.delete(file);
    Files.createDirectory(file);
    asksFirst(strangers);
    Files.delete(file);
    Files.write(file, kept);
    connectsAtOnce(strangers);
  }

  @Test
  void otherAddressInAWalkOfAHomeThatUsesMeters_isAskedAbout() throws Exception {
    Path third = TinyWalk.home(folder.resolve("third"));
    try (ListeningMeter usual = new ListeningMeter()) {
      Files.writeString(third.resolve("bench.json"), usual.bench("usual"));
      program().run("", TinyWalk.begin(third)).ends(0);
      for (Path journal : Journal.in(third)) {
        Files.delete(journal);
      }
      for (Path journal : Journal.in(strangers)) {
        Files.copy(journal, third.resolve("sessions").resolve(journal.getFileName()));
      }
      int before = usual.callers();
      asksFirst(third);
      assertEquals(before, usual.callers(), "a meter of another bench was called");
    }
  }
}
