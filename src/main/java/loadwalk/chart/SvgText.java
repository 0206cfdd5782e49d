package loadwalk.chart;

import loadwalk.json.Shown;

/** Makes text safe inside an SVG picture. */
final class SvgText {
  private SvgText() {}

  static String safe(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            code -> {
              switch (code) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                  if (Shown.isVisible(code)) {
                    out.appendCodePoint(code);
                  } else {
                    out.append(String.format("\\u%04x", code));
                  }
                }
              }
            });
    return out.toString();
  }

  static String cut(String text, int most) {
    int[] codes = text.codePoints().limit(most + 1L).toArray();
    return codes.length <= most ? text : new String(codes, 0, most - 1) + "…";
  }
}
