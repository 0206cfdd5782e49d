package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.app.store.Walks.HEAD;
import static loadwalk.app.store.Walks.NAME;
import static loadwalk.app.store.Walks.bodies;
import static loadwalk.app.store.Walks.keep;
import static loadwalk.app.store.Walks.watching;
import static loadwalk.app.store.Walks.writing;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import loadwalk.Needs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One walk, one writer; whoever cannot write is told at once and watches. */
class WalkLockTest {
  private static final String HELD = "Another Loadwalk has this walk open.";

  /** The longest that anyone may wait without a word. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  @TempDir Path folder;
  private JournalFolder store;
  private Path lock;

  @BeforeEach
  void makeWalk() throws IOException {
    store = new JournalFolder(new DataHome(folder));
    writing(store.create(NAME, HEAD)).walk().close();
    lock = folder.resolve("sessions").resolve(NAME.lockFile());
  }

  private Process appending() throws IOException {
    return AppendingChild.start(folder, NAME, 1);
  }

  /** Opens the walk while something else has the name of its lock; returns what is said. */
  private String saidWithInTheWay() {
    OpeningOutcome.Watching opened =
        assertTimeoutPreemptively(PATIENCE, () -> watching(store.open(NAME)));
    assertEquals(List.of(HEAD), bodies(opened.read()));
    return opened.why();
  }

  private static String inTheWay() {
    return ".brightmoor-900.lock must be a file, but a link, folder or pipe has that name. Remove"
        + " it, then try again.";
  }

  @Test
  void open_byManyThreadsAtOnce_letsOneWrite() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Callable<OpeningOutcome>> openings = new ArrayList<>();
      for (int i = 0; i < 32; i++) {
        openings.add(() -> new JournalFolder(new DataHome(folder)).open(NAME));
      }
      int writers = 0;
      for (Future<OpeningOutcome> opening : threads.invokeAll(openings)) {
        writers += opening.get() instanceof OpeningOutcome.Writing ? 1 : 0;
      }
      assertEquals(1, writers);
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void open_byManyProcessesAtOnce_letsOneWrite() throws Exception {
    List<Process> children = new ArrayList<>();
    try {
      for (int i = 0; i < 3; i++) {
        children.add(appending());
      }
      int writers = 0;
      for (Process child : children) {
        int first = child.getInputStream().read();
        assertTrue(first == 'k' || first == 'c', "said: " + (char) first);
        writers += first == 'k' ? 1 : 0;
      }
      assertEquals(1, writers);
    } finally {
      for (Process child : children) {
        child.destroyForcibly().waitFor();
      }
    }
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void open_throughAnotherPathToTheSameHome_isHeldToo() throws IOException {
    OpeningOutcome.Writing first = writing(store.open(NAME));
    Path other = Files.createSymbolicLink(folder.resolve("other"), folder);
    assertEquals(HELD, watching(new JournalFolder(new DataHome(other)).open(NAME)).why());
    first.walk().close();
  }

  @Test
  void open_ofTwoNamesThatAreOneFile_isHeld_andDoesNotLetGoOfTheFirst() throws Exception {
    OpeningOutcome.Writing first = writing(store.open(NAME));
    WalkName second = new WalkName("second");
    Files.createLink(lock.resolveSibling(second.lockFile()), lock);
    Files.createLink(
        lock.resolveSibling(second.journalFile()), lock.resolveSibling(NAME.journalFile()));
    assertEquals(HELD, watching(store.open(second)).why());
    String said = new String(appending().getInputStream().readAllBytes(), UTF_8);
    assertTrue(said.contains(HELD), said);
    first.walk().close();
  }

  @Test
  void open_afterTheLockFileWasRemoved_isStillHeldInThisProcess() throws IOException {
    OpeningOutcome.Writing first = writing(store.open(NAME));
    Files.delete(lock);
    assertEquals(HELD, watching(store.open(NAME)).why());
    keep(first, "{\"a\":1}");
    first.walk().close();
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void open_whereALinkHasTheNameOfTheLock_touchesNothingAndSaysSo() throws IOException {
    Path target = Files.writeString(folder.resolve("target"), "mine");
    for (Path leads : List.of(target, folder.resolve("nowhere"), lock)) {
      Files.delete(lock);
      Files.createSymbolicLink(lock, leads);
      assertEquals(inTheWay(), saidWithInTheWay());
      assertTrue(Files.isSymbolicLink(lock));
    }
    assertEquals("mine", Files.readString(target));
    assertFalse(Files.exists(folder.resolve("nowhere"), LinkOption.NOFOLLOW_LINKS));
  }

  @Test
  void open_whereAFolderHasTheNameOfTheLock_saysSo_andWritesOnceItIsGone() throws IOException {
    Files.delete(lock);
    Files.createDirectory(lock);
    assertEquals(inTheWay(), saidWithInTheWay());
    Files.delete(lock);
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void open_whereAPipeHasTheNameOfTheLock_saysSoAtOnce() throws Exception {
    Files.delete(lock);
    makePipe(lock);
    assertEquals(inTheWay(), saidWithInTheWay());
  }

  @Test
  void open_ofAJournalThatIsAPipe_isRefusedAtOnce() throws Exception {
    Path journal = lock.resolveSibling(NAME.journalFile());
    Files.delete(journal);
    makePipe(journal);
    String said = assertTimeoutPreemptively(PATIENCE, () -> Walks.refused(store.open(NAME)));
    assertEquals("brightmoor-900.jsonl is a link, folder or pipe, not a file.", said);
    assertEquals(
        List.of("brightmoor-900.jsonl is left out: it is no plain file."), store.list().leftOut());
    assertEquals(List.of(), store.list().walks());
  }

  private static void makePipe(Path path) throws Exception {
    Needs.tool("mkfifo");
    assertEquals(0, new ProcessBuilder("mkfifo", path.toString()).start().waitFor());
  }

  @Test
  void open_ofALockFileThatHoldsBytes_leavesThemAlone() throws IOException {
    byte[] old = "{\"format\":\"loadwalk-lock/1\",\"pid\":\"1\"}".getBytes(UTF_8);
    Files.write(lock, old);
    for (String left : List.of(".guard.lock", NAME.text() + ".lock", NAME.text() + ".pid")) {
      Files.write(lock.resolveSibling(left), old);
    }
    OpeningOutcome.Writing opened = writing(store.open(NAME));
    keep(opened, "{\"a\":1}");
    opened.walk().close();
    assertArrayEquals(old, Files.readAllBytes(lock));
    assertArrayEquals(old, Files.readAllBytes(lock.resolveSibling(".guard.lock")));
    assertEquals(1, store.list().walks().size());
  }

  @Test
  void open_inAFolderThatIsReadOnly_watchesAndSaysWhy() throws Exception {
    Path sessions = lock.getParent();
    Files.delete(lock);
    Files.setPosixFilePermissions(sessions, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      assertEquals(
          List.of(
              "[" + HEAD + "]",
              ".brightmoor-900.lock cannot be opened for writing: access is denied.",
              ".new.lock cannot be opened for writing: access is denied."),
          ReadOnlyChild.said(folder));
    } finally {
      Files.setPosixFilePermissions(sessions, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }
}
