package loadwalk.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import loadwalk.cli.OwnerOnly;
import loadwalk.journal.Witness;
import loadwalk.journal.WitnessFile;

/**
 * Keeps the witness of a journal in a hidden file beside it. It is opened anew each time, so that
 * one that was taken away is there again with the next record.
 *
 * @param path the file
 */
record WitnessOnDisk(Path path) implements WitnessFile {
  /** A reader may look while the writer is at it; then the next look finds it whole. */
  private static final int LOOKS = 3;

  /** Returns the witness of a journal that lies anywhere. */
  static WitnessOnDisk beside(Path journal) {
    String stem = WalkName.stem(String.valueOf(journal.getFileName()));
    return new WitnessOnDisk(journal.resolveSibling(WalkName.endFile(stem)));
  }

  /** Reads it; what cannot be read, or is no file, says nothing that could be believed. */
  Witness read() {
    Witness found = Witness.SPOILED;
    for (int look = 1; look <= LOOKS && found.equals(Witness.SPOILED); look++) {
      found = look();
    }
    return found;
  }

  private Witness look() {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return Witness.NONE;
    }
    if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      return Witness.SPOILED;
    }
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
      ByteBuffer bytes = ByteBuffer.allocate(Witness.BYTES_MAX);
      while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
        continue;
      }
      byte[] read = new byte[bytes.position()];
      bytes.flip().get(read);
      return Witness.read(read);
    } catch (IOException unreadable) {
      return Witness.SPOILED;
    }
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            path,
            Set.of(
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                StandardOpenOption.CREATE,
                LinkOption.NOFOLLOW_LINKS),
            OwnerOnly.file())) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left, left.position());
      }
      if (channel.size() > bytes.length) {
        channel.truncate(bytes.length);
      }
    }
  }

  @Override
  public void force() throws IOException {
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      channel.force(false);
    }
  }
}
