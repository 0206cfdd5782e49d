package loadwalk.text;

import java.text.Normalizer;

/**
 * Puts text into ASCII, always the same way: 40 °C is "40 degC", 4 Ω is "4 ohm", é is e.
 *
 * <p>Some signs become longer, so put text into ASCII before laying it out in columns. A character
 * that has no spelling or would control a terminal becomes a question mark.
 */
public final class Ascii {
  private static final String UNKNOWN = "?";
  private static final int END = 0x7f;

  private Ascii() {}

  /** Returns the text in printable ASCII; line feeds stay. */
  public static String of(String text) {
    int from = 0;
    while (from < text.length() && stays(text.charAt(from))) {
      from++;
    }
    if (from == text.length()) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length() + UNKNOWN.length()).append(text, 0, from);
    for (int i = from; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int code = text.codePointAt(i);
      if (stays(code)) {
        out.append((char) code);
      } else {
        String sign = sign(code);
        out.append(sign != null ? sign : letters(code));
      }
    }
    return out.toString();
  }

  private static boolean stays(int code) {
    return code >= ' ' && code < END || code == '\n';
  }

  /** Returns the spelling of a technical or typographic sign, or null. */
  private static String sign(int code) {
    return switch (code) {
      case '\t' -> " ";
      case 'Ω' -> "ohm";
      case '°' -> "deg";
      case 'µ', 'μ' -> "u";
      case '±' -> "+-";
      case '×' -> "x";
      case '·', '│', '┤' -> "|";
      case '•', '●' -> "*";
      case '÷', '⁄', '∕' -> "/";
      case '≤' -> "<=";
      case '≥' -> ">=";
      case '≠' -> "!=";
      case '≈', '∼' -> "~";
      case '→' -> "->";
      case '←' -> "<-";
      case '√' -> "sqrt ";
      case '∞' -> "inf";
      case '✓' -> "+";
      case 'α' -> "alpha";
      case 'β' -> "beta";
      case 'η' -> "eta";
      case 'π' -> "pi";
      case 'τ' -> "tau";
      case 'φ' -> "phi";
      case 'Δ', '∂' -> "d";
      case '−', '–', '—', '‐', '‑', '‒', '─', '╌' -> "-";
      case '«', '»', '“', '”', '„' -> "\"";
      case '‘', '’', '‚', '‹', '›', '´' -> "'";
      case 'ß' -> "ss";
      case 'æ' -> "ae";
      case 'Æ' -> "AE";
      case 'œ' -> "oe";
      case 'Œ' -> "OE";
      case 'ø' -> "o";
      case 'Ø' -> "O";
      case 'ł' -> "l";
      case 'Ł' -> "L";
      default -> null;
    };
  }

  /** Strips a letter of its marks and splits combined signs: ½, ², ﬁ. */
  private static String letters(int code) {
    if (Character.isSpaceChar(code)) {
      return " ";
    }
    if (Columns.isMark(code)) {
      return "";
    }
    String parts = Normalizer.normalize(Character.toString(code), Normalizer.Form.NFKD);
    StringBuilder out = new StringBuilder();
    parts
        .codePoints()
        .forEach(
            part -> {
              String sign = sign(part);
              out.append(stays(part) ? Character.toString(part) : sign == null ? "" : sign);
            });
    return out.length() == 0 ? UNKNOWN : out.toString();
  }
}
