package loadwalk.quantity;

import java.util.Map;
import loadwalk.text.Visible;

/** Folds variant forms of a character into one for reading, and shows typed text safely. */
final class EntryText {
  private static final int SHOWN = 24;
  private static final Map<Character, String> FOLDED =
      Map.ofEntries(
          Map.entry('\u2212', "-"),
          Map.entry('\u2010', "-"),
          Map.entry('\u2011', "-"),
          Map.entry('\u2012', "-"),
          Map.entry('\u2013', "-"),
          Map.entry('\uFF0D', "-"),
          Map.entry('\uFF0B', "+"),
          Map.entry('\uFF0E', "."),
          Map.entry('\uFF0C', ","),
          Map.entry('\u066B', "."),
          Map.entry('\u2044', "/"),
          Map.entry('\u2215', "/"),
          Map.entry('\u2126', "Ω"),
          Map.entry('\u00B5', "μ"),
          Map.entry('\u212A', "K"),
          Map.entry('\u2103', "°C"),
          Map.entry('\u2109', "°F"),
          Map.entry('\u00BA', "°"),
          Map.entry('½', " 1/2"),
          Map.entry('¼', " 1/4"),
          Map.entry('¾', " 3/4"),
          Map.entry('⅓', " 1/3"),
          Map.entry('⅔', " 2/3"),
          Map.entry('⅛', " 1/8"),
          Map.entry('⅜', " 3/8"),
          Map.entry('⅝', " 5/8"),
          Map.entry('⅞', " 7/8"));

  private EntryText() {}

  /**
   * Returns the text with digits of any script, spaces, signs and unit letters in one form each.
   */
  static String folded(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> fold(c, out));
    return out.toString().strip();
  }

  private static void fold(int c, StringBuilder out) {
    String other = c <= Character.MAX_VALUE ? FOLDED.get((char) c) : null;
    if (other != null) {
      out.append(other);
    } else if (Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER) {
      out.append((char) ('0' + Character.digit(c, 10)));
    } else if (Character.isSpaceChar(c) || c == '\t' || c == '\n' || c == '\r') {
      out.append(' ');
    } else {
      out.appendCodePoint(c);
    }
  }

  /** Returns the text cut short, with invisible characters written as codes. */
  static String shown(String text) {
    return Visible.coded(text, SHOWN);
  }
}
