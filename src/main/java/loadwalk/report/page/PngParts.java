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
  private static final int HEADER_BYTES = 13;

  /** Deflate makes at most so many bytes out of one (zlib, technical details). */
  private static final long MOST_INFLATED = 1032;

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
   * Returns the file up to its end chunk without texts, times and places; empty if it is cut short
   * or states a size that is none, or that its data cannot fill.
   */
  static Optional<byte[]> stripped(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(file.length);
    out.writeBytes(SIGNATURE);
    int at = SIGNATURE.length;
    long data = 0;
    while (at + AROUND_DATA <= file.length) {
      int length = ByteBuffer.wrap(file, at, 4).getInt();
      String type = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
      if (length < 0 || length > file.length - at - AROUND_DATA) {
        return Optional.empty();
      }
      if (at == SIGNATURE.length && !(type.equals("IHDR") && length == HEADER_BYTES)) {
        return Optional.empty();
      }
      data += type.equals("IDAT") ? length : 0;
      if (KEPT.contains(type)) {
        out.write(file, at, length + AROUND_DATA);
      }
      if (type.equals("IEND")) {
        return isFilled(file, data) ? Optional.of(out.toByteArray()) : Optional.empty();
      }
      at += length + AROUND_DATA;
    }
    return Optional.empty();
  }

  /** Tells whether there can be a bit or more, in so many bytes of data, for each point stated. */
  private static boolean isFilled(byte[] file, long data) {
    ByteBuffer header = ByteBuffer.wrap(file, SIGNATURE.length + 8, HEADER_BYTES);
    long wide = Integer.toUnsignedLong(header.getInt());
    long high = Integer.toUnsignedLong(header.getInt());
    return PictureSize.isPossible(wide, high)
        && high * ((wide + Byte.SIZE - 1) / Byte.SIZE) <= MOST_INFLATED * data;
  }
}
