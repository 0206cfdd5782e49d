package loadwalk.chart;

import loadwalk.json.Shown;

/** Makes names safe in a chart of characters. */
final class TextSigns {
  private static final int ASCII_END = 0x7f;

  private TextSigns() {}

  static String shown(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.appendCodePoint(Shown.isVisible(c) ? c : '?'));
    return out.toString();
  }

  static String ascii(String text) {
    StringBuilder out = new StringBuilder();
    text.replace("Ω", "ohm")
        .replace("°", "deg")
        .replace("±", "+/-")
        .replace("…", "~")
        .codePoints()
        .forEach(c -> out.append(c < ASCII_END ? (char) c : '?'));
    return out.toString();
  }
}
