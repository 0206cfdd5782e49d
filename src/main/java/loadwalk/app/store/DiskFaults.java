package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;

/** Finds out why the disk refused, by looking at the disk and not at the wording of the error. */
public final class DiskFaults {
  /** Less room than this after a failed write means that the write found none. */
  private static final long ROOM_BYTES_MIN = 16 * 1024;

  private DiskFaults() {}

  public static StorageFault of(Path file, IOException e) {
    if (e instanceof StorageFault known) {
      return known;
    }
    Path folder = file.toAbsolutePath().getParent();
    FaultKind kind = kind(folder, e);
    return new StorageFault(kind, sentence(kind, file, e), e);
  }

  /** Returns the sentence of a fault, made into one where the system gave only its own words. */
  public static String sentence(IOException e) {
    return e instanceof StorageFault ? e.getMessage() : "The disk failed: " + reason(e) + ".";
  }

  private static FaultKind kind(Path folder, IOException e) {
    if (e instanceof NoSuchFileException || !Files.isDirectory(folder)) {
      return FaultKind.GONE;
    }
    if (e instanceof AccessDeniedException) {
      return FaultKind.READ_ONLY;
    }
    try {
      FileStore store = Files.getFileStore(folder);
      if (store.isReadOnly()) {
        return FaultKind.READ_ONLY;
      }
      return store.getUsableSpace() < ROOM_BYTES_MIN ? FaultKind.FULL : FaultKind.BROKEN;
    } catch (IOException unknown) {
      return FaultKind.BROKEN;
    }
  }

  private static String sentence(FaultKind kind, Path file, IOException e) {
    String name = String.valueOf(file.getFileName());
    return switch (kind) {
      case FULL -> "The disk is full, " + name + " was not written: make room, then try again.";
      case READ_ONLY ->
          name + " was not written: its folder or disk may only be read by this program.";
      case GONE -> name + " was not written: the file or its folder is no longer there.";
      case CHANGED, BROKEN -> "The disk failed on " + name + ": " + reason(e) + ".";
    };
  }

  private static String reason(IOException e) {
    String message = e.getMessage();
    return message == null ? e.getClass().getSimpleName() : message;
  }
}
