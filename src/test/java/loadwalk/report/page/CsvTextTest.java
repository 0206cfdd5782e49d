package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How each cell of a CSV file is written. */
class CsvTextTest {
  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of("plain", "plain"),
        Arguments.of("", ""),
        Arguments.of("a,b", "\"a,b\""),
        Arguments.of("say \"so\"", "\"say \"\"so\"\"\""),
        Arguments.of(",", "\",\""),
        Arguments.of("\"", "\"\"\"\""),
        Arguments.of("=1", "'=1"),
        Arguments.of(" \t=1", "'  =1"),
        Arguments.of("+1", "'+1"),
        Arguments.of("-1", "'-1"),
        Arguments.of("@A1", "'@A1"),
        Arguments.of("|cmd", "'|cmd"),
        Arguments.of("%x", "'%x"),
        Arguments.of("\uff1d1", "'\uff1d1"),
        Arguments.of("\uff0b1", "'\uff0b1"),
        Arguments.of("\uff0d1", "'\uff0d1"),
        Arguments.of("\uff20A", "'\uff20A"),
        Arguments.of("=a,b", "\"'=a,b\""),
        Arguments.of("3-4", "3-4"),
        Arguments.of("two\r\nlines", "two  lines"),
        Arguments.of("\u001b[2J", "\\u001b[2J"),
        Arguments.of("x".repeat(32_001), "x".repeat(32_000) + "…"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void text_isQuotedAndNoFormula(String text, String cell) {
    CsvText csv = new CsvText();
    csv.row(text, "next");
    assertEquals(cell + ",next\r\n", csv.text());
  }

  static Stream<Arguments> numbers() {
    return Stream.of(
        Arguments.of(4, "4"),
        Arguments.of(-4, "-4"),
        Arguments.of(0.25, "0.25"),
        Arguments.of(-0.5, "-0.5"),
        Arguments.of(999_999_999_999_999.0, "999999999999999"),
        Arguments.of(1e15, "1.0E15"),
        Arguments.of(-1e15, "-1.0E15"),
        Arguments.of(Double.NaN, ""),
        Arguments.of(Double.POSITIVE_INFINITY, ""));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void number_isShortest_andNothingIfThereIsNone(double number, String cell) {
    CsvText csv = new CsvText();
    csv.cells().number(number).number(1).end();
    assertEquals(cell + ",1\r\n", csv.text());
  }

  @Test
  void unit_ofPercent_isNoFormula() {
    CsvText csv = new CsvText();
    csv.cells().unit(Unit.PERCENT).unit(Unit.WATT).end();
    csv.row("b");
    assertEquals("%,W\r\nb\r\n", csv.text());
  }
}
