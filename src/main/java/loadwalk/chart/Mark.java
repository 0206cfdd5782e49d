package loadwalk.chart;

import java.util.Locale;

/** Tells series apart by their mark and dash. */
final class Mark {
  /** The number of series that can be told apart. */
  static final int COUNT = 6;

  private static final String UTF8 = "●■▲◆✚○";
  private static final String ASCII = "ox^#+@";
  private static final String[] DASHES = {
    "",
    " stroke-dasharray=\"6 3\"",
    " stroke-dasharray=\"2 3\"",
    " stroke-dasharray=\"9 3 2 3\"",
    " stroke-dasharray=\"4 4\"",
    " stroke-dasharray=\"1 2\""
  };

  private Mark() {}

  static char sign(int index, boolean ascii) {
    return (ascii ? ASCII : UTF8).charAt(index % COUNT);
  }

  static String dash(int index) {
    return DASHES[index % COUNT];
  }

  static void svg(StringBuilder out, int index, double x, double y) {
    String shape =
        switch (index % COUNT) {
          case 0 -> circle(x, y, "currentColor");
          case 1 -> polygon(x, y, "-4 -4 4 -4 4 4 -4 4");
          case 2 -> polygon(x, y, "0 -5 5 4 -5 4");
          case 3 -> polygon(x, y, "0 -5.5 5.5 0 0 5.5 -5.5 0");
          case 4 ->
              polygon(
                  x,
                  y,
                  "-1.5 -5 1.5 -5 1.5 -1.5 5 -1.5 5 1.5 1.5 1.5 1.5 5 -1.5 5 -1.5 1.5 -5 1.5 -5"
                      + " -1.5 -1.5 -1.5");
          default -> circle(x, y, "none");
        };
    out.append(shape);
  }

  private static String circle(double x, double y, String fill) {
    return String.format(
        Locale.ROOT,
        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4.2\" fill=\"%s\" stroke=\"currentColor\"/>",
        x,
        y,
        fill);
  }

  private static String polygon(double x, double y, String corners) {
    return String.format(
        Locale.ROOT,
        "<polygon transform=\"translate(%.1f %.1f)\" points=\"%s\" fill=\"currentColor\"/>",
        x,
        y,
        corners);
  }
}
