package loadwalk.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.regex.Pattern;
import loadwalk.KeptText;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;

/** Whole documents, compared with those kept in {@code src/test/resources/documents}. */
public final class Documents {
  public static final Path FOLDER = KeptText.place("documents");

  private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d{9,}(E-?\\d+)?");
  private static final Pattern DRAWING = Pattern.compile("(?s)(<svg [^>]*>).*?</svg>");
  private static final Pattern STYLE = Pattern.compile("(?s)<style>\n.*?</style>");
  private static final MathContext NINE_DIGITS = new MathContext(9);

  private Documents() {}

  /** Compares a document with the one kept; of the first lines that differ, both are shown. */
  public static void same(String name, String text) {
    KeptText.same(FOLDER.resolve(name), text);
  }

  public static void same(String name, List<String> lines) {
    same(name, String.join("\n", lines) + "\n");
  }

  /** Returns a text whose long numbers have nine digits: the last ones are the platform's. */
  public static String nineDigits(String text) {
    return LONG_NUMBER
        .matcher(text)
        .replaceAll(number -> new BigDecimal(number.group()).round(NINE_DIGITS).toString());
  }

  /** Returns a page without its style and the insides of its drawings, which have their own. */
  public static String bones(String html) {
    String plain = STYLE.matcher(html).replaceAll("<style>…</style>");
    return DRAWING.matcher(plain).replaceAll("$1…</svg>");
  }

  /** Returns the numbers of charts, one point a line. */
  public static List<String> numbers(List<Chart> charts) {
    StringJoiner out = new StringJoiner("\n");
    for (Chart chart : charts) {
      out.add("# " + chart.title());
      out.add("x " + chart.x());
      out.add("y " + chart.y());
      chart.limits().forEach(limit -> out.add("limit " + limit));
      for (Series series : chart.series()) {
        out.add(series.name() + ", " + series.kind() + " " + series.style());
        series.points().forEach(p -> out.add(point(p)));
      }
      out.add("");
    }
    return out.toString().lines().toList();
  }

  private static String point(Series.Point p) {
    String range = String.format(Locale.ROOT, ", %.5g to %.5g", p.low(), p.high());
    return String.format(Locale.ROOT, "  %.5g: %.5g", p.x(), p.y()) + (p.hasRange() ? range : "");
  }
}
