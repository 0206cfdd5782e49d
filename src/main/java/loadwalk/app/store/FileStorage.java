package loadwalk.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Objects;
import loadwalk.journal.FaultKind;
import loadwalk.journal.Framing;
import loadwalk.journal.Storage;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;

/**
 * Keeps a journal in a file.
 *
 * <p>A file that was removed or replaced still takes writes on some systems, and they are lost; so
 * each write and force also looks whether the path still leads to the file that is open.
 */
final class FileStorage implements Storage {
  /** The largest journal that is read; far more than any walk holds, and memory bears it. */
  static final long BYTES_MAX = 256L << 20;

  private static final int LINE_BYTES_MAX = Framing.BODY_BYTES_MAX + 256;

  private final Path path;
  private final Object fileKey;
  private FileChannel channel;

  private FileStorage(Path path, Object fileKey, FileChannel channel) {
    this.path = path;
    this.fileKey = fileKey;
    this.channel = channel;
  }

  /** Opens a file that is there; a link is not followed. */
  static FileStorage open(Path path) throws StorageFault {
    try {
      Object fileKey = attributes(path).fileKey();
      return new FileStorage(path, fileKey, channel(path));
    } catch (IOException e) {
      throw DiskFaults.opening(path, e);
    }
  }

  /** Reads a whole file without opening it for writing; a link is not followed. */
  static byte[] read(Path path) throws StorageFault {
    try {
      attributes(path);
      try (FileChannel channel =
          FileChannel.open(path, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
        return read(path, channel);
      }
    } catch (IOException e) {
      throw DiskFaults.reading(path, e);
    }
  }

  /** Reads a whole file where a path leads, through links. */
  static byte[] readAt(Path named) throws StorageFault {
    try {
      return read(named.toRealPath());
    } catch (IOException e) {
      throw DiskFaults.reading(named, e);
    }
  }

  /** Reads the first line of a journal, with its line feed where it has one. */
  static byte[] firstLine(Path path) throws StorageFault {
    try {
      attributes(path);
      try (FileChannel channel =
          FileChannel.open(path, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
        byte[] begin = Channels.newInputStream(channel).readNBytes(LINE_BYTES_MAX);
        int end = 0;
        while (end < begin.length && begin[end] != '\n') {
          end++;
        }
        return Arrays.copyOf(begin, Math.min(end + 1, begin.length));
      }
    } catch (IOException e) {
      throw DiskFaults.reading(path, e);
    }
  }

  @Override
  public byte[] readAll() throws IOException {
    return guarded(now -> read(path, channel));
  }

  @Override
  public long length() throws IOException {
    return guarded(BasicFileAttributes::size);
  }

  @Override
  public void append(byte[] bytes) throws IOException {
    guarded(
        now -> {
          ByteBuffer left = ByteBuffer.wrap(bytes);
          long at = now.size();
          while (left.hasRemaining()) {
            at += channel.write(left, at);
          }
          return at;
        });
  }

  @Override
  public void truncate(long length) throws IOException {
    guarded(now -> channel.truncate(length));
  }

  @Override
  public void force() throws IOException {
    guarded(
        now -> {
          channel.force(true);
          return inPlace();
        });
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }

  private interface Access<T> {
    T run(BasicFileAttributes now) throws IOException;
  }

  private <T> T guarded(Access<T> access) throws StorageFault {
    try {
      BasicFileAttributes now = inPlace();
      if (!channel.isOpen()) {
        // An interrupted thread leaves its channel closed; the file itself is still there.
        channel = channel(path);
      }
      return access.run(now);
    } catch (IOException e) {
      throw DiskFaults.of(path, e);
    }
  }

  private BasicFileAttributes inPlace() throws IOException {
    BasicFileAttributes now = attributes(path);
    if (!Objects.equals(now.fileKey(), fileKey)) {
      throw new StorageFault(
          FaultKind.GONE,
          Sentence.of("{} was replaced by another file.", path.getFileName()),
          null);
    }
    return now;
  }

  private static BasicFileAttributes attributes(Path path) throws IOException {
    BasicFileAttributes attributes =
        Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    if (!attributes.isRegularFile()) {
      throw StorageFault.broken(
          Sentence.of("{} is a link, folder or pipe, not a file.", path.getFileName()));
    }
    return attributes;
  }

  private static FileChannel channel(Path path) throws IOException {
    return FileChannel.open(
        path, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
  }

  private static byte[] read(Path path, FileChannel channel) throws IOException {
    long size = channel.size();
    if (size > BYTES_MAX) {
      throw StorageFault.broken(
          Sentence.of(
              "{} is larger than {} MiB and was not read.", path.getFileName(), BYTES_MAX >> 20));
    }
    ByteBuffer bytes = ByteBuffer.allocate((int) size);
    while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) >= 0) {
      continue;
    }
    return Arrays.copyOf(bytes.array(), bytes.position());
  }
}
