package loadwalk.text;

/**
 * Makes text that was typed or read from a file safe to show: on one line, cut short, with
 * characters that would control a terminal or change the reading direction written as codes.
 *
 * <p>HTML, Markdown, CSV and SVG writers escape their special characters after this.
 */
public final class Visible {
  /** The longest name shown, code points. */
  public static final int NAME = 80;

  /** The longest sentence shown, code points. */
  public static final int SENTENCE = 2000;

  private static final int QUOTED = 40;
  private static final char INSTEAD = '?';
  private static final int ASCII_END = 0x7f;
  private static final int NO_BREAK_SPACE = 0xa0;
  private static final int SOFT_HYPHEN = 0xad;

  private Visible() {}

  /** Tells whether a character is visible and has no other effect. */
  public static boolean is(int code) {
    if (code >= ' ' && code < ASCII_END) {
      return true;
    }
    return switch (Character.getType(code)) {
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

  /** Returns a name on one line, cut to {@link #NAME}. */
  public static String name(String text) {
    return line(text, NAME);
  }

  /** Returns a sentence on one line, cut to {@link #SENTENCE}. */
  public static String sentence(String text) {
    return line(text, SENTENCE);
  }

  /**
   * Returns a text on one line: line breaks and tabs as blanks, invisible characters as codes.
   *
   * @param most the most code points of it that are shown; a text that is cut ends in "…"
   */
  public static String line(String text, int most) {
    if (text.length() <= most && isPlain(text)) {
      return text;
    }
    return coded(text.replace('\n', ' ').replace('\r', ' ').replace('\t', ' '), most);
  }

  /**
   * Returns a text with every invisible character as its code, line breaks and tabs too.
   *
   * @param most the most code points of it that are shown; a text that is cut ends in "…"
   */
  public static String coded(String text, int most) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (int count = 0; at < text.length() && count < most; count++) {
      int code = text.codePointAt(at);
      at += Character.charCount(code);
      if (is(code)) {
        out.appendCodePoint(code);
      } else {
        out.append(String.format("\\u%04x", code));
      }
    }
    return at < text.length() ? out.append('…').toString() : out.toString();
  }

  /** Returns a word from a file or from typed text, in quotes, cut to 40 code points. */
  public static String quoted(String text) {
    return "«" + coded(text, QUOTED) + "»";
  }

  /**
   * Returns a text in which every character takes one screen cell: one that takes none or two, or
   * is half a character, becomes a question mark; line breaks and tabs become blanks.
   */
  public static String cells(String text) {
    StringBuilder out = null;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean cell = c >= ' ' && c < ASCII_END || is(c) && Columns.of(c) == 1;
      if (!cell) {
        out = out == null ? new StringBuilder(text) : out;
        out.setCharAt(i, c == '\n' || c == '\r' || c == '\t' ? ' ' : INSTEAD);
      }
    }
    return out == null ? text : out.toString();
  }

  /**
   * Returns the character, or a question mark for a control character that is not a line break or
   * tab.
   */
  public static char harmless(char c) {
    boolean layout = c == '\n' || c == '\r' || c == '\t';
    return Character.isISOControl(c) && !layout ? INSTEAD : c;
  }

  /** Recognises plain text without a copy: a ledger has many texts, and most are plain. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = (c >= ' ' && c < ASCII_END) || (c > NO_BREAK_SPACE && c < SOFT_HYPHEN);
      if (!plain && c != '±' && c != 'Ω') {
        return false;
      }
    }
    return true;
  }
}
