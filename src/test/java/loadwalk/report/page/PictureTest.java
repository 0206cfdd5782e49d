package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import loadwalk.report.Photos;
import org.junit.jupiter.api.Test;

class PictureTest {
  private static final long SEED = 20_261_125;

  @Test
  void photo_losesItsMetadata_andKeepsEveryPixel() throws IOException {
    for (byte[] file : List.of(Photos.png(), Photos.jpeg())) {
      assertTrue(latin(file).contains(Photos.SECRET));
      byte[] clean = Picture.of(file).orElseThrow().bytes();
      assertFalse(latin(clean).contains(Photos.SECRET));
      assertArrayEquals(pixels(file), pixels(clean));
      assertArrayEquals(clean, Picture.of(clean).orElseThrow().bytes(), "cleaned twice");
    }
  }

  @Test
  void type_isToldByTheBytes() {
    assertEquals("image/png", Picture.of(Photos.png()).orElseThrow().mediaType());
    assertEquals("image/jpeg", Picture.of(Photos.jpeg()).orElseThrow().mediaType());
    for (String other : List.of("", "GIF89a", "<svg onload=alert(1)>", "%PDF-1.7", "\u0089PNG")) {
      assertEquals(Optional.empty(), Picture.of(other.getBytes(StandardCharsets.ISO_8859_1)));
    }
  }

  /** The tag 0x0112 is 6: the picture is shown turned a quarter (Exif 2.32, 4.6.5). */
  @Test
  void jpeg_keepsWhichSideIsUp_andNothingElseOfExif() {
    String clean = latin(Picture.of(Photos.jpeg()).orElseThrow().bytes());
    String exif = "\u00ff\u00e1\0\42Exif\0\0MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0\6\0\0\0\0\0\0";
    assertTrue(clean.startsWith("\u00ff\u00d8" + exif), clean.substring(0, 60));
    assertEquals(1, clean.split("Exif", -1).length - 1);
  }

  @Test
  void photoCutShort_isNoPhoto() {
    for (byte[] file : List.of(Photos.png(), Photos.jpeg())) {
      int whole = file.length - Photos.SECRET.length();
      assertTrue(Picture.of(Arrays.copyOf(file, whole)).isPresent());
      for (int length = 0; length < whole - 1; length += 7) {
        assertTrue(Picture.of(Arrays.copyOf(file, length)).isEmpty(), "cut at " + length);
      }
    }
  }

  @Test
  void spoiltPhoto_isTakenOrNot_neverAFault() {
    Random random = new Random(SEED);
    int taken = 0;
    for (int i = 0; i < 4000; i++) {
      byte[] file = i % 2 == 0 ? Photos.png() : Photos.jpeg();
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        file[random.nextInt(file.length)] = (byte) random.nextInt(256);
      }
      taken += Picture.of(file).isPresent() ? 1 : 0;
    }
    assertTrue(taken > 0 && taken < 4000, taken + " taken, seed " + SEED);
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static int[] pixels(byte[] file) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
