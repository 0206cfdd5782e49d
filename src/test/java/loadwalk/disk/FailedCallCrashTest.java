package loadwalk.disk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import loadwalk.Needs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The system refuses a force, a write or a rename of a real walk: the program says so, calls
 * nothing kept that is not, and the walk can be taken up; also when the power goes right then.
 */
class FailedCallCrashTest {
  private static final long SEED = 20_261_131;

  /** A retry behind each line, so that what failed once is kept at last. */
  private static final String TYPED =
      "begin\nretry\nsinkCelsius 20.3\nretry\nsinkCelsius 30\nretry\nsinkCelsius 31\nretry\n";

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private final Tally tally = new Tally();
  private int runs;
  private Disks disks;

  @BeforeEach
  void needTracer() throws IOException {
    Needs.tool("strace");
    disks = Disks.make(folder);
  }

  @AfterEach
  void giveBack() throws IOException {
    disks.close();
  }

  private Tracer tracer(String name) throws IOException {
    return new Tracer(Files.createDirectories(folder.toRealPath().resolve(name)));
  }

  private Tracer.Run walk(Tracer tracer, List<String> faults) throws Exception {
    return tracer.failing(faults, TYPED, "walk", "stereo-only", "--practice=1", "--plain");
  }

  @Test
  void someForcesWritesAndRenames_refusedOnce_loseNothingCalledKept() throws Exception {
    Tracer.Run clean = walk(tracer("clean"), List.of());
    List<String> all = faults(clean);
    List<String> share = new ArrayList<>();
    for (int i = 0; i < all.size(); i += 1 + all.size() / 6) {
      share.add(all.get(i));
    }
    share.add(all.get(all.size() - 1) + "+");
    refuse(share);
  }

  @Test
  @Tag("long")
  void everyForceWriteAndRename_refusedOnceOrForGood_losesNothingCalledKept() throws Exception {
    Tracer.Run clean = walk(tracer("clean"), List.of());
    List<String> all = new ArrayList<>(faults(clean));
    // Refused for good, write would keep the program from saying anything.
    faults(clean).stream()
        .filter(fault -> !fault.startsWith("write:"))
        .map(fault -> fault + "+")
        .forEach(all::add);
    faults(clean).stream().map(fault -> fault.replace("EIO", "ENOSPC")).forEach(all::add);
    refuse(all);
  }

  /** A fault for each call that brings something to the disk. */
  private static List<String> faults(Tracer.Run clean) {
    assertEquals(0, clean.code(), clean::toString);
    List<String> faults = new ArrayList<>();
    for (Call call : clean.calls()) {
      switch (call.kind()) {
        case FORCE, WRITE, RENAME, CUT, MAKE_FOLDER ->
            faults.add(call.name() + ":error=EIO:when=" + call.order());
        default -> {}
      }
    }
    return faults;
  }

  private void refuse(List<String> faults) throws Exception {
    for (String fault : faults) {
      Tracer tracer = tracer("run-" + ++runs);
      Before before = Before.of(tracer.watched());
      Tracer.Run run = walk(tracer, List.of(fault));
      told(fault, run);
      Platter platter = new Platter(before);
      JournalLines lines = new JournalLines(List.of());
      for (Call call : run.calls()) {
        platter.take(call);
        lines.take(call);
        check(platter, lines, fault + ", " + call.words());
      }
      asOnTheRealDisk(platter, tracer, fault);
    }
    System.out.printf("runs with a refused call: %d%n", runs);
    tally.tell("refused calls", SEED);
  }

  private static void told(String fault, Tracer.Run run) {
    assertTrue(run.calls().stream().anyMatch(call -> !call.done()), () -> fault + run);
    String all = run.said() + run.complained();
    // Where only the witness of the end fails, no record is in danger and nothing is said.
    boolean witness =
        run.calls().stream().allMatch(call -> call.done() || call.path().endsWith(".end"));
    assertTrue(witness || all.contains("The disk failed"), () -> fault + "\n" + run);
    assertFalse(all.contains("Exception") || all.contains("fault of its own"), () -> fault + run);
    boolean opened = run.said().startsWith("walk ");
    boolean forGood = fault.endsWith("+");
    if (!witness && (forGood || !opened)) {
      assertNotEquals(0, run.code(), () -> fault + "\n" + run);
    } else {
      assertEquals(0, run.code(), () -> fault + "\n" + run);
      assertTrue(run.said().contains("kept warm-up sinkCelsius 31"), () -> fault + "\n" + run);
    }
  }

  private void check(Platter platter, JournalLines lines, String where) throws IOException {
    for (Platter.Cut cut : Platter.Cut.values()) {
      Reopened.from(platter.image(cut, random), disks)
          .holds(lines, tally, cut + " at " + where + ", seed " + SEED);
    }
  }

  /** The model of the disk is right where nothing is lost. */
  static void asOnTheRealDisk(Platter platter, Tracer tracer, String what) throws IOException {
    Map<String, byte[]> model = platter.image(Platter.Cut.ALL_THERE, new Random(1)).files();
    Map<String, byte[]> real = Before.of(tracer.watched()).files();
    assertEquals(real.keySet(), model.keySet(), what);
    real.forEach((path, bytes) -> assertArrayEquals(bytes, model.get(path), what + " " + path));
  }
}
