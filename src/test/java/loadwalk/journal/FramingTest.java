package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FramingTest {
  /** Computes CRC-32C bit by bit, polynomial 1EDC6F41 reflected: a second way to the same value. */
  static long crcBitByBit(byte[] bytes) {
    int crc = ~0;
    for (byte b : bytes) {
      crc ^= b & 0xff;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 1) == 0 ? crc >>> 1 : (crc >>> 1) ^ 0x82F63B78;
      }
    }
    return ~crc & 0xffffffffL;
  }

  private static byte[] framed(String seq, String body) {
    String crc = String.format("%08x", crcBitByBit((seq + ":" + body).getBytes(UTF_8)));
    String line = "{\"seq\":" + seq + ",\"crc\":\"" + crc + "\",\"body\":" + body + "}";
    return line.getBytes(UTF_8);
  }

  private static byte[] withoutLineFeed(byte[] line) {
    return Arrays.copyOf(line, line.length - 1);
  }

  @Test
  void crcBitByBit_ofThirtyTwoZeros_isThePublishedValue() {
    // RFC 3720 appendix B.4: 32 bytes of zeroes give aa 36 91 8a, least byte first.
    assertEquals(0x8a9136aaL, crcBitByBit(new byte[32]));
  }

  @Test
  void line_isTheDocumentedText() {
    String body = "{\"typed\":\"13.4 V\",\"ohm\":\"Ω\"}";
    long crc = crcBitByBit(("42:" + body).getBytes(UTF_8));
    String expected = String.format("{\"seq\":42,\"crc\":\"%08x\",\"body\":%s}\n", crc, body);
    assertEquals(expected, new String(Framing.line(42, body), UTF_8));
  }

  @Test
  void read_ofALine_givesTheRecordBack() {
    String body = "{\"a\":[1,2,{\"b\":null}],\"c\":\"\\u0000 é 𝄞\"}";
    String sum = String.format("%08x", crcBitByBit(("7:" + body).getBytes(UTF_8)));
    Optional<JournalRecord> read = Framing.read(withoutLineFeed(Framing.line(7, body)));
    assertEquals(Optional.of(new JournalRecord(7, "", sum, body)), read);
  }

  @Test
  void line_thatNamesTheOneBefore_isTheDocumentedText() {
    String body = "{\"typed\":\"13.4 V\",\"ohm\":\"Ω\"}";
    String sum = String.format("%08x", crcBitByBit(("42:00c0ffee:" + body).getBytes(UTF_8)));
    byte[] line = Framing.line(42, "00c0ffee", body);
    assertEquals(
        "{\"seq\":42,\"after\":\"00c0ffee\",\"crc\":\"" + sum + "\",\"body\":" + body + "}\n",
        new String(line, UTF_8));
    JournalRecord read = Framing.read(withoutLineFeed(line)).orElseThrow();
    assertEquals(new JournalRecord(42, "00c0ffee", sum, body), read);
    assertEquals(new String(line, UTF_8), new String(read.line(), UTF_8));
  }

  @Test
  void read_ofALineThatNamesAnotherBefore_isEmpty() {
    String line = new String(withoutLineFeed(Framing.line(42, "00c0ffee", "{}")), UTF_8);
    for (String other : new String[] {"00c0ffef", "00C0FFEE", "0c0ffee", "00c0ffee0"}) {
      assertEquals(
          Optional.empty(), Framing.read(line.replace("00c0ffee", other).getBytes(UTF_8)), other);
    }
  }

  @Test
  void line_atTheLongestBody_isTakenAndOneMoreIsNot() {
    String longest = "{\"a\":\"" + "x".repeat(Framing.BODY_BYTES_MAX - 8) + "\"}";
    assertTrue(Framing.read(withoutLineFeed(Framing.line(1, longest))).isPresent());
    String longer = longest.replace("\"}", "x\"}");
    assertThrows(IllegalArgumentException.class, () -> Framing.line(1, longer));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "1",
        "null",
        "[]",
        "\"text\"",
        "{",
        "{}}",
        "{} {}",
        "{\"a\":1,\"a\":2}",
        "{\"a\":NaN}",
        "{\n}",
        "{\t}",
        "{\"a\":\"\u0000\"}",
        "{\"a\":\"\ud800\"}",
        "{'a':1}",
        "{\"a\":1}//"
      })
  void line_ofWhatIsNoJsonObjectOnOneLine_isRefused(String body) {
    assertThrows(IllegalArgumentException.class, () -> Framing.line(1, body));
  }

  @Test
  void line_withDeepNesting_isRefusedWithoutOverflow() {
    String deep = "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000);
    assertThrows(IllegalArgumentException.class, () -> Framing.line(1, deep));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, -1, 1_000_000_000_000_000L, Long.MAX_VALUE})
  void line_withANumberOutOfRange_isRefused(long seq) {
    assertThrows(IllegalArgumentException.class, () -> Framing.line(seq, "{}"));
  }

  @Test
  void read_ofTheHighestNumber_works() {
    byte[] line = withoutLineFeed(Framing.line(999_999_999_999_999L, "{}"));
    assertEquals(999_999_999_999_999L, Framing.read(line).orElseThrow().seq());
  }

  @Test
  void read_ofAChecksummedBodyThatIsNoObject_isEmpty() {
    for (String body : new String[] {"1", "{}}", "{\"a\":1,\"a\":1}", "{\"a\":\"\t\"}"}) {
      assertEquals(Optional.empty(), Framing.read(framed("1", body)), body);
    }
  }

  @Test
  void read_ofAChecksummedLineBeyondTheLimits_isEmpty() {
    assertTrue(Framing.read(framed("999999999999999", "{}")).isPresent());
    assertEquals(Optional.empty(), Framing.read(framed("1000000000000000", "{}")));
    assertEquals(Optional.empty(), Framing.read(framed("9".repeat(30), "{}")));
    String longest = "{\"a\":\"" + "x".repeat(Framing.BODY_BYTES_MAX - 8) + "\"}";
    assertTrue(Framing.read(framed("1", longest)).isPresent());
    assertEquals(Optional.empty(), Framing.read(framed("1", longest.replace("\"}", "x\"}"))));
  }

  @Test
  void read_ofALineCutAnywhere_isEmpty() {
    byte[] line = withoutLineFeed(Framing.line(120, "{\"a\":1}"));
    for (int length = 0; length < line.length; length++) {
      assertEquals(Optional.empty(), Framing.read(Arrays.copyOf(line, length)), "cut at " + length);
    }
  }

  @Test
  void read_ofALeadingZeroOrUpperCaseSum_isEmpty() {
    assertEquals(Optional.empty(), Framing.read(framed("01", "{}")));
    String good = new String(withoutLineFeed(Framing.line(1, "{}")), UTF_8);
    String crc = good.substring(16, 24);
    String upper = good.replace(crc, crc.toUpperCase(java.util.Locale.ROOT));
    assertTrue(!upper.equals(good) && Framing.read(upper.getBytes(UTF_8)).isEmpty(), upper);
  }
}
