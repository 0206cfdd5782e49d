package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Does faults to the launcher from outside, a share of each kind by default, all when asked. */
class OutsideIT {
  private static final long SEED = Long.getLong("outside.seed", 173_557);

  /** Of the faults that are all tried, one in so many; for a quick look. */
  private static final int EVERY = Integer.getInteger("outside.every", 1);

  private static final String ONLY = System.getProperty("outside.only", "");
  private static final int AT_ONCE = 2;
  private static final List<String> NEEDED = List.of("prlimit", "setpriv", "script", "stty");

  @TempDir Path folder;

  private final List<String> failures = Collections.synchronizedList(new ArrayList<>());

  @Test
  void shareOfEveryKind_losesNothing_andIsToldInPlainWords() throws Exception {
    trial(false);
  }

  @Test
  @Tag("long")
  void everyFault_losesNothing_andIsToldInPlainWords() throws Exception {
    trial(true);
  }

  private void trial(boolean whole) throws Exception {
    System.out.println("faults from outside, seed " + SEED);
    for (String tool : NEEDED) {
      assertTrue(Tools.has(tool), "this test needs " + tool);
    }
    // Somebody without rights has to come to what is below.
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    Learned learned = Learned.by(Files.createDirectories(folder.resolve("learned")));
    ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
    System.out.println("kind | there | tried | failed");
    for (Kind kind : Kind.values()) {
      if (kind.name().contains(ONLY.toUpperCase(Locale.ROOT))) {
        System.out.println(tried(kind, learned, whole, workers));
      }
    }
    workers.shutdown();
    assertEquals(List.of(), failures, "seed " + SEED);
  }

  private String tried(Kind kind, Learned learned, boolean whole, ExecutorService workers)
      throws Exception {
    Random random = new Random(SEED + kind.ordinal());
    List<Fault> all = kind.faults(learned, random);
    List<Fault> drawn = new ArrayList<>(all);
    Collections.shuffle(drawn, random);
    int count = whole ? (drawn.size() + EVERY - 1) / EVERY : kind.share();
    int before = failures.size();
    List<Callable<Void>> work = new ArrayList<>();
    for (Fault fault : drawn.subList(0, Math.min(count, drawn.size()))) {
      work.add(() -> tryOut(kind, fault));
    }
    for (Future<Void> done : workers.invokeAll(work)) {
      done.get();
    }
    return String.format(
        Locale.ROOT,
        "%s | %d | %d | %d",
        kind.title(),
        all.size(),
        work.size(),
        failures.size() - before);
  }

  private Void tryOut(Kind kind, Fault fault) {
    try {
      fault.trial().in(Files.createTempDirectory(folder, "fault"));
    } catch (Exception | AssertionError e) {
      failures.add(kind.title() + ", " + fault.name() + ": " + e);
    }
    return null;
  }
}
