package loadwalk.text;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Names bytes by their SHA-256 (FIPS 180-4), as people compare it: 64 hexadecimal digits. */
public final class Sha256 {
  private Sha256() {}

  /** Returns the name of bytes. */
  public static String of(byte[] bytes) {
    MessageDigest digest = digest();
    digest.update(bytes);
    return of(digest);
  }

  /** Returns the name of the bytes that a digest was given, which begins anew. */
  public static String of(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Returns a digest, for bytes that come in pieces. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
