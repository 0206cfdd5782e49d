package loadwalk.chart;

import loadwalk.text.Visible;

/** Makes text safe inside an SVG picture. */
final class SvgText {
  private SvgText() {}

  static String safe(String text) {
    StringBuilder out = new StringBuilder();
    String shown = Visible.sentence(text);
    for (int i = 0; i < shown.length(); i++) {
      switch (shown.charAt(i)) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(shown.charAt(i));
      }
    }
    return out.toString();
  }
}
