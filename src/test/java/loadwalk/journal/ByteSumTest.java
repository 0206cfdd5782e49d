package loadwalk.journal;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The name of bytes: their number, CRC-32C and CRC-32. */
class ByteSumTest {
  /** The check values that the catalogues of both sums give for these nine digits. */
  @Test
  void nineDigits_haveTheirPublishedSums() {
    assertEquals("9-e3069283cbf43926", ByteSum.of("123456789".getBytes(US_ASCII)));
  }

  @Test
  void parts_areSummedAsOne() {
    assertEquals(
        ByteSum.of("123456789".getBytes(US_ASCII)),
        ByteSum.of("1234".getBytes(US_ASCII), new byte[0], "56789".getBytes(US_ASCII)));
  }

  @Test
  void length_isInHexadecimal() {
    assertEquals("20", ByteSum.of(new byte[32]).split("-")[0]);
  }
}
