package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Finds out why the disk refused, by the error's class and the disk, never by its wording. */
public final class DiskFaults {
  /** Less room than this after a failed write means that the write found none. */
  private static final long ROOM_BYTES_MIN = 16 * 1024;

  private DiskFaults() {}

  /** Returns the fault of a file that was to be written. */
  public static StorageFault of(Path file, IOException e) {
    if (e instanceof StorageFault known) {
      return known;
    }
    FaultKind kind = kind(file.toAbsolutePath().getParent(), e);
    return new StorageFault(kind, unwritten(kind, name(file), e), e);
  }

  /** Returns the fault of a file that was to be opened, so that it can be written on later. */
  static StorageFault opening(Path file, IOException e) {
    if (e instanceof StorageFault known) {
      return known;
    }
    FaultKind kind = kind(file.toAbsolutePath().getParent(), e);
    String sentence =
        kind == FaultKind.FULL
            ? unwritten(kind, name(file), e)
            : Sentence.of("{} cannot be opened for writing: {}.", name(file), reason(e));
    return new StorageFault(kind, sentence, e);
  }

  /** Returns the fault of a file that was to be read. */
  static StorageFault reading(Path file, IOException e) {
    if (e instanceof StorageFault known) {
      return known;
    }
    FaultKind kind = e instanceof NoSuchFileException ? FaultKind.GONE : FaultKind.BROKEN;
    return new StorageFault(kind, Sentence.of("{} cannot be read: {}.", name(file), reason(e)), e);
  }

  /** Returns the sentence of a fault, made into one where the system gave only its own words. */
  public static String sentence(IOException e) {
    if (e instanceof StorageFault) {
      return e.getMessage();
    }
    if (!(e instanceof FileSystemException refused) || refused.getFile() == null) {
      return Sentence.of("The disk failed: {}.", reason(e));
    }
    String name = Visible.name(refused.getFile());
    if (e instanceof NoSuchFileException) {
      return Sentence.of("There is no file {}.", name);
    }
    return e instanceof AccessDeniedException
        ? Sentence.of("Access to {} is denied.", name)
        : Sentence.of("The disk failed on {}: {}.", name, reason(e));
  }

  /** Returns why, in words that stand inside a sentence. */
  public static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "something of that name is in the way";
    }
    String said = e instanceof FileSystemException refused ? refused.getReason() : e.getMessage();
    return said == null ? e.getClass().getSimpleName() : Visible.sentence(said);
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

  private static String unwritten(FaultKind kind, String name, IOException e) {
    return switch (kind) {
      case FULL ->
          Sentence.of("The disk is full; {} was not written. Make room, then try again.", name);
      case READ_ONLY ->
          Sentence.of("{} was not written: the file, its folder or the disk is read-only.", name);
      case GONE -> Sentence.of("{} was not written: the file or its folder is gone.", name);
      case CHANGED, BROKEN -> Sentence.of("The disk failed on {}: {}.", name, reason(e));
    };
  }

  private static String name(Path file) {
    return Visible.name(String.valueOf(file.getFileName()));
  }
}
