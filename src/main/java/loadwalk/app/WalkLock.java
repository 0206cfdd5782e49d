package loadwalk.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import loadwalk.journal.StorageFault;

/**
 * Holds a walk for one process by a lock file that names the process.
 *
 * <p>Looking whether a lock is stale and replacing it is two acts, and two programs could do them
 * at once; so they are done under a lock of the operating system on a file of their own, held for
 * that moment only.
 */
final class WalkLock {
  private static final String GUARD = ".guard.lock";
  private static final Object ONE_IN_THIS_PROCESS = new Object();

  private final Path file;
  private final byte[] content;

  private WalkLock(Path file, byte[] content) {
    this.file = file;
    this.content = content;
  }

  /** What came of trying to take a walk. */
  sealed interface Grip {
    /** Returns the lock where the walk is ours. */
    Optional<WalkLock> held();

    /** Returns who has it, where it is not. */
    Optional<String> refusal();

    /**
     * The walk is ours.
     *
     * @param lock to be let go at the end
     */
    record Taken(WalkLock lock) implements Grip {
      @Override
      public Optional<WalkLock> held() {
        return Optional.of(lock);
      }

      @Override
      public Optional<String> refusal() {
        return Optional.empty();
      }
    }

    /**
     * Somebody has it.
     *
     * @param who a sentence that names the process
     */
    record Refused(String who) implements Grip {
      @Override
      public Optional<WalkLock> held() {
        return Optional.empty();
      }

      @Override
      public Optional<String> refusal() {
        return Optional.of(who);
      }
    }
  }

  static Grip take(Path file, Processes processes, String since) throws IOException {
    return guarded(file, () -> takeUnderGuard(file, processes, since));
  }

  /** Lets the walk go; a lock that somebody else has taken since is left alone. */
  void letGo() throws IOException {
    guarded(
        file,
        () -> {
          Optional<byte[]> now = content(file);
          return now.isPresent() && Arrays.equals(now.get(), content) && Files.deleteIfExists(file);
        });
  }

  private static Grip takeUnderGuard(Path file, Processes processes, String since)
      throws IOException {
    Optional<byte[]> before = content(file);
    Optional<Holder> holder = before.flatMap(Holder::read);
    if (before.isPresent() && holder.isEmpty()) {
      return new Grip.Refused(
          "The lock file "
              + file.getFileName()
              + " cannot be read: delete it if no other Loadwalk has this walk open.");
    }
    if (holder.isPresent() && holder.get().lives(processes)) {
      return new Grip.Refused(who(holder.get(), processes));
    }
    String birth = processes.birth(processes.own()).orElse(Processes.UNKNOWN_BIRTH);
    byte[] content = new Holder(processes.own(), birth, since).written();
    AtomicFile.write(file, content);
    return new Grip.Taken(new WalkLock(file, content));
  }

  private static String who(Holder holder, Processes processes) {
    return holder.pid() == processes.own()
        ? "This Loadwalk has the walk open already, since " + holder.since() + "."
        : "Another Loadwalk has this walk open: process "
            + holder.pid()
            + ", since "
            + holder.since()
            + ".";
  }

  private static Optional<byte[]> content(Path file) throws IOException {
    try {
      return Optional.of(FileStorage.read(file));
    } catch (StorageFault e) {
      if (e.getCause() instanceof NoSuchFileException) {
        return Optional.empty();
      }
      throw e;
    }
  }

  private interface Act<T> {
    T run() throws IOException;
  }

  private static <T> T guarded(Path file, Act<T> act) throws IOException {
    Path guard = file.resolveSibling(GUARD);
    synchronized (ONE_IN_THIS_PROCESS) {
      try (FileChannel channel =
              FileChannel.open(
                  guard,
                  StandardOpenOption.WRITE,
                  StandardOpenOption.CREATE,
                  LinkOption.NOFOLLOW_LINKS);
          FileLock alone = channel.lock()) {
        if (!alone.isValid()) {
          throw new IOException("the guard of the lock files could not be locked");
        }
        return act.run();
      } catch (IOException e) {
        throw DiskFaults.of(file, e);
      }
    }
  }
}
