package loadwalk.report.page;

import java.util.Base64;
import java.util.Optional;

/**
 * A photo without the metadata that cameras add: place, time, names of people.
 *
 * <p>PNG and JPEG are recognised by their first bytes, never by the file name.
 */
public final class Picture {
  /** The largest photo accepted, bytes. */
  public static final long MOST_BYTES = 20L << 20;

  /** The most points that a photo may have, millions. */
  public static final long MOST_MILLION_POINTS = PictureSize.MOST_POINTS / 1_000_000;

  private final String mediaType;
  private final byte[] bytes;

  private Picture(String mediaType, byte[] bytes) {
    this.mediaType = mediaType;
    this.bytes = bytes;
  }

  /**
   * Reads a photo and drops its metadata.
   *
   * @return empty if the bytes are not a complete PNG or JPEG, or it is larger than {@link
   *     #MOST_BYTES} or {@link #MOST_MILLION_POINTS}
   */
  public static Optional<Picture> of(byte[] file) {
    if (file.length > MOST_BYTES) {
      return Optional.empty();
    }
    return PngParts.isPng(file)
        ? PngParts.stripped(file).map(clean -> new Picture("image/png", clean))
        : JpegParts.stripped(file).map(clean -> new Picture("image/jpeg", clean));
  }

  /** Returns {@code image/png} or {@code image/jpeg}. */
  public String mediaType() {
    return mediaType;
  }

  /** Returns the file name ending for this type. */
  public String ending() {
    return mediaType.equals("image/png") ? ".png" : ".jpg";
  }

  /** Returns the file's bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Returns the picture as a data address, which contains the whole file (RFC 2397). */
  String dataAddress() {
    return "data:" + mediaType + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
