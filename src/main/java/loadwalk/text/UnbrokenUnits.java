package loadwalk.text;

import java.util.regex.Pattern;

/**
 * Keeps a number, its uncertainty and its unit on one line: the spaces between them do not break.
 */
public final class UnbrokenUnits {
  /** The no-break space. */
  public static final char SPACE = '\u00a0';

  private static final Pattern UNIT = Pattern.compile("[µmkM]?(W|V|A|Ω|Hz|s|m)|%|°C|min|mm²|dB");

  private UnbrokenUnits() {}

  /** Returns the text with no-break spaces between numbers and their units. */
  public static String held(String text) {
    StringBuilder out = null;
    for (int i = text.indexOf(' ', 1); i >= 0; i = text.indexOf(' ', i + 1)) {
      if (holds(text, i)) {
        out = out == null ? new StringBuilder(text) : out;
        out.setCharAt(i, SPACE);
      }
    }
    return out == null ? text : out.toString();
  }

  /** Returns the text with plain spaces again. */
  public static String released(String text) {
    return text.replace(SPACE, ' ');
  }

  private static boolean holds(String text, int space) {
    char before = text.charAt(space - 1);
    char after = space + 1 < text.length() ? text.charAt(space + 1) : ' ';
    if (before == '±') {
      return Character.isDigit(after);
    }
    return Character.isDigit(before)
        && (after == '±' || UNIT.matcher(word(text, space + 1)).matches());
  }

  private static String word(String text, int from) {
    int end = from;
    while (end < text.length() && " ,.;:)/".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return text.substring(from, end);
  }
}
