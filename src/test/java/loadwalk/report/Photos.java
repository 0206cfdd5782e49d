package loadwalk.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Makes photos for tests, with the metadata that cameras and editors write. */
public final class Photos {
  /** What must never reach a sheet. */
  public static final String SECRET = "GPS 47.1234 N 8.5678 E";

  private Photos() {}

  private static byte[] drawn(String format) {
    BufferedImage image = new BufferedImage(64, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.ORANGE);
    pen.fillRect(8, 8, 30, 20);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Returns a PNG with a text, an Exif chunk, a time, and more behind its end. */
  public static byte[] png() {
    byte[] plain = drawn("png");
    int afterHeader = 8 + 12 + 13;
    return joined(
        Arrays.copyOf(plain, afterHeader),
        chunk("tEXt", "Comment\0" + SECRET),
        chunk("eXIf", "MM\0*\0\0\0\10" + SECRET),
        chunk("tIME", "\7\352\1\1\0\0\0"),
        Arrays.copyOfRange(plain, afterHeader, plain.length),
        SECRET.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** Returns a PNG of a header, data and an end, as bytes that no library chose. */
  public static byte[] smallest() {
    byte[] signature = "\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1);
    return joined(signature, header(1, 1), chunk("IDAT", "def"), chunk("IEND", ""));
  }

  /** Returns a PNG that states a size, with so many bytes of data. */
  public static byte[] stating(int wide, int high, int data) {
    byte[] signature = Arrays.copyOf(smallest(), 8);
    return joined(
        signature, header(wide, high), chunk("IDAT", "d".repeat(data)), chunk("IEND", ""));
  }

  private static byte[] header(int wide, int high) {
    byte[] size = ByteBuffer.allocate(8).putInt(wide).putInt(high).array();
    return chunk("IHDR", new String(size, StandardCharsets.ISO_8859_1) + "\10\0\0\0\0");
  }

  /** Returns a JPEG turned a quarter, with places, a comment, and a second file behind its end. */
  public static byte[] jpeg() {
    byte[] plain = drawn("jpg");
    ByteBuffer exif = ByteBuffer.allocate(200);
    exif.put("Exif\0\0II*\0".getBytes(StandardCharsets.ISO_8859_1)).put(new byte[] {8, 0, 0, 0});
    exif.put(new byte[] {2, 0, 0x0f, 1, 2, 0, 1, 0, 0, 0, 'x', 0, 0, 0});
    exif.put(new byte[] {0x12, 1, 3, 0, 1, 0, 0, 0, 6, 0, 0, 0, 0, 0, 0, 0});
    exif.put(SECRET.getBytes(StandardCharsets.ISO_8859_1));
    return joined(
        Arrays.copyOf(plain, 2),
        segment(0xe1, exif.array()),
        segment(0xe1, ("http://ns.adobe.com/xap/1.0/\0" + SECRET).getBytes(StandardCharsets.UTF_8)),
        segment(0xed, SECRET.getBytes(StandardCharsets.UTF_8)),
        segment(0xfe, SECRET.getBytes(StandardCharsets.UTF_8)),
        Arrays.copyOfRange(plain, 2, plain.length),
        SECRET.getBytes(StandardCharsets.UTF_8));
  }

  /** Returns a JPEG that states another size than it has. */
  public static byte[] jpeg(int wide, int high) {
    byte[] bytes = drawn("jpg");
    int at = 2;
    while ((bytes[at + 1] & 0xff) != 0xc0) {
      at += 2 + ((bytes[at + 2] & 0xff) << 8 | bytes[at + 3] & 0xff);
    }
    ByteBuffer.wrap(bytes, at + 5, 4).putShort((short) high).putShort((short) wide);
    return bytes;
  }

  private static byte[] segment(int marker, byte[] body) {
    int length = body.length + 2;
    byte[] head = {(byte) 0xff, (byte) marker, (byte) (length >> 8), (byte) length};
    return joined(head, body);
  }

  private static byte[] chunk(String type, String text) {
    byte[] body = (type + text).getBytes(StandardCharsets.ISO_8859_1);
    CRC32 crc = new CRC32();
    crc.update(body);
    return joined(
        ByteBuffer.allocate(4).putInt(text.length()).array(),
        body,
        ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Arrays.stream(parts).forEach(out::writeBytes);
    return out.toByteArray();
  }
}
