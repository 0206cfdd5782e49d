package loadwalk.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import loadwalk.cli.Folders;
import loadwalk.cli.OwnerOnly;
import loadwalk.journal.StorageFault;

/**
 * Writes whole files so that a reader, or a power cut, finds the old bytes or the new, no mix. They
 * are for their owner alone.
 */
public final class AtomicFile {
  private static final Set<OpenOption> NEW_ONLY =
      Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW, LinkOption.NOFOLLOW_LINKS);

  private static final AtomicLong DRAFTS = new AtomicLong();

  private AtomicFile() {}

  /**
   * Replaces a file, or makes it.
   *
   * @throws StorageFault with a sentence for the operator; the old file is then as it was
   */
  static void write(Path file, byte[] bytes) throws StorageFault {
    Path target = file.toAbsolutePath();
    Path folder = target.getParent();
    try {
      Path draft = draft(target);
      try {
        fill(draft, bytes);
        Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(draft);
      }
      Folders.force(folder);
    } catch (IOException e) {
      throw DiskFaults.of(target, e);
    }
  }

  /**
   * Makes a file that must not be there yet, and forces it; used for what is kept aside. Where that
   * fails, no part of it is left.
   */
  public static void writeNew(Path file, byte[] bytes) throws IOException {
    try {
      fill(file, bytes);
      Folders.force(file.toAbsolutePath().getParent());
    } catch (FileAlreadyExistsException taken) {
      throw taken;
    } catch (IOException e) {
      Files.deleteIfExists(file);
      throw e;
    }
  }

  /** Forces a file that is there already: who wrote it may have been killed before that. */
  static void settle(Path file) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      channel.force(true);
    }
    Folders.force(file.toAbsolutePath().getParent());
  }

  private static Path draft(Path target) {
    String unique = ProcessHandle.current().pid() + "-" + DRAFTS.incrementAndGet();
    return target.resolveSibling("." + target.getFileName() + "." + unique + ".tmp");
  }

  private static void fill(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(file, NEW_ONLY, OwnerOnly.file())) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }
}
