package loadwalk.app.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import loadwalk.cli.OwnerOnly;
import loadwalk.journal.FaultKind;
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
  private static final Set<Path> HELD = new HashSet<>();

  private final Path file;
  private final FileChannel channel;

  private WalkLock(Path file, FileChannel channel) {
    this.file = file;
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

  /** Two names are one file where a disk does not tell capitals apart. */
  private static boolean isHeldHere(Path file) throws IOException {
    if (HELD.contains(file) || !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return HELD.contains(file);
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new StorageFault(
          FaultKind.BROKEN,
          Sentence.of(
              "{} must be a file, but a link, folder or pipe has that name. Remove it, then try"
                  + " again.",
              file.getFileName()),
          null);
    }
    for (Path held : HELD) {
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
    HELD.add(file);
    return Optional.of(new WalkLock(file, channel));
  }

  /** Lets the walk go. */
  @Override
  public void close() throws IOException {
    synchronized (HELD) {
      HELD.remove(file);
      channel.close();
    }
  }
}
