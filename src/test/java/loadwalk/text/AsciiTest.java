package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class AsciiTest {
  @Test
  void tradeSigns_haveOneSpelling() {
    assertEquals(
        "40 degC, 104 degF, 4 ohm, 3 mohm, 10 uV", Ascii.of("40 °C, 104 °F, 4 Ω, 3 mΩ, 10 µV"));
    assertEquals(
        "45.5 +- 1.2 W ... 2 x 35 mm2 - \"no\" -> 1/2",
        Ascii.of("45.5 ± 1.2 W … 2 × 35 mm² – «no» → ½"));
    assertEquals("-3 dB | sqrt 2 <= 3 >= 1, it's", Ascii.of("−3 dB · √2 ≤ 3 ≥ 1, it’s"));
  }

  @Test
  void everyUnit_isSpelledAsItIsRead() {
    for (Unit unit : Unit.values()) {
      assertEquals(unit.asciiSymbol(), Ascii.of(unit.symbol()));
    }
  }

  @Test
  void letters_loseTheirMarks() {
    assertEquals("Emile Muller Angstrom Soren Lodz", Ascii.of("Émile Müller Ångström Søren Łódź"));
    assertEquals("e", Ascii.of("e\u0301"));
    assertEquals("fi AB", Ascii.of("\ufb01\u00a0\uff21\uff22"));
  }

  @Test
  void whatHasNoSpelling_isOneQuestionMark() {
    assertEquals("? ?? ? ?", Ascii.of("😀 漢字 \u202e \ud83d"));
    assertEquals("?[2J?", Ascii.of("\u001b[2J\u0000"));
  }

  @Test
  void ascii_staysTheSame() {
    String text = "stereo 4 ohm: 45.5 W\nnext";
    assertSame(text, Ascii.of(text));
  }

  @Test
  void anyText_isAscii() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      String text = new String(new int[] {random.nextInt(0x110000), random.nextInt(0x3000)}, 0, 2);
      String plain = Ascii.of(text);
      assertTrue(plain.chars().allMatch(c -> c == '\n' || c >= ' ' && c <= '~'), plain);
    }
  }
}
