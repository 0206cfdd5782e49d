package loadwalk.journal;

import java.util.HexFormat;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * Names bytes by their number and two sums over all of them.
 *
 * <p>CRC-32C and CRC-32 together are 64 bits: every change of one run of up to 64 bits is seen, and
 * any other is missed by chance once in 2^64. Processors compute both faster than a disk reads,
 * which SHA-256 is not without the optimising compiler. They are no seal against somebody who sets
 * out to forge; whoever could forge a sum here can write the journal it stands for as well.
 */
public final class ByteSum {
  private ByteSum() {}

  /** Returns the name of the bytes of all parts, one behind the other. */
  public static String of(byte[]... parts) {
    CRC32C first = new CRC32C();
    CRC32 second = new CRC32();
    long length = 0;
    for (byte[] part : parts) {
      first.update(part);
      second.update(part);
      length += part.length;
    }
    HexFormat hex = HexFormat.of();
    return Long.toHexString(length)
        + '-'
        + hex.toHexDigits((int) first.getValue())
        + hex.toHexDigits((int) second.getValue());
  }
}
