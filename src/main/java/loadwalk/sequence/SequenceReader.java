package loadwalk.sequence;

import java.nio.charset.StandardCharsets;
import loadwalk.json.FileShape;
import loadwalk.json.Format;
import loadwalk.json.Read;
import loadwalk.text.Sha256;

/** Reads a sequence and checks its meaning; comments in the file are ignored. */
public final class SequenceReader {
  /** The format of a sequence file. */
  public static final FileShape<Sequence> FILE =
      new FileShape<>(new Format("sequence", 1), "a sequence", true, Sequence.blank("", ""));

  private SequenceReader() {}

  /**
   * Reads the text of a sequence file.
   *
   * @param text the file's content
   * @param file the name used in faults
   */
  public static Read<Sequence> read(String text, String file) {
    return read(text.getBytes(StandardCharsets.UTF_8), file);
  }

  /**
   * Reads the bytes of a sequence file.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  public static Read<Sequence> read(byte[] bytes, String file) {
    return FILE.read(bytes, file, Sequence.blank("", Sha256.of(bytes)));
  }

  /**
   * Reads the bytes of a sequence file that is found by name, so the name inside must match the
   * file name.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   * @param name the file's name without folder and extension
   */
  public static Read<Sequence> readNamed(byte[] bytes, String file, String name) {
    return FILE.read(bytes, file, Sequence.blank(name, Sha256.of(bytes)));
  }
}
