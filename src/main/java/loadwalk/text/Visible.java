package loadwalk.text;

/**
 * Makes text that somebody typed, or that stands in a file, safe to show: on one line, cut short,
 * and what would steer a terminal or turn the reading direction is written as its code.
 *
 * <p>HTML, Markdown, CSV and SVG escape their own signs where they are written, behind this.
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

  /** Tells whether a character shows itself and does nothing else. */
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
   * Returns a text on one line: line breaks and tabs as blanks, what cannot be seen as its code.
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
   * Returns a text in which every character can be seen: line breaks and tabs too as their code.
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

  /** Returns a word of a file or of what was typed, between quotes, cut to 40 code points. */
  public static String quoted(String text) {
    return "«" + coded(text, QUOTED) + "»";
  }

  /**
   * Returns a text in which every character takes one cell of a screen: what takes none or two, or
   * is no character by itself, is a question mark, and line breaks and tabs are blanks.
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
   * Returns the character if it does not steer a terminal, layout included; else a question mark.
   */
  public static char harmless(char c) {
    boolean layout = c == '\n' || c == '\r' || c == '\t';
    return Character.isISOControl(c) && !layout ? INSTEAD : c;
  }

  /** Most texts are plain, and a ledger has many: they are told apart without another copy. */
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
