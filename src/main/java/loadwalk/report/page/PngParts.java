package loadwalk.report.page;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/**
 * Takes a PNG apart into its chunks (W3C PNG, Third Edition, 5) and keeps those that make up the
 * picture and its colours.
 */
final class PngParts {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int AROUND_DATA = 12;
  private static final Set<String> KEPT =
      Set.of(
          "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD",
          "pHYs");

  private PngParts() {}

  static boolean isPng(byte[] file) {
    return file.length > SIGNATURE.length
        && ByteBuffer.wrap(file, 0, SIGNATURE.length).equals(ByteBuffer.wrap(SIGNATURE));
  }

  /**
   * Returns the file up to its end chunk without texts, times and places; empty if it is cut short.
   */
  static Optional<byte[]> stripped(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(file.length);
    out.writeBytes(SIGNATURE);
    int at = SIGNATURE.length;
    while (at + AROUND_DATA <= file.length) {
      int length = ByteBuffer.wrap(file, at, 4).getInt();
      String type = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
      if (length < 0 || length > file.length - at - AROUND_DATA) {
        return Optional.empty();
      }
      if (at == SIGNATURE.length && !type.equals("IHDR")) {
        return Optional.empty();
      }
      if (KEPT.contains(type)) {
        out.write(file, at, length + AROUND_DATA);
      }
      if (type.equals("IEND")) {
        return Optional.of(out.toByteArray());
      }
      at += length + AROUND_DATA;
    }
    return Optional.empty();
  }
}
