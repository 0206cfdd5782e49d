package loadwalk.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.chart.Chart;
import loadwalk.chart.TextChart;
import loadwalk.text.Ascii;
import loadwalk.text.Columns;
import loadwalk.text.Sentence;
import loadwalk.text.UnbrokenUnits;
import loadwalk.text.Visible;

/** Writes a page as lines for a terminal or a text file, none wider than the given width. */
public final class TextPage implements Block.Writer {
  private static final String GAP = "  ";
  private static final String DRAWING_INDENT = "    ";
  private static final int WIDEST_LEAST_CELL = 16;
  private static final int CHART_COLUMNS = 76;
  private static final int CHART_ROWS = 11;

  private final int columns;
  private final boolean ascii;
  private final List<String> lines = new ArrayList<>();

  private TextPage(int columns, boolean ascii) {
    this.columns = columns;
    this.ascii = ascii;
  }

  /**
   * Returns the lines of a page.
   *
   * @param columns the greatest width of a line; less than 40 counts as 40
   * @param ascii whether to use only ASCII
   */
  public static List<String> lines(Page page, int columns, boolean ascii) {
    TextPage text = new TextPage(Math.max(columns, 40), ascii);
    text.page(page);
    return text.lines.stream().map(UnbrokenUnits::released).toList();
  }

  private void page(Page page) {
    wrapped(page.title(), "", "");
    wrapped(page.subtitle(), "", "");
    lines.add("");
    for (String warning : page.warnings()) {
      wrapped(Sentence.of("WARNING: {}", warning), "", "  ");
    }
    if (!page.warnings().isEmpty()) {
      lines.add("");
    }
    for (Page.Section section : page.sections()) {
      String title = shown(section.title());
      lines.add(title);
      lines.add((ascii ? "-" : "─").repeat(Math.min(columns, Columns.of(title))));
      section.blocks().forEach(this::block);
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
  }

  private void block(Block block) {
    block.writeTo(this);
    lines.add("");
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    wrapped(paragraph.text(), "", "");
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    bullets.items().forEach(this::bullet);
  }

  private void bullet(String item) {
    wrapped(item, ascii ? "* " : "• ", "  ");
  }

  @Override
  public void headline(Block.Headline headline) {
    table(headline.table());
  }

  @Override
  public void figure(Block.Figure figure) {
    Chart chart = figure.chart();
    wrapped(chart.title() + ". " + figure.caption(), "", "");
    lines.addAll(TextChart.lines(chart, Math.min(columns, CHART_COLUMNS), CHART_ROWS, ascii));
  }

  @Override
  public void photo(Block.Photo photo) {
    bullet(photo.where() + ": " + photo.caption() + " (" + photo.path() + ")");
  }

  @Override
  public void drawing(Block.Drawing drawing) {
    wrapped(drawing.caption(), "", "");
    List<String> drawn = new ArrayList<>();
    for (String line : drawing.lines()) {
      String safe = Visible.sentence(line);
      drawn.add(DRAWING_INDENT + (ascii ? Ascii.of(safe) : safe));
    }
    if (drawn.stream().allMatch(line -> Columns.of(line) <= columns)) {
      lines.addAll(drawn);
    } else {
      wrapped(drawing.words(), DRAWING_INDENT, DRAWING_INDENT);
    }
  }

  @Override
  public void terms(Block.Terms terms) {
    int width = terms.pairs().stream().mapToInt(p -> Columns.of(shown(p.term()))).max().orElse(0);
    String indent = " ".repeat(width + GAP.length());
    for (Block.Term pair : terms.pairs()) {
      String term = shown(pair.term());
      wrapped(pair.text(), Columns.padded(term, width, false) + GAP, indent);
    }
  }

  @Override
  public void table(Block.Table table) {
    wrapped(table.caption() + ":", "", "");
    List<List<String>> all = new ArrayList<>();
    all.add(table.columns().stream().map(c -> shown(c.heading())).toList());
    table.rows().forEach(row -> all.add(bare(table.columns(), row)));
    int[] widths = widths(all, table.columns());
    if (Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1) > columns) {
      stacked(all);
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      row(all.get(i), widths, table.columns());
      if (i == 0) {
        rule(widths);
      }
    }
  }

  private List<String> bare(List<Block.Column> headers, List<String> row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      cells.add(shown(headers.get(i).bare(row.get(i))));
    }
    return cells;
  }

  private void rule(int[] widths) {
    List<String> parts = new ArrayList<>();
    Arrays.stream(widths).forEach(w -> parts.add((ascii ? "-" : "─").repeat(w)));
    lines.add(String.join(GAP, parts));
  }

  /**
   * Returns the widths of the columns. If room is short, the headers of numbers wrap first, then
   * words, and numbers last.
   */
  private int[] widths(List<List<String>> rows, List<Block.Column> headers) {
    int count = headers.size();
    int[] full = new int[count];
    rows.forEach(row -> Arrays.setAll(full, i -> Math.max(full[i], Columns.of(row.get(i)))));
    if (Arrays.stream(full).sum() + GAP.length() * (count - 1) <= columns) {
      return full;
    }
    int[] widths = new int[count];
    int[] least = new int[count];
    for (int i = 0; i < count; i++) {
      boolean numeric = headers.get(i).numeric();
      for (int r = 0; r < rows.size(); r++) {
        String cell = rows.get(r).get(i);
        int word = longestWord(cell);
        least[i] = Math.max(least[i], Math.min(word, WIDEST_LEAST_CELL));
        widths[i] = Math.max(widths[i], r == 0 && numeric ? word : Columns.of(cell));
      }
    }
    int room = columns - GAP.length() * (count - 1);
    for (boolean numeric : new boolean[] {false, true}) {
      while (Arrays.stream(widths).sum() > room && narrow(widths, least, headers, numeric)) {
        continue;
      }
    }
    return widths;
  }

  private static int longestWord(String cell) {
    int longest = 0;
    int from = 0;
    while (from <= cell.length()) {
      int end = cell.indexOf(' ', from) < 0 ? cell.length() : cell.indexOf(' ', from);
      longest = Math.max(longest, Columns.of(cell.substring(from, end)));
      from = end + 1;
    }
    return longest;
  }

  /**
   * Narrows the widest column of a kind by one; returns whether there was one that could be
   * narrowed.
   */
  private static boolean narrow(
      int[] widths, int[] least, List<Block.Column> headers, boolean numeric) {
    int widest = -1;
    for (int i = 0; i < widths.length; i++) {
      boolean wider = widest < 0 || widths[i] > widths[widest];
      if (headers.get(i).numeric() == numeric && widths[i] > least[i] && wider) {
        widest = i;
      }
    }
    if (widest >= 0) {
      widths[widest]--;
    }
    return widest >= 0;
  }

  private void row(List<String> cells, int[] widths, List<Block.Column> columns) {
    List<List<String>> split = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      List<String> parts = Columns.wrapped(cells.get(i), widths[i], widths[i]);
      split.add(parts);
      height = Math.max(height, parts.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String part = line < split.get(i).size() ? split.get(i).get(line) : "";
        text.append(i == 0 ? "" : GAP)
            .append(Columns.padded(part, widths[i], columns.get(i).numeric()));
      }
      lines.add(text.toString().stripTrailing());
    }
  }

  /** Writes a table that is too wide for the screen, one cell a line. */
  private void stacked(List<List<String>> rows) {
    for (List<String> row : rows.subList(1, rows.size())) {
      for (int i = 0; i < row.size(); i++) {
        wrapped(rows.get(0).get(i) + ": " + row.get(i), i == 0 ? "" : "  ", "    ");
      }
    }
  }

  private void wrapped(String text, String first, String indent) {
    List<String> parts =
        Columns.wrapped(shown(text), columns - Columns.of(first), columns - Columns.of(indent));
    for (int i = 0; i < parts.size(); i++) {
      lines.add(((i == 0 ? first : indent) + parts.get(i)).stripTrailing());
    }
  }

  private String shown(String text) {
    String line = UnbrokenUnits.held(Visible.sentence(text));
    return ascii ? Ascii.of(line) : line;
  }
}
