package loadwalk.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/**
 * Makes hostile texts out of good ones: cut, doubled, swapped, with tokens put in, bytes flipped.
 */
public final class Mutator {
  /** Pieces that have broken readers of JSON and numbers before. */
  public static final List<String> JSON_TOKENS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "\"",
          "\\",
          "null",
          "true",
          "false",
          "NaN",
          "-Infinity",
          "1e999",
          "1e-999",
          "-1",
          "0",
          "-0.0",
          "1E5",
          "0.5",
          "99999999999999999999",
          "\"\\ud800\"",
          "\"\\u0000\"",
          "\uFEFF",
          "//",
          "/*",
          "*/",
          "\n",
          "\t",
          " ",
          "\"ohms\":",
          "\"steps\":",
          "\"do\":\"recheck\"",
          "\"of\":[\"heaviest\"]",
          "\"optional\":true",
          "\"awg\":\"1/0\"",
          "[[[[[[[[[[[[[[[[[[[[[[[[",
          "{\"a\":{\"a\":{\"a\":{\"a\":",
          "\u202e",
          "\u001b[2J",
          "½",
          "\"format\":\"loadwalk-bench/2\"",
          "\"\"",
          "\ud83d\ude00",
          "\ud83d");

  /** Pieces of what operators, and others, type. */
  public static final List<String> ENTRY_TOKENS =
      List.of(
          "0",
          "1",
          "2",
          "5",
          "13",
          "950",
          "999999999999",
          ".",
          ",",
          "-",
          "+",
          "\u2212",
          "e",
          "E",
          "e-",
          "e400",
          "/",
          "½",
          "¼",
          "⅞",
          "k",
          "K",
          "M",
          "m",
          "u",
          "µ",
          "R",
          "Ω",
          "\u2126",
          "V",
          "v",
          "A",
          "W",
          "Hz",
          "ohm",
          "ohms",
          "amps",
          "°C",
          "°F",
          "F",
          "%",
          "dB",
          "min",
          "s",
          " ",
          "\u00a0",
          "\t",
          "\n",
          "\u0000",
          "\u001b",
          "\u202e",
          "\ud800",
          "\ud83d\ude00",
          "nan",
          "inf",
          "OL",
          "1,234",
          "1.234,5",
          "'",
          "\"",
          "(",
          ")",
          "\uff11",
          "\u0663",
          "∞",
          "x");

  private final Random random;
  private final List<String> tokens;

  /**
   * Starts a mutator.
   *
   * @param seed what makes the run repeatable
   * @param tokens the pieces put in
   */
  public Mutator(long seed, List<String> tokens) {
    this.random = new Random(seed);
    this.tokens = tokens;
  }

  /** Returns a text of up to a dozen random pieces. */
  public String soup() {
    StringBuilder out = new StringBuilder();
    int pieces = random.nextInt(12);
    for (int i = 0; i < pieces; i++) {
      out.append(token());
    }
    return out.toString();
  }

  /** Returns one of the good texts with none to several changes. */
  public String mutant(List<String> good) {
    String text = good.get(random.nextInt(good.size()));
    int changes = random.nextInt(5);
    for (int i = 0; i < changes; i++) {
      text = changed(text);
    }
    return text;
  }

  /** Returns the UTF-8 bytes of a text, one time in four with some bytes overwritten. */
  public byte[] bytes(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > 0 && random.nextInt(4) == 0) {
      for (int i = random.nextInt(4); i >= 0; i--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
    }
    return bytes;
  }

  private String changed(String text) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(20));
    return switch (random.nextInt(6)) {
      case 0 -> text.substring(0, from) + text.substring(to);
      case 1 -> text.substring(0, to) + text.substring(from);
      case 2 -> text.substring(0, from) + token() + text.substring(to);
      case 3 -> text.substring(0, from) + token() + text.substring(from);
      case 4 -> text.substring(0, from) + (char) random.nextInt(0x10000) + text.substring(from);
      default -> digitChanged(text, from);
    };
  }

  private String digitChanged(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return text.substring(0, i) + random.nextInt(1000) + text.substring(i + 1);
      }
    }
    return text;
  }

  private String token() {
    return tokens.get(random.nextInt(tokens.size()));
  }
}
