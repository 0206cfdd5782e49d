package loadwalk.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures and fits text in terminal columns: combining marks take none, wide East Asian characters
 * two.
 */
public final class Columns {
  private static final int FIRST_MARK = 0x300;
  private static final int FIRST_WIDE = 0x1100;
  private static final String CUT = "…";

  private Columns() {}

  /** Returns how many columns a text takes. */
  public static int of(String text) {
    int i = 0;
    while (i < text.length() && (text.charAt(i) < FIRST_MARK || text.charAt(i) == 'Ω')) {
      i++;
    }
    return i == text.length() ? i : text.codePoints().map(Columns::of).sum();
  }

  /** Returns how many columns a code point takes: none, one or two. */
  public static int of(int code) {
    if (code < FIRST_MARK) {
      return 1;
    }
    return isMark(code) ? 0 : isWide(code) ? 2 : 1;
  }

  static boolean isMark(int code) {
    int type = Character.getType(code);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }

  private static boolean isWide(int code) {
    return code >= FIRST_WIDE
        && (code <= 0x115f
            || (code >= 0x2e80 && code <= 0xa4cf)
            || (code >= 0xac00 && code <= 0xd7a3)
            || (code >= 0xf900 && code <= 0xfaff)
            || (code >= 0xfe30 && code <= 0xfe6f)
            || (code >= 0xff00 && code <= 0xff60)
            || (code >= 0xffe0 && code <= 0xffe6)
            || (code >= 0x1f300 && code <= 0x1faff)
            || (code >= 0x20000 && code <= 0x3fffd));
  }

  /** Returns the text padded with blanks to a width, after it or before it. */
  public static String padded(String text, int width, boolean before) {
    String blanks = " ".repeat(Math.max(0, width - of(text)));
    return before ? blanks + text : text + blanks;
  }

  /**
   * Returns the text if it fits, otherwise its beginning followed by "…", in ASCII "...".
   *
   * @param width the columns available
   * @param ascii whether only ASCII may be used
   */
  public static String shortened(String text, int width, boolean ascii) {
    if (of(text) <= width) {
      return text;
    }
    String mark = ascii ? Ascii.of(CUT) : CUT;
    int room = width - mark.length();
    if (room < 0) {
      return mark.substring(0, Math.max(0, width));
    }
    int end = fitting(text, room);
    return text.substring(0, end) + mark;
  }

  /**
   * Breaks a text at blanks, and within a word only if the word is longer than a line. Blanks at a
   * break are dropped, several in a row count as one, and a no-break space never breaks.
   *
   * @param first the columns of the first line
   * @param rest the columns of each further line; less than 1 counts as 1
   */
  public static List<String> wrapped(String text, int first, int rest) {
    if (!text.contains("  ") && of(text) <= first) {
      return List.of(text.strip());
    }
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (int from = nextWord(text, 0); from < text.length(); ) {
      int end = endOfWord(text, from);
      String word = text.substring(from, end);
      from = nextWord(text, end);
      int size = of(word);
      if (used > 0 && used + 1 + size > room(lines, first, rest)) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      while (used + size > room(lines, first, rest)) {
        int cut =
            Math.max(
                Character.charCount(word.codePointAt(0)), fitting(word, room(lines, first, rest)));
        lines.add(word.substring(0, cut));
        word = word.substring(cut);
        size = of(word);
      }
      line.append(word);
      used += size;
    }
    if (line.length() > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static int room(List<String> lines, int first, int rest) {
    return Math.max(1, lines.isEmpty() ? first : rest);
  }

  private static int nextWord(String text, int from) {
    int at = from;
    while (at < text.length() && isBreak(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static int endOfWord(String text, int from) {
    int at = from;
    while (at < text.length() && !isBreak(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isBreak(char c) {
    return c == ' ' || c == '\n' || c == '\t';
  }

  /** Returns the end of the longest beginning that fits the width, marks kept with their letter. */
  private static int fitting(String text, int width) {
    int used = 0;
    int at = 0;
    while (at < text.length()) {
      int code = text.codePointAt(at);
      used += of(code);
      if (used > width) {
        break;
      }
      at += Character.charCount(code);
    }
    return at;
  }
}
