package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import loadwalk.text.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos made part by part, in hexadecimal: which parts stay, and what is no photo at all. */
class PhotoPartsTest {
  private static final String PNG = "89504e470d0a1a0a";

  /** A header that states 1 point by 1, and a byte of data. */
  private static final String HEAD = chunk("IHDR", "0000000100000001" + "0800000000");

  private static final String DATA = chunk("IDAT", "01");

  /** A frame of 1 point by 1. */
  private static final String FRAME = "ffc0000b08" + "0001" + "0001" + "01011100";

  private static final String SOI = "ffd8";
  private static final String LINES = "ffda0003aa" + "0102";
  private static final String SCAN = FRAME + LINES;
  private static final String EOI = "ffd9";
  private static final String EXIF = "457869660000";
  private static final String UPRIGHT =
      "ffe10022" + EXIF + "4d4d002a00000008" + "0001" + "01120003000000010006000000000000";

  private static Optional<String> kept(String... parts) {
    byte[] file = HexFormat.of().parseHex(String.join("", parts));
    return Picture.of(file).map(p -> HexFormat.of().formatHex(p.bytes()));
  }

  private static String segment(String marker, String body) {
    return "ff" + marker + String.format("%04x", 2 + body.length() / 2) + body;
  }

  private static Optional<String> photo(String... parts) {
    return Optional.of(String.join("", parts));
  }

  /** JFIF, colours by Adobe, tables and frames stay; all other applications and comments go. */
  @ParameterizedTest
  @CsvSource({
    "e0, true",
    "e1, false",
    "e3, false",
    "ed, false",
    "ee, true",
    "ef, false",
    "f0, true",
    "fe, false",
    "db, true",
    "c4, true",
    "dd, true"
  })
  void jpegSegment_staysIfItMakesThePicture(String marker, boolean stays) {
    String part = segment(marker, "01020304");
    assertEquals(photo(SOI, stays ? part : "", SCAN, EOI), kept(SOI, part, SCAN, EOI));
  }

  /** "ICC_PROFILE" and a zero; "MPF" leads to further pictures. */
  @Test
  void jpegColourProfile_stays_andNoOtherUseOfItsSegment() {
    String profile = segment("e2", "4943435f50524f46494c4500" + "0101" + "55".repeat(300));
    String empty = segment("e2", "4943435f50524f46494c4500");
    String other = segment("e2", "4d504600" + "55".repeat(20));
    String near = segment("e2", "4943435f50524f46494c4501");
    String shorter = segment("e2", "4943435f");
    assertEquals(
        photo(SOI, profile, empty, SCAN, EOI),
        kept(SOI, other, profile, near, empty, shorter, SCAN, EOI));
  }

  @Test
  void jpegScans_stayWhole_withStuffedBytesAndRestarts() {
    String scan = "ffda000200" + "ff00" + "ffd0" + "01" + "ffd7" + "ffff";
    String table = segment("c4", "00");
    assertEquals(
        photo(SOI, FRAME, scan, table, LINES, EOI),
        kept(SOI, FRAME, scan, table, LINES, EOI, "aabb"));
  }

  @Test
  void jpegFillBytes_areDropped() {
    String table = segment("db", "00");
    assertEquals(photo(SOI, table, SCAN, EOI), kept(SOI, "ffff", table, "ff", SCAN, EOI));
  }

  @ParameterizedTest
  @CsvSource({
    "4d4d002a00000008, 0001, 01120003000000010006000000000000, true",
    "49492a0008000000, 0100, 12010300010000000600000000000000, true",
    "4d4d002a0000000a0000, 0001, 01120003000000010006000000000000, true",
    "4d4d002a00000008, 0002, 010f00020000000100000000011200030000000100060000, true",
    "4d4d002a00000008, 0001, 010f00020000000100000000011200030000000100060000, false",
    "4d4d002a00000008, 0001, 01130003000000010006000000000000, false",
    "4d4d002a00000008, 0001, 01120003000000010001000000000000, false",
    "4d4d002a00000008, 0001, 01120003000000010000000000000000, false",
    "4d4d002a00000008, 0001, 01120003000000010009000000000000, false",
    "4d4d002a00000008, 0001, 0112000300000001ffff000000000000, false",
    "4d4d002a00000008, 0001, 0112, false",
    "4d4d002affffffff, 0001, 01120003000000010006000000000000, false",
    "4d, '', '', false"
  })
  void jpegWhichSideIsUp_isReadFromExif(String head, String count, String entries, boolean turned) {
    String exif = segment("e1", EXIF + head + count + entries);
    assertEquals(photo(SOI, turned ? UPRIGHT : "", SCAN, EOI), kept(SOI, exif, SCAN, EOI));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0002", "0008"})
  void jpegTurnedAnyWay_keepsIt(String way) {
    String turned = UPRIGHT.replace("000000010006", "00000001" + way);
    assertEquals(photo(SOI, turned, SCAN, EOI), kept(SOI, turned, SCAN, EOI));
  }

  /** The first word on it counts; another use of the segment says nothing. */
  @Test
  void jpegTurnedTwice_goesByTheFirst() {
    String entry = "4d4d002a00000008" + "0001" + "01120003000000010006000000000000";
    String first = segment("e1", EXIF + entry);
    String second = segment("e1", EXIF + entry.replace("00060000", "00030000"));
    String other = segment("e1", "457869660001" + entry.replace("00060000", "00030000"));
    assertEquals(photo(SOI, UPRIGHT, SCAN, EOI), kept(SOI, other, first, second, SCAN, EOI));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ffd8ff",
        "ffd8ffd9",
        "ffd8ffd9aa",
        "ffd800ffda0003aa0102ffd9",
        "ffd8aaffda0003aa0102ffd9",
        "ffd8ffdb000400000055ffda0003aa0102ffd9",
        "ffd8ffdb0001ffda0003aa0102ffd9",
        "ffd8ffdb0000ffda0003aa0102ffd9",
        "ffd8ffdb00ff00ffda0003aa0102ffd9",
        "ffd8ffda0003aa0102ff",
        "ffd8ffda0003aa0102",
        "ffd8ffda0003aa0102ffdb0009",
        "ffd8ffda0003aa0102ffdb00",
        "ffd8ffda0003aa0102ffdb",
        "ffd9ffda0003aa0102ffd9"
      })
  void brokenJpeg_isNoPhoto(String file) {
    assertEquals(Optional.empty(), kept(file));
    assertEquals(Optional.empty(), kept(file.replaceFirst("^ffd8", SOI + FRAME)));
  }

  @ParameterizedTest
  @CsvSource({
    "c0, 0001, 0001, true",
    "c2, ffff, 0ee6, true",
    "cf, 0ee6, ffff, true",
    "c0, 0000, 0001, false",
    "c1, 0001, 0000, false",
    "c2, ffff, 0ee7, false",
    "c0, 7530, 7530, false",
    "c4, 0001, 0001, false",
    "c8, 0001, 0001, false",
    "cc, 0001, 0001, false",
    "d0, 0001, 0001, false"
  })
  void jpegSize_isThatOfAPicture(String marker, String high, String wide, boolean canBe) {
    String frame = segment(marker, "08" + high + wide + "01011100");
    Optional<String> whole = canBe ? photo(SOI, frame, LINES, EOI) : Optional.empty();
    assertEquals(whole, kept(SOI, frame, LINES, EOI));
    assertEquals(Optional.empty(), kept(SOI, LINES, frame, EOI), "no size before the scan");
    assertEquals(Optional.empty(), kept(SOI, segment(marker, "08000100"), LINES, EOI), "half");
  }

  @ParameterizedTest
  @CsvSource({
    "00000001, 00000001, 1, true",
    "00000000, 00000001, 1, false",
    "00000001, 00000000, 1, false",
    "ffffffff, 00000001, 900000, false",
    "00007530, 00007530, 900000, false",
    "00003d09, 00003e80, 30295, true",
    "00003d09, 00003e80, 30294, false",
    "00003d0a, 00003e80, 900000, false"
  })
  void pngSize_isThatOfAPicture_andCanBeFilled(String wide, String high, int data, boolean canBe) {
    String head = chunk("IHDR", wide + high + "0800000000");
    String half = chunk("IDAT", "00".repeat(data / 2));
    String rest = chunk("IDAT", "00".repeat(data - data / 2));
    String end = chunk("IEND", "");
    Optional<String> whole = canBe ? photo(PNG, head, half, rest, end) : Optional.empty();
    assertEquals(whole, kept(PNG, head, half, rest, end));
  }

  private static String chunk(String type, String body) {
    String name = HexFormat.of().formatHex(type.getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", body.length() / 2) + name + body + "00000000";
  }

  @ParameterizedTest
  @CsvSource({
    "PLTE, true", "tRNS, true", "gAMA, true", "cHRM, true", "sRGB, true", "iCCP, true",
    "sBIT, true", "bKGD, true", "pHYs, true", "tEXt, false", "zTXt, false", "iTXt, false",
    "eXIf, false", "tIME, false", "gpSx, false"
  })
  void pngChunk_staysIfItMakesThePicture(String type, boolean stays) {
    String some = chunk(type, "aabbcc");
    String end = chunk("IEND", "");
    assertEquals(
        photo(PNG, HEAD, stays ? some : "", DATA, end), kept(PNG, HEAD, some, DATA, end, "aa"));
  }

  @Test
  void brokenPng_isNoPhoto() {
    String end = chunk("IEND", "");
    String whole = HEAD + DATA;
    assertTrue(kept(PNG, whole, end).isPresent());
    assertEquals(Optional.empty(), kept(PNG, DATA, HEAD, end), "no header first");
    assertEquals(Optional.empty(), kept(PNG, chunk("IHDR", "00"), DATA, end), "half a header");
    assertEquals(Optional.empty(), kept(PNG, HEAD, end), "no data");
    assertEquals(Optional.empty(), kept(PNG, whole), "no end");
    assertEquals(Optional.empty(), kept(PNG, whole, "7fffffff49444154", end), "beyond the file");
    assertEquals(Optional.empty(), kept(PNG, whole, "ffffffff49444154", end), "below zero");
    assertEquals(Optional.empty(), kept(PNG, whole, "0000000149454e4400000000"), "one byte short");
    assertEquals(Optional.empty(), kept(PNG));
    assertEquals(Optional.empty(), kept(PNG.replace("0d0a", "0a0a"), whole, end));
  }

  @Test
  void photo_isAtMostTwentyMebibytes() {
    byte[] png = HexFormat.of().parseHex(PNG + HEAD + DATA + chunk("IEND", ""));
    assertTrue(Picture.of(Arrays.copyOf(png, 20 << 20)).isPresent());
    assertEquals(Optional.empty(), Picture.of(Arrays.copyOf(png, (20 << 20) + 1)));
  }

  @Test
  void ending_isOfItsKind_whateverTheFileWasCalled() {
    byte[] png = HexFormat.of().parseHex(PNG + HEAD + DATA + chunk("IEND", ""));
    byte[] jpeg = HexFormat.of().parseHex(SOI + SCAN + EOI);
    assertEquals(".png", Picture.of(png).orElseThrow().ending());
    assertEquals(".jpg", Picture.of(jpeg).orElseThrow().ending());
  }

  /** FIPS 180-2, B.1. */
  @Test
  void hash_isTheOneOfTheStandard() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        Sha256.of(new byte[] {'a', 'b', 'c'}));
  }
}
