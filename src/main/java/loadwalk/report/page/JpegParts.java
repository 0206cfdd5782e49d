package loadwalk.report.page;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/**
 * Takes a JPEG apart into its segments (ITU-T T.81, annex B) and keeps those that make up the
 * picture and its colours. Of the camera's metadata it keeps only which side is up.
 */
final class JpegParts {
  private static final int START = 0xd8;
  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int FIRST_FRAME = 0xc0;
  private static final int LAST_FRAME = 0xcf;
  private static final Set<Integer> NO_FRAMES = Set.of(0xc4, 0xc8, 0xcc);
  private static final int COMMENT = 0xfe;
  private static final int FIRST_APP = 0xe0;
  private static final int EXIF_APP = 0xe1;
  private static final int COLOUR_APP = 0xe2;
  private static final int ADOBE_APP = 0xee;
  private static final int LAST_APP = 0xef;
  private static final int FIRST_RESTART = 0xd0;
  private static final int LAST_RESTART = 0xd7;
  private static final String EXIF = "Exif\0\0";
  private static final int ORIENTATION = 0x0112;
  private static final int TURNED_MOST = 8;
  private static final int ENTRY_BYTES = 12;

  private final byte[] file;
  private final ByteArrayOutputStream out;
  private int turned = 1;
  private boolean sized;

  private JpegParts(byte[] file) {
    this.file = file;
    this.out = new ByteArrayOutputStream(file.length);
  }

  /**
   * Returns the file up to its end mark without metadata; empty if it is not a JPEG, is cut short
   * or states a size that is none.
   */
  static Optional<byte[]> stripped(byte[] file) {
    boolean starts = file.length > 4 && marker(file, 0) == START && (file[2] & 0xff) == 0xff;
    return starts ? new JpegParts(file).stripped() : Optional.empty();
  }

  private static int marker(byte[] file, int at) {
    return (file[at] & 0xff) == 0xff ? file[at + 1] & 0xff : -1;
  }

  private Optional<byte[]> stripped() {
    int at = 2;
    boolean scanned = false;
    while (at + 1 < file.length) {
      int marker = marker(file, at);
      if (marker == 0xff) {
        at++;
        continue;
      }
      if (marker == END) {
        return scanned ? Optional.of(whole()) : Optional.empty();
      }
      if (marker < 0 || at + 3 >= file.length) {
        return Optional.empty();
      }
      int length = (file[at + 2] & 0xff) << 8 | file[at + 3] & 0xff;
      if (length < 2 || at + 2 + length > file.length) {
        return Optional.empty();
      }
      int next = at + 2 + length;
      if (isFrame(marker) && !takesSize(at + 4, length - 2) || marker == SCAN && !sized) {
        return Optional.empty();
      }
      if (marker == SCAN) {
        next = endOfScan(next);
        scanned = true;
      }
      if (keeps(marker, at + 4, length - 2)) {
        out.write(file, at, next - at);
      }
      at = next;
    }
    return Optional.empty();
  }

  private static boolean isFrame(int marker) {
    return marker >= FIRST_FRAME && marker <= LAST_FRAME && !NO_FRAMES.contains(marker);
  }

  /** Reads the height and width of a frame header; tells whether a picture can have them. */
  private boolean takesSize(int at, int length) {
    sized =
        length >= 5
            && PictureSize.isPossible(
                (file[at + 3] & 0xff) << 8 | file[at + 4] & 0xff,
                (file[at + 1] & 0xff) << 8 | file[at + 2] & 0xff);
    return sized;
  }

  /** Returns where the next segment after a scan's data begins. */
  private int endOfScan(int from) {
    for (int at = from; at + 1 < file.length; at++) {
      int marker = marker(file, at);
      boolean data = marker <= 0 || (marker >= FIRST_RESTART && marker <= LAST_RESTART);
      if (!data && marker != 0xff) {
        return at;
      }
    }
    return file.length;
  }

  private boolean keeps(int marker, int at, int length) {
    if (marker == EXIF_APP) {
      turned = turned == 1 ? orientation(at, length) : turned;
    }
    if (marker == COLOUR_APP) {
      return startsWith("ICC_PROFILE\0", at, length);
    }
    boolean app = marker > FIRST_APP && marker <= LAST_APP && marker != ADOBE_APP;
    return !app && marker != COMMENT;
  }

  private boolean startsWith(String word, int at, int length) {
    byte[] bytes = word.getBytes(StandardCharsets.ISO_8859_1);
    return length >= bytes.length
        && ByteBuffer.wrap(file, at, bytes.length).equals(ByteBuffer.wrap(bytes));
  }

  /** Reads which side is up from the first directory of an Exif segment; 1 if it does not say. */
  private int orientation(int at, int length) {
    if (!startsWith(EXIF, at, length)) {
      return 1;
    }
    try {
      ByteBuffer tiff = ByteBuffer.wrap(file, at + EXIF.length(), length - EXIF.length()).slice();
      boolean little = tiff.get(0) == 'I';
      tiff.order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      int directory = tiff.getInt(4);
      int count = tiff.getShort(directory) & 0xffff;
      for (int i = 0; i < count; i++) {
        int entry = directory + 2 + ENTRY_BYTES * i;
        if ((tiff.getShort(entry) & 0xffff) == ORIENTATION) {
          int value = tiff.getShort(entry + 8);
          return value >= 1 && value <= TURNED_MOST ? value : 1;
        }
      }
      return 1;
    } catch (IndexOutOfBoundsException | BufferUnderflowException broken) {
      return 1;
    }
  }

  private byte[] whole() {
    ByteArrayOutputStream whole = new ByteArrayOutputStream(out.size() + 64);
    mark(whole, START);
    if (turned != 1) {
      mark(whole, EXIF_APP);
      whole.writeBytes(upright(turned));
    }
    whole.writeBytes(out.toByteArray());
    mark(whole, END);
    return whole.toByteArray();
  }

  /** Returns an Exif segment that says only which side is up (Exif 2.32, 4.5). */
  private static byte[] upright(int turned) {
    byte[] exif = EXIF.getBytes(StandardCharsets.ISO_8859_1);
    ByteBuffer body = ByteBuffer.allocate(2 + exif.length + 26);
    body.putShort((short) body.capacity()).put(exif);
    body.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    body.putShort((short) 1).putShort((short) ORIENTATION).putShort((short) 3).putInt(1);
    body.putShort((short) turned).putShort((short) 0).putInt(0);
    return body.array();
  }

  private static void mark(ByteArrayOutputStream to, int marker) {
    to.write(0xff);
    to.write(marker);
  }
}
