package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.report.Documents;
import loadwalk.report.Hostile;
import loadwalk.report.Photos;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Drawing;
import loadwalk.report.page.Block.Figure;
import loadwalk.report.page.Block.Headline;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Photo;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One page with every kind of block, harmless and harmful, in every format. */
class PageSnapshotTest {
  private static Page page() {
    return new Page(
        "Every block of 4 Ω",
        "1. No list, 100 W of it",
        List.of("It is hot: 90 °C.", Hostile.MARKUP),
        List.of(
            new Page.Section("words", "Words & signs", List.of(paragraph(), bullets(), terms())),
            new Page.Section("tables", "Tables", List.of(headline(), narrow(), wide(), one())),
            new Page.Section("drawn", "Drawn", List.of(drawing(), figure("First"), figure("Next"))),
            new Page.Section("figures", "Figures only", List.of(figure("Alone"))),
            new Page.Section("photos", "Photos", List.of(kept(), missing()))));
  }

  private static Paragraph paragraph() {
    return new Paragraph("- 12.0 V ± 0.5 V is no list, nor is a*b_c [x](http://a.invalid) @all.");
  }

  private static Bullets bullets() {
    return new Bullets(
        List.of("1) one", "+ two", "= three", Hostile.LINK, Hostile.STEERING, "www.a.invalid"));
  }

  private static Terms terms() {
    return new Terms(
        List.of(
            new Term("Short", "A text that is long enough to wrap in a narrow terminal at least."),
            new Term("Much longer term | of 2 Ω", Hostile.TURNING + "2 Ω")));
  }

  private static Headline headline() {
    return new Headline(
        new Table(
            "Power at each load",
            List.of(Column.words("Load"), Column.numbers("Per Load"), Column.words("Rating")),
            List.of(List.of("4 Ω", "61.6 ± 1.1 W", "met"), List.of("2 Ω", "110 W", ""))));
  }

  private static Table narrow() {
    return new Table(
        "Five columns | with a pipe",
        List.of(
            Column.words("Step"),
            Column.numbers("Volts, rms"),
            Column.numbers("A long header of a number"),
            Column.words("Words"),
            Column.numbers("n")),
        List.of(
            List.of("stereo-4", "15.90 V", "1", "a | b <i>c</i>", "-1"),
            List.of("x".repeat(45), "-2 V", "", "several words that can wrap here", "10"),
            List.of("capture-calibration-of-nothing-9-V", "3 V", "é", "界".repeat(21), "100")));
  }

  private static Table wide() {
    List<Column> columns =
        List.of(
            Column.words("a"),
            Column.words("b"),
            Column.numbers("c"),
            Column.numbers("d"),
            Column.words("e"),
            Column.words("f"));
    String long17 = "seventeen-letters";
    return new Table(
        "Six columns",
        columns,
        List.of(
            List.of(long17, long17, "12345678", "12345678", long17, long17),
            List.of("1", "2", "3", "4", "5", "")));
  }

  private static Table one() {
    return new Table("One cell", List.of(Column.words("only")), List.of(List.of("𝄞".repeat(25))));
  }

  private static Drawing drawing() {
    return new Drawing(
        "A load of 8 Ω",
        List.of("left+ --+-[R1]-+--", "        `-[R2]-' <&>"),
        "R1 parallel to R2");
  }

  private static Figure figure(String title) {
    Series series =
        new Series("measured", Series.Kind.MARKS, 1, List.of(Series.Point.within(1, 2, 0.5)));
    Chart chart = Chart.of(title, Axis.fromZero("x, A"), Axis.fromZero("y, W"), List.of(series));
    return new Figure(chart, "See <this>.");
  }

  private static Photo kept() {
    return new Photo(
        "the \"bank\" & fan",
        "09:30, idle",
        "sessions/t.photos/a b(1)-ü_x.png",
        Picture.of(Photos.smallest()));
  }

  private static Photo missing() {
    return new Photo("gone", "09:31, idle", "sessions/t.photos/gone.png", Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(ints = {39, 41, 60, 80, 120})
  void text_isAsKept(int columns) {
    Documents.same("page-" + columns + ".txt", TextPage.lines(page(), columns, false));
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100})
  void ascii_isAsKept(int columns) {
    Documents.same("page-ascii-" + columns + ".txt", TextPage.lines(page(), columns, true));
  }

  /** The rule under the header shows the widths of the columns: one line for each width. */
  @Test
  void columnsOfATable_areAsKept_atEveryWidth() {
    List<String> rules = new ArrayList<>();
    for (int columns = 40; columns <= 140; columns++) {
      Page.Section tables = new Page.Section("t", "T", List.of(narrow()));
      List<String> lines =
          TextPage.lines(new Page("", "", List.of(), List.of(tables)), columns, false);
      String rule =
          lines.stream().filter(l -> l.matches("─+(  ─+)+")).findFirst().orElse("stacked");
      rules.add(String.format("%3d %s", columns, rule));
    }
    Documents.same("table-widths.txt", rules);
  }

  @Test
  void drawing_isDrawnWhereItFits_inWordsWhereItDoesNot() {
    Drawing load = new Drawing("Ω", List.of("-".repeat(46), "4 Ω"), "R1 + R2");
    Page page = new Page("", "", List.of(), List.of(new Page.Section("d", "D", List.of(load))));
    assertTrue(TextPage.lines(page, 50, true).contains("    " + "-".repeat(46)));
    assertTrue(TextPage.lines(page, 50, true).contains("    4 ohm"));
    assertTrue(TextPage.lines(page, 50, false).contains("    4 Ω"));
    assertTrue(TextPage.lines(page, 49, false).contains("    R1 + R2"));
  }

  @Test
  void row_withACellTooMany_isRefused() {
    List<Column> two = List.of(Column.words("a"), Column.words("b"));
    for (List<String> row : List.of(List.of("1"), List.of("1", "2", "3"))) {
      assertThrows(IllegalArgumentException.class, () -> new Table("t", two, List.of(row)));
    }
  }

  @Test
  void html_isAsKept() {
    Documents.same("page.html", Documents.bones(HtmlPage.html(page())));
  }

  @Test
  void markdown_isAsKept() {
    Documents.same("page.md", MarkdownPage.text(page()));
  }
}
