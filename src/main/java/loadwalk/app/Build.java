package loadwalk.app;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/** Tells this build of the program from every other. */
final class Build {
  private static final int END_BYTES = 22;
  private static final int END_SIGNATURE = 0x06054b50;
  private static final int SIZE_AT = 12;
  private static final int OFFSET_AT = 16;

  private Build() {}

  /**
   * Names the build by the content of its jar, and the Java and the system that run it, whose
   * arithmetic and ends of lines may differ; empty where the program runs from loose classes, which
   * may change at any time.
   */
  static Optional<String> identity() {
    try {
      CodeSource source = Build.class.getProtectionDomain().getCodeSource();
      Optional<String> jar = ofJar(Path.of(source.getLocation().toURI()));
      return jar.isPresent() ? Optional.of(jar.get() + " " + machine()) : jar;
    } catch (IOException | URISyntaxException unreadable) {
      return Optional.empty();
    }
  }

  private static String machine() {
    return System.getProperty("java.vm.version")
        + " "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.arch");
  }

  /**
   * Sums up the central directory at the end of a jar, which holds the name, size and CRC-32 of
   * every file in it (APPNOTE.TXT 6.3.10, 4.3.12 and 4.3.16); empty where it does not end plainly.
   */
  static Optional<String> ofJar(Path jar) throws IOException {
    if (!jar.toString().endsWith(".jar")) {
      return Optional.empty();
    }
    try (RandomAccessFile file = new RandomAccessFile(jar.toFile(), "r")) {
      long length = file.length();
      if (length < END_BYTES) {
        return Optional.empty();
      }
      ByteBuffer end = ByteBuffer.wrap(read(file, length - END_BYTES, END_BYTES));
      end.order(ByteOrder.LITTLE_ENDIAN);
      long size = Integer.toUnsignedLong(end.getInt(SIZE_AT));
      long offset = Integer.toUnsignedLong(end.getInt(OFFSET_AT));
      boolean plain = end.getInt(0) == END_SIGNATURE && offset + size == length - END_BYTES;
      return plain
          ? Optional.of(KeptSheet.sum(read(file, offset, Math.toIntExact(size))))
          : Optional.empty();
    }
  }

  private static byte[] read(RandomAccessFile file, long from, int count) throws IOException {
    byte[] bytes = new byte[count];
    file.seek(from);
    file.readFully(bytes);
    return bytes;
  }
}
