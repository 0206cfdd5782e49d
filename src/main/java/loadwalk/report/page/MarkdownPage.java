package loadwalk.report.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import loadwalk.text.Visible;

/**
 * Writes a page as CommonMark with the pipe tables that git hosts and forums know.
 *
 * <p>Every character that could be markup is escaped with a backslash (CommonMark 0.31.2, 2.4), and
 * text stays on one line, so that typed text stays text. Charts are left to the formats that can
 * draw them; their numbers are in the tables.
 */
public final class MarkdownPage implements Block.Writer {
  private static final String MARKUP = "\\`*_{}[]<>#|~!&$^";

  private final StringBuilder out = new StringBuilder();

  private MarkdownPage() {}

  /** Returns the whole text, ending with a line break. */
  public static String text(Page page) {
    MarkdownPage markdown = new MarkdownPage();
    markdown.page(page);
    return markdown.out.toString();
  }

  private void page(Page page) {
    out.append("# ").append(escaped(page.title())).append("\n\n");
    out.append(started(page.subtitle())).append("\n");
    for (String warning : page.warnings()) {
      out.append("\n> **Warning.** ").append(escaped(warning)).append("\n");
    }
    for (Page.Section section : page.sections()) {
      int start = out.length();
      section.blocks().forEach(block -> block.writeTo(this));
      if (out.length() > start) {
        out.insert(start, "\n## " + escaped(section.title()) + "\n");
      }
    }
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    out.append("\n").append(started(paragraph.text())).append("\n");
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    out.append("\n");
    bullets.items().forEach(item -> out.append("- ").append(started(item)).append("\n"));
  }

  @Override
  public void terms(Block.Terms terms) {
    out.append("\n");
    for (Block.Term pair : terms.pairs()) {
      out.append("- **").append(escaped(pair.term())).append("**: ");
      out.append(escaped(pair.text())).append("\n");
    }
  }

  @Override
  public void headline(Block.Headline headline) {
    table(headline.table());
  }

  /** Writes nothing: the numbers of a chart are in the tables. */
  @Override
  public void figure(Block.Figure figure) {}

  /** Writes the lines as a fenced block; fence marks within them are replaced. */
  @Override
  public void drawing(Block.Drawing drawing) {
    out.append("\n").append(started(drawing.caption())).append("\n\n```\n");
    for (String line : drawing.lines()) {
      out.append(Visible.sentence(line).replace('`', '\'')).append("\n");
    }
    out.append("```\n");
  }

  /** Links to the file kept beside the journals, by its path in the data home. */
  @Override
  public void photo(Block.Photo photo) {
    out.append("\n");
    if (photo.picture().isEmpty()) {
      out.append(started(photo.inWords())).append("\n");
      return;
    }
    out.append("![").append(escaped(photo.caption())).append("](").append(address(photo.path()));
    out.append(")\n\n").append(started(photo.where() + ": " + photo.caption())).append("\n");
  }

  /**
   * Returns a path as an address with every byte escaped that is not a letter, a digit or one of
   * {@code ._-/}.
   */
  private static String address(String path) {
    StringBuilder address = new StringBuilder();
    for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xff);
      boolean plain = c < 0x7f && (Character.isLetterOrDigit(c) || "._-/".indexOf(c) >= 0);
      address.append(plain ? String.valueOf(c) : String.format("%%%02X", (int) c));
    }
    return address.toString();
  }

  @Override
  public void table(Block.Table table) {
    out.append("\n").append(started(table.caption())).append(":\n\n");
    row(table.columns().stream().map(c -> escaped(c.name())).toList());
    row(table.columns().stream().map(c -> c.numeric() ? "---:" : ":---").toList());
    table.rows().forEach(r -> row(r.stream().map(MarkdownPage::escaped).toList()));
  }

  private void row(List<String> cells) {
    out.append(cells.stream().collect(Collectors.joining(" | ", "| ", " |"))).append("\n");
  }

  /** Escapes text for the start of a line, where numbers and dashes would make lists. */
  private static String started(String text) {
    String escaped = escaped(text);
    if (escaped.matches("[-+=].*")) {
      return "\\" + escaped;
    }
    return escaped.replaceFirst("^(\\d+)([.)])", "$1\\\\$2");
  }

  /** Escapes all markup in a text; the colon of an address makes no link either. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    String line = Visible.sentence(text).strip();
    line.codePoints()
        .forEach(
            code -> {
              if (MARKUP.indexOf(code) >= 0) {
                safe.append('\\');
              }
              safe.appendCodePoint(code);
            });
    return safe.toString()
        .replace("://", "\\://")
        .replaceAll("(?i)www\\.", "www\\\\.")
        .replace("@", "&#64;");
  }
}
