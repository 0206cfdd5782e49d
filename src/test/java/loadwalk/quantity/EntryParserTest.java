package loadwalk.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EntryParserTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "13,4|VOLT|13.4|0.1",
        "13.40|VOLT|13.4|0.01",
        "13.4 V|VOLT|13.4|0.1",
        "13.4v|VOLT|13.4|0.1",
        "13.4 V rms|VOLT|13.4|0.1",
        "  13.4  |VOLT|13.4|0.1",
        "13.4\u00a0V|VOLT|13.4|0.1",
        "950m|VOLT|0.95|0.001",
        "950mV|VOLT|0.95|0.001",
        "950 mv|VOLT|0.95|0.001",
        ".5|VOLT|0.5|0.1",
        "5.|VOLT|5|1",
        "+5|VOLT|5|1",
        "\u22125.25|VOLT|-5.25|0.01",
        "0|VOLT|0|1",
        "0,234|VOLT|0.234|0.001",
        "1234,567|VOLT|1234.567|0.001",
        "1,234.5|WATT|1234.5|0.1",
        "1.234,5|WATT|1234.5|0.1",
        "1,234,567|OHM|1234567|1",
        "1.234.567|OHM|1234567|1",
        "1.234|OHM|1.234|0.001",
        "1/2 Ω|OHM|0.5|0.0005",
        "½|OHM|0.5|0.0005",
        "1½|OHM|1.5|0.0015",
        "1 1/2 ohm|OHM|1.5|0.0015",
        "1k2|OHM|1200|100",
        "1k2 Ω|OHM|1200|100",
        "1k2|WATT|1200|100",
        "4R7|OHM|4.7|0.1",
        "0R5|OHM|0.5|0.1",
        "R47|OHM|0.47|0.01",
        "4R|OHM|4|1",
        "2 ohm|OHM|2|1",
        "2 ohms|OHM|2|1",
        "2 ohm(s)|OHM|2|1",
        "2 \u2126|OHM|2|1",
        "1 Mohm|OHM|1000000|1000000",
        "45.5 W|WATT|45.5|0.1",
        "1.2e3|WATT|1200|100",
        "1,2E3|WATT|1200|100",
        "1.2e-3|VOLT|0.0012|0.0001",
        "16 A|AMPERE|16|1",
        "16 amps|AMPERE|16|1",
        "40 Hz|HERTZ|40|1",
        "1 kHz|HERTZ|1000|1000",
        "45|CELSIUS|45|1",
        "45 °C|CELSIUS|45|1",
        "45°|CELSIUS|45|1",
        "1%|PERCENT|1|1",
        "15 min|SECOND|900|60",
        "2.5 m|METRE|2.5|0.1",
        "30 cm|METRE|0.3|0.01",
        "-3 dB|DECIBEL|-3|1",
        "\uff11\uff13.4|VOLT|13.4|0.1"
      })
  void parse_ofWhatOperatorsType_givesValueAndResolution(
      String text, Unit unit, double value, double resolution) {
    Typed.Number number = number(EntryParser.parse(text, unit));
    assertEquals(value, number.value(), 1e-12 * Math.abs(value), text);
    assertEquals(resolution, number.resolution(), 1e-12 * resolution, text);
    assertEquals(unit, number.unit(), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"104 °F", "104F", "104 f", "104 degF"})
  void parse_ofFahrenheit_convertsValueAndResolution(String text) {
    Typed.Number number = number(EntryParser.parse(text, Unit.CELSIUS));
    assertEquals(40, number.value(), 1e-9);
    assertEquals(5.0 / 9, number.resolution(), 1e-12);
  }

  @Test
  void parse_withAnotherAcceptedUnit_keepsTheUnitTyped() {
    assertEquals(Unit.WATT, number(EntryParser.parse("45.5 W", Unit.VOLT, Unit.WATT)).unit());
    assertEquals(Unit.VOLT, number(EntryParser.parse("45.5", Unit.VOLT, Unit.WATT)).unit());
    assertEquals(Unit.WATT, number(EntryParser.parse("4k5W", Unit.VOLT, Unit.WATT)).unit());
  }

  @Test
  void parse_ofLoneCommaBeforeThreeDigits_offersBothReadings() {
    assertEquals("«1,234» can be read two ways; type 1.234 or 1234.", problem("1,234", Unit.VOLT));
    assertTrue(problem("-1,234", Unit.VOLT).contains("type -1.234 or -1234"));
    assertTrue(problem("123,456 V", Unit.VOLT).contains("type 123.456 or 123456"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "13.4 A|VOLT|is in amps",
        "13 F|VOLT|is in degrees",
        "950MV|VOLT|prefix",
        "5k %|PERCENT|prefix",
        "15m|SECOND|with a known unit",
        "4R7|VOLT|is in ohms",
        "nan|VOLT|cannot be measured",
        "-Infinity|VOLT|cannot be measured",
        "OL|OHM|over its range",
        "1e400|VOLT|is out of range",
        "1e99999999999|VOLT|is out of range",
        "1e29|VOLT|larger than anything",
        "1/0|OHM|divides by zero",
        "abc|VOLT|is not a number",
        "1.2.3|VOLT|is not a number",
        "1,23.4|VOLT|is not a number",
        "--5|VOLT|is not a number",
        "5 5|VOLT|with a known unit",
        ".|VOLT|is not a number",
        "12 V pp|VOLT|peak-to-peak value, not rms",
        "12Vpk|VOLT|peak-to-peak value",
        "-|VOLT|is not a number"
      })
  void parse_ofWhatCannotBeTaken_saysWhyInOneSentence(String text, Unit unit, String part) {
    String sentence = problem(text, unit);
    assertTrue(sentence.contains(part), sentence);
    assertTrue(sentence.contains("; type "), sentence);
    assertTrue(sentence.endsWith("."), sentence);
  }

  @Test
  void parse_ofNothing_asksForTheUnit() {
    String expected = "Nothing was typed; type volts such as 13.4, 13,4 V or 950m.";
    assertEquals(expected, problem("", Unit.VOLT));
    assertEquals(expected, problem(" \t\u00a0", Unit.VOLT));
    assertEquals(expected, problem(null, Unit.VOLT));
  }

  @Test
  void parse_ofHostileText_showsItShortAndVisible() {
    String sentence = problem("\u001b[2J\u202e\ud800" + "x".repeat(40), Unit.VOLT);
    assertTrue(sentence.startsWith("«\\u001b[2J\\u202e\\ud800xxx"), sentence);
    assertTrue(sentence.contains("…»"), sentence);
    assertFalse(sentence.chars().anyMatch(Character::isISOControl), sentence);
    String tooLong = problem("1".repeat(1_000_000), Unit.VOLT);
    assertTrue(tooLong.contains("longer than 64 characters"), tooLong);
    assertTrue(tooLong.length() < 200, tooLong);
  }

  private static Typed.Number number(Typed typed) {
    return assertInstanceOf(Typed.Number.class, typed, typed.toString());
  }

  private static String problem(String text, Unit unit) {
    Typed typed = EntryParser.parse(text, unit);
    return assertInstanceOf(Typed.Problem.class, typed, typed.toString()).sentence();
  }
}
