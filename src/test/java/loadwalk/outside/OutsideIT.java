package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Does faults to the launcher from outside, a share of each kind by default, all when asked. */
class OutsideIT {
  private static final long SEED = Long.getLong("outside.seed", 173_557);

  /** Of the faults that are all tried, one in so many; for a quick look. */
  private static final int EVERY = Integer.getInteger("outside.every", 1);

  private static final String ONLY = System.getProperty("outside.only", "");
  private static final int AT_ONCE = 2;
  private static final List<String> NEEDED = List.of("prlimit", "setpriv", "script", "stty");

  @TempDir static Path folder;

  private static Learned learned;

  private final List<String> failures = Collections.synchronizedList(new ArrayList<>());

  @BeforeAll
  static void learn() throws Exception {
    for (String tool : NEEDED) {
      assertTrue(Tools.has(tool), "this test needs " + tool);
    }
    // Somebody without rights has to come to what is below.
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    learned = Learned.by(Files.createDirectories(folder.resolve("learned")));
    System.out.println("faults from outside, seed " + SEED + "; kind | there | tried | failed");
  }

  @ParameterizedTest
  @EnumSource
  void shareOfAKind_losesNothing_andIsToldInPlainWords(Kind kind) throws Exception {
    trial(kind, kind.share());
  }

  @ParameterizedTest
  @EnumSource
  @Tag("long")
  void everyFaultOfAKind_losesNothing_andIsToldInPlainWords(Kind kind) throws Exception {
    assumeTrue(kind.name().contains(ONLY.toUpperCase(Locale.ROOT)), "it is not asked for");
    trial(kind, Integer.MAX_VALUE);
  }

  /** Tries so many faults of a kind, or one in so many of all. */
  private void trial(Kind kind, int most) throws Exception {
    Random random = new Random(SEED + kind.ordinal());
    List<Fault> all = kind.faults(learned, random);
    List<Fault> drawn = new ArrayList<>(all);
    Collections.shuffle(drawn, random);
    int count = Math.min(most, (drawn.size() + EVERY - 1) / EVERY);
    List<Callable<Void>> work = new ArrayList<>();
    for (Fault fault : drawn.subList(0, count)) {
      work.add(() -> tryOut(kind, fault));
    }
    ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
    try {
      for (Future<Void> done : workers.invokeAll(work)) {
        done.get();
      }
    } finally {
      workers.shutdown();
    }
    System.out.printf(
        Locale.ROOT, "%s | %d | %d | %d%n", kind.title(), all.size(), work.size(), failures.size());
    assertEquals(List.of(), failures, "seed " + SEED);
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
