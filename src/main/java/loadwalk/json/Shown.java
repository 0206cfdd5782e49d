package loadwalk.json;

/** Makes text from a file safe to show: cut short, invisible characters written as their code. */
public final class Shown {
  private static final int KEY_LENGTH = 40;

  private Shown() {}

  static String quoted(String text) {
    return "«" + text(text, KEY_LENGTH) + "»";
  }

  /**
   * Returns a text that is safe on a terminal.
   *
   * @param text any text
   * @param most the most characters of it that are shown
   */
  public static String text(String text, int most) {
    StringBuilder out = new StringBuilder();
    int[] codes = text.codePoints().limit(most + 1L).toArray();
    for (int i = 0; i < Math.min(codes.length, most); i++) {
      if (isVisible(codes[i])) {
        out.appendCodePoint(codes[i]);
      } else {
        out.append(String.format("\\u%04x", codes[i]));
      }
    }
    return codes.length > most ? out + "…" : out.toString();
  }

  /** Tells whether a character shows itself and does nothing else. */
  public static boolean isVisible(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
