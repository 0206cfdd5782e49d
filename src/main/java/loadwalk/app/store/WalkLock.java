package loadwalk.app.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Holds a walk for this process by a lock of the operating system, for as long as the walk is open.
 * A process that is killed holds nothing.
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
        return HELD.contains(file) ? Optional.empty() : taken(file);
      } catch (IOException e) {
        throw DiskFaults.of(named, e);
      }
    }
  }

  private static Optional<WalkLock> taken(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.WRITE, StandardOpenOption.CREATE, LinkOption.NOFOLLOW_LINKS);
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
