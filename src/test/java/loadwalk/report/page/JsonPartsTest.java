package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What steers a terminal or turns the reading direction is escaped, and nothing else. */
class JsonPartsTest {
  @ParameterizedTest
  @CsvSource({
    "plain,plain",
    "'4 Ω ± é 界 𝄞 ~!','4 Ω ± é 界 𝄞 ~!'",
    "a\u202eb,a\\u202eb",
    "\u202e,\\u202e",
    "a\u007f,a\\u007f",
    "\u009b31m,\\u009b31m",
    "𝄞\u200f𝄞,𝄞\\u200f𝄞",
    "x\udb40\udc01y,x\\udb40\\udc01y"
  })
  void harmless_escapesOnlyWhatSteers(String json, String expected) {
    assertEquals(expected, JsonParts.harmless(json));
    assertEquals(expected + "\n[ ]", JsonParts.harmless(json + "\n[ ]"));
  }
}
