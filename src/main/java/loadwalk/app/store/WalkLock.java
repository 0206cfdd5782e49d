package loadwalk.app.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import loadwalk.cli.OwnerOnly;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;

/**
 * Holds a walk for this process by a lock of the operating system, for as long as the walk is open.
 * A process that is killed holds nothing, and nobody ever waits for a lock.
 *
 * <p>The lock is on an empty file beside the journal. On the journal itself it would keep others
 * from reading on Windows, and elsewhere it would go as soon as this process had read the journal
 * once more. The file stays: another process could lock it in the moment in which it is deleted.
 */
final class WalkLock implements Closeable {
  /** A second channel on a file, closed, would let go of the lock of the first. */
  private static final Map<Path, WalkLock> HELD = new HashMap<>();

  private final Path file;
  private final Object fileKey;
  private final FileChannel channel;

  private WalkLock(Path file, Object fileKey, FileChannel channel) {
    this.file = file;
    this.fileKey = fileKey;
    this.channel = channel;
  }

  /** Takes a lock; empty where it is held already, by another process or in this one. */
  static Optional<WalkLock> take(Path named) throws IOException {
    synchronized (HELD) {
      try {
        Path file = named.getParent().toRealPath().resolve(named.getFileName());
        return isHeldHere(file) ? Optional.empty() : taken(file);
      } catch (IOException e) {
        throw DiskFaults.opening(named, e);
      }
    }
  }

  /**
   * Takes a lock in place of one that is held: that one itself, where it is the lock of the same
   * walk and its file is still there. The other is to be closed once it is no longer needed.
   */
  static Optional<WalkLock> takeInstead(Path named, WalkLock mine) throws IOException {
    synchronized (HELD) {
      Path file = named.getParent().toRealPath().resolve(named.getFileName());
      if (!file.equals(mine.file)) {
        return take(named);
      }
      if (mine.isInPlace()) {
        return Optional.of(mine);
      }
      // Whoever makes the file anew could lock it: the one that is held locks nobody out.
      HELD.remove(file, mine);
      return take(named);
    }
  }

  private boolean isInPlace() throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Objects.equals(key(file), fileKey);
  }

  private static Object key(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
        .fileKey();
  }

  /** Two names are one file where a disk does not tell capitals apart. */
  private static boolean isHeldHere(Path file) throws IOException {
    if (HELD.containsKey(file) || !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return HELD.containsKey(file);
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw StorageFault.broken(
          Sentence.of(
              "{} must be a file, but a link, folder or pipe has that name. Remove it, then try"
                  + " again.",
              file.getFileName()));
    }
    for (Path held : HELD.keySet()) {
      if (Files.exists(held) && Files.isSameFile(held, file)) {
        return true;
      }
    }
    return false;
  }

  private static Optional<WalkLock> taken(Path file) throws IOException {
    // Opened for reading too, so that a pipe set there this very moment cannot make it wait.
    FileChannel channel =
        FileChannel.open(
            file,
            Set.of(
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                StandardOpenOption.CREATE,
                LinkOption.NOFOLLOW_LINKS),
            OwnerOnly.file());
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } finally {
      if (lock == null) {
        channel.close();
      }
    }
    if (lock == null) {
      return Optional.empty();
    }
    WalkLock taken = new WalkLock(file, key(file), channel);
    HELD.put(file, taken);
    return Optional.of(taken);
  }

  /** Lets the walk go. */
  @Override
  public void close() throws IOException {
    synchronized (HELD) {
      HELD.remove(file, this);
      channel.close();
    }
  }
}
