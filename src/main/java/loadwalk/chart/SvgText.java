package loadwalk.chart;

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
                  if (shows(code)) {
                    out.appendCodePoint(code);
                  } else {
                    out.append(String.format("\\u%04x", code));
                  }
                }
              }
            });
    return out.toString();
  }

  static boolean shows(int code) {
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

  static String cut(String text, int most) {
    int[] codes = text.codePoints().limit(most + 1L).toArray();
    return codes.length <= most ? text : new String(codes, 0, most - 1) + "…";
  }
}
