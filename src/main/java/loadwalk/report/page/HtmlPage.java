package loadwalk.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import loadwalk.chart.SvgChart;
import loadwalk.text.UnbrokenUnits;
import loadwalk.text.Visible;

/**
 * Writes a page as one HTML file that runs no script and loads nothing from anywhere.
 *
 * <p>It is plain Java, not a template engine. A page has few kinds of blocks, so a template would
 * save little and add a language. Here text becomes markup in one place only, {@link #text}, and
 * nothing can bypass it.
 */
public final class HtmlPage implements Block.Writer {
  private static final int NARROW_COLUMNS = 5;
  private static final int LONGEST_WORD = 20;
  private static final String STYLE = style();

  private final StringBuilder out = new StringBuilder();
  private int figures;
  private int boxes;

  private HtmlPage() {}

  /** Returns the whole file. */
  public static String html(Page page) {
    HtmlPage html = new HtmlPage();
    html.page(page);
    return html.out.toString();
  }

  private static String style() {
    try (InputStream in = HtmlPage.class.getResourceAsStream("/loadwalk/report/page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet in the jar cannot be read", e);
    }
  }

  private void page(Page page) {
    out.append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    out.append("<meta name=\"color-scheme\" content=\"light dark\">\n");
    out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';");
    out.append(" style-src 'unsafe-inline'; img-src data:\">\n");
    out.append("<link rel=\"icon\" href=\"data:,\">\n<title>");
    text(page.title());
    out.append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
    out.append("<header>\n<h1>");
    text(page.title());
    out.append("</h1>\n<p>");
    text(page.subtitle());
    out.append("</p>\n</header>\n<main>\n");
    for (String warning : page.warnings()) {
      out.append("<p class=\"warning\"><strong>Warning.</strong> ");
      text(warning);
      out.append("</p>\n");
    }
    page.sections().forEach(this::section);
    out.append("</main>\n</body>\n</html>\n");
  }

  private void section(Page.Section section) {
    out.append("<section id=\"").append(section.id()).append("\" aria-labelledby=\"h-");
    out.append(section.id()).append("\">\n").append(section.closed() ? "<details><summary>" : "");
    out.append("<h2 id=\"h-").append(section.id()).append("\">");
    text(section.title());
    out.append(section.closed() ? "</h2></summary>\n" : "</h2>\n");
    boolean charts = section.blocks().stream().anyMatch(Block::isPicture);
    out.append(charts ? "<div class=\"figures\">\n" : "");
    section.blocks().forEach(block -> block.writeTo(this));
    out.append(charts ? "</div>\n" : "").append(section.closed() ? "</details>\n" : "");
    out.append("</section>\n");
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    element("p", paragraph.text());
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    out.append("<ul>\n");
    bullets.items().forEach(item -> element("li", item));
    out.append("</ul>\n");
  }

  @Override
  public void terms(Block.Terms terms) {
    out.append("<dl class=\"terms\">\n");
    for (Block.Term pair : terms.pairs()) {
      out.append("<div>");
      inline("dt", pair.term());
      inline("dd", pair.text());
      out.append("</div>\n");
    }
    out.append("</dl>\n");
  }

  @Override
  public void table(Block.Table table) {
    String id = openBox(table.caption());
    out.append("<table aria-labelledby=\"").append(id).append('"');
    out.append(table.columns().size() > NARROW_COLUMNS ? " class=\"wide\">\n" : ">\n");
    out.append("<thead><tr>");
    for (Block.Column column : table.columns()) {
      out.append("<th scope=\"col\"").append(column.numeric() ? " class=\"n\">" : ">");
      cell(column.name());
      out.append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    table.rows().forEach(row -> row(table.columns(), row));
    out.append("</tbody>\n</table>\n</div>\n");
  }

  /** Opens a box in which wide content scrolls and which the keyboard can reach. */
  private String openBox(String caption) {
    boxes++;
    String id = "table" + boxes;
    out.append("<p class=\"caption\" id=\"").append(id).append("\">");
    text(caption);
    out.append("</p>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"");
    out.append(id).append("\">\n");
    return id;
  }

  @Override
  public void drawing(Block.Drawing drawing) {
    openBox(drawing.caption());
    out.append("<pre>");
    for (String line : drawing.lines()) {
      signs(Visible.sentence(line));
      out.append('\n');
    }
    out.append("</pre>\n</div>\n");
  }

  private void row(List<Block.Column> columns, List<String> row) {
    out.append("<tr><th scope=\"row\">");
    cell(row.get(0));
    out.append("</th>");
    for (int i = 1; i < row.size(); i++) {
      out.append(columns.get(i).numeric() ? "<td class=\"n\">" : "<td>");
      cell(row.get(i));
      out.append("</td>");
    }
    out.append("</tr>\n");
  }

  /**
   * Writes a cell in which a very long word can break, so that one name cannot push a table off the
   * paper.
   */
  private void cell(String content) {
    String line = Visible.sentence(content);
    int run = 0;
    int from = 0;
    for (int i = 0; i < line.length(); i++) {
      run = line.charAt(i) == ' ' || isBreakingHyphen(line, i) ? 0 : run + 1;
      if (run >= LONGEST_WORD && !Character.isHighSurrogate(line.charAt(i))) {
        text(line.substring(from, i + 1));
        out.append("<wbr>");
        from = i + 1;
        run = 0;
      }
    }
    text(line.substring(from));
  }

  /**
   * Tells whether browsers break after this hyphen, so that the word needs no break soon after it.
   */
  private static boolean isBreakingHyphen(String line, int i) {
    return line.charAt(i) == '-'
        && i > 0
        && i + 1 < line.length()
        && Character.isLetterOrDigit(line.charAt(i - 1))
        && Character.isLetter(line.charAt(i + 1));
  }

  @Override
  public void headline(Block.Headline headline) {
    cards(headline.table());
  }

  /** Writes each row as a card: the first cell names it, the second is written large. */
  private void cards(Block.Table table) {
    element("p", table.caption() + ".");
    out.append("<ul class=\"cards\">\n");
    for (List<String> row : table.rows()) {
      out.append("<li>");
      inline("h3", row.get(0));
      out.append("<p>");
      text(row.get(1));
      out.append(" <small>");
      text(table.columns().get(1).name().toLowerCase(Locale.ROOT));
      out.append("</small></p><dl>");
      for (int i = 2; i < row.size(); i++) {
        if (!row.get(i).isEmpty()) {
          out.append("<div>");
          inline("dt", table.columns().get(i).name());
          inline("dd", row.get(i));
          out.append("</div>");
        }
      }
      out.append("</dl></li>\n");
    }
    out.append("</ul>\n");
  }

  @Override
  public void figure(Block.Figure figure) {
    figures++;
    out.append("<figure>\n");
    inline("h3", figure.chart().title());
    out.append(SvgChart.svg(figure.chart(), "chart" + figures)).append("\n");
    element("figcaption", figure.caption());
    out.append("</figure>\n");
  }

  @Override
  public void photo(Block.Photo photo) {
    out.append("<figure class=\"photo\">\n");
    if (photo.picture().isPresent()) {
      out.append("<img src=\"").append(photo.picture().get().dataAddress()).append("\" alt=\"");
      text(photo.caption());
      out.append("\">\n");
      element("figcaption", photo.where() + ": " + photo.caption());
    } else {
      element("figcaption", photo.inWords());
    }
    out.append("</figure>\n");
  }

  private void element(String name, String content) {
    inline(name, content);
    out.append("\n");
  }

  private void inline(String name, String content) {
    out.append('<').append(name).append('>');
    text(content);
    out.append("</").append(name).append('>');
  }

  /** Writes text made harmless, with every markup character as a character reference. */
  private void text(String content) {
    signs(UnbrokenUnits.held(Visible.sentence(content)));
  }

  private void signs(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(c);
      }
    }
  }
}
