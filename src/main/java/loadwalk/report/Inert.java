package loadwalk.report;

import java.util.Map;
import loadwalk.json.Shown;

/**
 * Makes text that people typed safe to show: on one line, cut short, characters that would steer a
 * terminal or turn the reading direction written as their code.
 */
final class Inert {
  /** The longest name shown, code points. */
  static final int NAME = 80;

  /** The longest sentence shown, code points. */
  static final int SENTENCE = 2000;

  private static final int ASCII_END = 0x7f;
  private static final int NO_BREAK_SPACE = 0xa0;
  private static final int SOFT_HYPHEN = 0xad;
  private static final int FIRST_MARK = 0x300;

  private static final Map<Integer, String> SIGNS =
      Map.ofEntries(
          Map.entry(NO_BREAK_SPACE, String.valueOf(Glue.SPACE)),
          Map.entry((int) '±', "+/-"),
          Map.entry((int) 'Ω', "ohm"),
          Map.entry((int) '°', "deg"),
          Map.entry((int) 'µ', "u"),
          Map.entry((int) '×', "x"),
          Map.entry((int) '·', "|"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '…', "..."),
          Map.entry((int) '«', "\""),
          Map.entry((int) '»', "\""),
          Map.entry((int) '’', "'"),
          Map.entry((int) '²', "2"),
          Map.entry((int) 'τ', "tau"),
          Map.entry((int) '∞', "end"));

  private Inert() {}

  /** Returns a name, cut to {@link #NAME}. */
  static String name(String text) {
    return line(text, NAME);
  }

  /** Returns a text on one line, cut to so many code points. */
  static String line(String text, int most) {
    if (text.length() <= most && isPlain(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    int[] codes = text.codePoints().limit(most + 1L).toArray();
    for (int i = 0; i < Math.min(codes.length, most); i++) {
      append(out, codes[i]);
    }
    return codes.length > most ? out.append('…').toString() : out.toString();
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

  private static void append(StringBuilder out, int code) {
    if (code == '\n' || code == '\r' || code == '\t') {
      out.append(' ');
    } else if (Shown.isVisible(code)) {
      out.appendCodePoint(code);
    } else {
      out.append(String.format("\\u%04x", code));
    }
  }

  /** Returns a text in ASCII: signs by their words, what has none as a question mark. */
  static String ascii(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            code -> {
              if (code < ASCII_END) {
                out.appendCodePoint(code);
              } else {
                out.append(SIGNS.getOrDefault(code, "?"));
              }
            });
    return out.toString();
  }

  /** Returns how many terminal columns a text takes: marks none, East Asian wide signs two. */
  static int columns(String text) {
    int i = 0;
    while (i < text.length() && (text.charAt(i) < FIRST_MARK || text.charAt(i) == 'Ω')) {
      i++;
    }
    return i == text.length() ? i : manyColumns(text);
  }

  private static int manyColumns(String text) {
    return text.codePoints().map(Inert::columns).sum();
  }

  static int columns(int code) {
    int type = Character.getType(code);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        (code >= 0x1100 && code <= 0x115f)
            || (code >= 0x2e80 && code <= 0xa4cf)
            || (code >= 0xac00 && code <= 0xd7a3)
            || (code >= 0xf900 && code <= 0xfaff)
            || (code >= 0xfe30 && code <= 0xfe6f)
            || (code >= 0xff00 && code <= 0xff60)
            || (code >= 0xffe0 && code <= 0xffe6)
            || (code >= 0x1f300 && code <= 0x1faff)
            || (code >= 0x20000 && code <= 0x3fffd);
    return wide ? 2 : 1;
  }
}
