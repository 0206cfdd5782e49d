package loadwalk.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * Keeps the text of a sheet beside its journal, so that to print it again the walk need not be
 * folded and laid out again.
 *
 * <p>It may be thrown away at any time. A text counts only for the same bytes of the journal and
 * the same maker, and only whole: the line ahead of it sums up all three.
 *
 * @param file where it is kept
 * @param maker what made it; another may make another text of the same journal
 */
record KeptSheet(Path file, String maker) {
  private static final String FORMAT = "loadwalk-kept-sheet/1";

  /** Hundreds of sheets; what is larger is none, and reading it could cost all memory. */
  private static final int BYTES_MAX = 8 << 20;

  /** Returns the text made of a journal, where it is there and still counts. */
  Optional<byte[]> text(byte[] journal) {
    byte[] kept = bytes();
    int from = 0;
    while (from < kept.length && kept[from] != '\n') {
      from++;
    }
    byte[] text = Arrays.copyOfRange(kept, Math.min(from + 1, kept.length), kept.length);
    return Arrays.equals(kept, written(journal, text)) ? Optional.of(text) : Optional.empty();
  }

  private byte[] bytes() {
    try {
      return Files.size(file) > BYTES_MAX ? new byte[0] : FileStorage.read(file);
    } catch (IOException none) {
      return new byte[0];
    }
  }

  /** Keeps the text made of a journal; where that fails, it is made again when it is next asked. */
  void keep(byte[] journal, byte[] text) {
    try {
      AtomicFile.write(file, written(journal, text));
    } catch (IOException full) {
      // A folder that is full or may not be written in costs time and nothing else.
      return;
    }
  }

  private byte[] written(byte[] journal, byte[] text) {
    String head = FORMAT + " " + maker + " " + sum(journal) + " " + sum(text) + "\n";
    byte[] first = head.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(first, first.length + text.length);
    System.arraycopy(text, 0, all, first.length, text.length);
    return all;
  }

  /**
   * Sums bytes up by their number and two check sums: records of a journal carry a CRC-32C of their
   * own, which could hide a change from one more of the same kind.
   */
  static String sum(byte[] bytes) {
    CRC32 one = new CRC32();
    one.update(bytes);
    CRC32C other = new CRC32C();
    other.update(bytes);
    return bytes.length
        + "-"
        + Long.toHexString(one.getValue())
        + "-"
        + Long.toHexString(other.getValue());
  }
}
