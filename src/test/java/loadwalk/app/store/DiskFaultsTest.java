package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loadwalk.Needs;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskFaultsTest {
  @TempDir Path folder;

  private StorageFault written(IOException e) {
    return DiskFaults.of(folder.resolve("a.jsonl"), e);
  }

  private static void assertFault(FaultKind kind, String sentence, StorageFault fault) {
    assertEquals(kind, fault.kind());
    assertEquals(sentence, fault.getMessage());
  }

  @Test
  void of_goesByTheErrorsClass_whateverItsWordsSay() {
    assertFault(
        FaultKind.READ_ONLY,
        "a.jsonl was not written: the file, its folder or the disk is read-only.",
        written(new AccessDeniedException("/x", null, "No space left on device")));
    assertFault(
        FaultKind.GONE,
        "a.jsonl was not written: the file or its folder is gone.",
        written(new NoSuchFileException("/x")));
    assertFault(
        FaultKind.BROKEN,
        "The disk failed on a.jsonl: Read-only file system.",
        written(new FileSystemException("/x", null, "Read-only file system")));
    assertFault(
        FaultKind.GONE,
        "b was not written: the file or its folder is gone.",
        DiskFaults.of(folder.resolve("none").resolve("b"), new IOException("any")));
  }

  /** A store of the system that has no room whoever asks. */
  @Test
  void of_aDiskWithoutRoom_saysThatItIsFull() {
    Path full = Path.of("/proc/self");
    Needs.that(Files.isDirectory(full), "this system has no /proc");
    assertFault(
        FaultKind.FULL,
        "The disk is full; a.jsonl was not written. Make room, then try again.",
        DiskFaults.of(full.resolve("a.jsonl"), new IOException("any")));
  }

  @Test
  void of_aFaultThatIsKnown_leavesItAsItIs() {
    StorageFault full = new StorageFault(FaultKind.FULL, "The disk is full.", null);
    assertSame(full, written(full));
    assertSame(full, DiskFaults.reading(folder, full));
    assertEquals("The disk is full.", DiskFaults.sentence(full));
  }

  @Test
  void opening_speaksOfOpening_unlessTheDiskIsFull() {
    Path file = folder.resolve("a.jsonl");
    assertFault(
        FaultKind.READ_ONLY,
        "a.jsonl cannot be opened for writing: access is denied.",
        DiskFaults.opening(file, new AccessDeniedException("/x")));
    assertFault(
        FaultKind.GONE,
        "a.jsonl cannot be opened for writing: it is not there.",
        DiskFaults.opening(file, new NoSuchFileException("/x")));
    Path full = Path.of("/proc/self");
    Needs.that(Files.isDirectory(full), "this system has no /proc");
    assertFault(
        FaultKind.FULL,
        "The disk is full; a.jsonl was not written. Make room, then try again.",
        DiskFaults.opening(full.resolve("a.jsonl"), new IOException("any")));
  }

  @Test
  void reading_speaksOfReading() {
    Path file = folder.resolve("a.jsonl");
    assertFault(
        FaultKind.BROKEN,
        "a.jsonl cannot be read: access is denied.",
        DiskFaults.reading(file, new AccessDeniedException("/x")));
    assertFault(
        FaultKind.GONE,
        "a.jsonl cannot be read: it is not there.",
        DiskFaults.reading(file, new NoSuchFileException("/x")));
  }

  @Test
  void sentence_isWholeForEveryError_andShowsNothingThatSteersATerminal() {
    assertEquals("There is no file /x.", DiskFaults.sentence(new NoSuchFileException("/x")));
    assertEquals("Access to /x is denied.", DiskFaults.sentence(new AccessDeniedException("/x")));
    assertEquals(
        "The disk failed on /x: no room.",
        DiskFaults.sentence(new FileSystemException("/x", null, "no room")));
    assertEquals("The disk failed: no room.", DiskFaults.sentence(new IOException("no room")));
    assertEquals("The disk failed: IOException.", DiskFaults.sentence(new IOException()));
    assertEquals(
        "The disk failed on a\\u001b[2J: b\\u0007.",
        DiskFaults.sentence(new FileSystemException("a\u001b[2J", null, "b\u0007")));
  }
}
