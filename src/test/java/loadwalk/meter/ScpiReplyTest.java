package loadwalk.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Forms from IEEE 488.2, 8.7.2 to 8.7.4, and SCPI-1999 volume 1, 7.2.1; clauses from memory. */
class ScpiReplyTest {

  @Test
  void number_inEveryForm_isRead() {
    // NR1, NR2 and NR3 of IEEE 488.2, 8.7.2 to 8.7.4.
    assertEquals(new ScpiReply.Number(14.4012345), ScpiReply.of("+1.44012345E+01"));
    assertEquals(new ScpiReply.Number(12), ScpiReply.of("12"));
    assertEquals(new ScpiReply.Number(-3), ScpiReply.of("-3"));
    assertEquals(new ScpiReply.Number(12.5), ScpiReply.of("12.5"));
    assertEquals(new ScpiReply.Number(-0.5), ScpiReply.of("-0.5"));
    assertEquals(new ScpiReply.Number(12.5), ScpiReply.of("1.25E+1"));
    assertEquals(new ScpiReply.Number(0.5), ScpiReply.of(" .5e0 \r\n"));
  }

  @Test
  void code_isNeverANumber() {
    // SCPI-1999 volume 1, 7.2.1.4 (infinity) and 7.2.1.5 (not a number).
    for (String nan : List.of("9.91E37", "9.91E+37", "+9.91000000E+37", "NAN")) {
      assertEquals(new ScpiReply.NotANumber(), ScpiReply.of(nan), nan);
    }
    for (String over : List.of("9.9E37", "+9.90000000E+37", "-9.9E37", "9E37", "1E99", "1E999")) {
      assertEquals(new ScpiReply.Overload(), ScpiReply.of(over), over);
    }
    assertEquals(new ScpiReply.Number(8.9e37), ScpiReply.of("8.9E37"));
  }

  @Test
  void garbage_saysWhatIsWrong() {
    assertSentence("", "empty");
    assertSentence("-113,\"Undefined header\"", "error -113");
    assertSentence("1.2,+3.4E+1", "several numbers");
    assertSentence("13.7 V", "not a number");
    assertSentence("1,7", "several numbers");
    assertSentence("0x1F", "not a number");
    assertSentence("Infinity and beyond", "not a number");
    assertSentence("1.5f", "not a number");
  }

  private static void assertSentence(String reply, String part) {
    ScpiReply.Garbage garbage = assertInstanceOf(ScpiReply.Garbage.class, ScpiReply.of(reply));
    assertTrue(garbage.sentence().contains(part), garbage.sentence());
  }

  @Test
  void anyBytes_areReadWithoutAFault_andShownOnOneLine() {
    long seed = 8;
    Random random = new Random(seed);
    String letters = "+-.0123456789eE,;\"*? \r\t\u0000\u00ffINFAV";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(24); n > 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      String message = "seed " + seed + ", case " + i;
      ScpiReply reply = ScpiReply.of(text.toString());
      if (reply instanceof ScpiReply.Number number) {
        assertTrue(Math.abs(number.value()) < ScpiReply.CODES_FROM, message);
      }
      if (reply instanceof ScpiReply.Garbage garbage) {
        assertFalse(garbage.sentence().chars().anyMatch(Character::isISOControl), message);
      }
    }
  }

  @Test
  void scaledReading_outsideTheBench_isGarbage() {
    Question clamp = new Question("MEAS:VOLT:DC?", Unit.AMPERE, 100, 1000);
    MeterReading.Value value =
        assertInstanceOf(MeterReading.Value.class, MeterReading.of(clamp, "+1.62000000E-01"));
    assertEquals(16.2, value.value(), 1e-12);
    assertInstanceOf(MeterReading.Garbage.class, MeterReading.of(clamp, "8E37"));
    assertInstanceOf(MeterReading.Overload.class, MeterReading.of(clamp, "9.9E37"));
  }

  @Test
  void identity_hasFourFields() {
    // IEEE 488.2, 10.14: maker, model, serial, firmware; 0 where one is unknown.
    assertEquals(
        new Identity("MAKER", "MODEL", "0", "1.0"), Identity.of("MAKER,MODEL,0,1.0").get());
    assertEquals("1.0,b", Identity.of("MAKER , MODEL, 7,1.0,b\r\n").get().firmware());
    assertTrue(Identity.of("1,2,3,4").isEmpty());
    assertTrue(Identity.of("MAKER,MODEL,0").isEmpty());
    assertTrue(Identity.of("-113,\"Undefined header\"").isEmpty());
  }

  @Test
  void errorQueue_isRead() {
    // SCPI-1999, 21.8.
    assertEquals(new ScpiError(0, "No error"), ScpiError.of("0,\"No error\"").get());
    assertFalse(ScpiError.of("+0,\"No error\"").get().isError());
    assertEquals(
        new ScpiError(-113, "Undefined header"), ScpiError.of("-113,\"Undefined header\"").get());
    assertTrue(ScpiError.of("13.7").isEmpty());
  }
}
