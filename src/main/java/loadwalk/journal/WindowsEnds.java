package loadwalk.journal;

import java.io.ByteArrayOutputStream;
import java.util.Optional;

/** Line ends that a program made those of Windows while it copied a journal. */
final class WindowsEnds {
  private static final byte CARRIAGE_RETURN = '\r';

  private WindowsEnds() {}

  /** Returns the bytes with the line ends of a journal, if every line has those of Windows. */
  static Optional<byte[]> made(byte[] bytes) {
    ByteArrayOutputStream usual = new ByteArrayOutputStream(bytes.length);
    boolean some = false;
    for (int i = 0; i < bytes.length; i++) {
      boolean returned = i > 0 && bytes[i - 1] == CARRIAGE_RETURN;
      if (bytes[i] == Framing.LINE_FEED && !returned) {
        return Optional.empty();
      }
      boolean ends =
          bytes[i] == CARRIAGE_RETURN && i + 1 < bytes.length && bytes[i + 1] == Framing.LINE_FEED;
      some |= ends;
      if (!ends) {
        usual.write(bytes[i]);
      }
    }
    return some ? Optional.of(usual.toByteArray()) : Optional.empty();
  }
}
