package loadwalk.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class EntryParserFuzzTest {
  private static final long SEED = Long.getLong("fuzz.seed", 6_000_001L);
  private static final List<String> GOOD =
      List.of(
          "13,4",
          "13.4 V",
          "950mV",
          ".5",
          "1/2 Ω",
          "1½",
          "1k2",
          "4R7",
          "45.5 W",
          "1.2e3",
          "16 amps",
          "1 kHz",
          "104 °F",
          "1%",
          "  13.4  ",
          "1.234,5",
          "15 min",
          "-3 dB");

  @Test
  @Timeout(value = 2, unit = TimeUnit.MINUTES)
  void parse_ofFiveThousandHostileEntries_givesANumberOrASentence() {
    run(5_000);
  }

  @Test
  @Tag("long")
  @Timeout(value = 30, unit = TimeUnit.MINUTES)
  void parse_ofAMillionHostileEntries_givesANumberOrASentence() {
    run(1_000_000);
  }

  private static void run(int inputs) {
    Mutator mutator = new Mutator(SEED, Mutator.ENTRY_TOKENS);
    Random random = new Random(SEED);
    int numbers = 0;
    for (int i = 0; i < inputs; i++) {
      String text = random.nextBoolean() ? mutator.soup() : mutator.mutant(GOOD);
      Unit expected = Unit.values()[random.nextInt(Unit.values().length)];
      Unit other = Unit.values()[random.nextInt(Unit.values().length)];
      String told = "seed " + SEED + ", input " + i + ": «" + text + "» as " + expected;
      Typed typed = parsed(text, expected, other, told);
      if (typed instanceof Typed.Number number) {
        numbers++;
        checkNumber(number, expected, other, told);
      } else {
        checkSentence(((Typed.Problem) typed).sentence(), told);
      }
    }
    System.out.printf("EntryParser: %d inputs, seed %d, %d numbers%n", inputs, SEED, numbers);
    assertTrue(numbers > inputs / 20 && numbers < inputs * 19 / 20, "too one-sided: " + numbers);
  }

  private static Typed parsed(String text, Unit expected, Unit other, String told) {
    try {
      return EntryParser.parse(text, expected, other);
    } catch (RuntimeException e) {
      throw new AssertionError(told, e);
    }
  }

  private static void checkNumber(Typed.Number number, Unit expected, Unit other, String told) {
    assertTrue(Math.abs(number.value()) <= EntryParser.LARGEST, told);
    assertTrue(number.resolution() > 0 && number.resolution() <= EntryParser.LARGEST, told);
    assertTrue(number.unit() == expected || number.unit() == other, told);
  }

  private static void checkSentence(String sentence, String told) {
    assertTrue(sentence.endsWith(".") && sentence.length() < 500, told + " " + sentence);
    assertFalse(sentence.chars().anyMatch(Character::isISOControl), told);
    assertEquals(1, sentence.lines().count(), told);
  }
}
