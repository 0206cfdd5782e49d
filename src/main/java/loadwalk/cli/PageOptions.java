package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import picocli.CommandLine.Option;

/** The outputs that every page has; without any, the text goes to stdout. */
class PageOptions {
  static final String ARITY = "0..1";

  @Option(
      names = "--html",
      arity = ARITY,
      fallbackValue = Destination.STDOUT,
      paramLabel = "FILE",
      description = "Write one HTML file that needs nothing else; - is stdout.")
  private String html;

  @Option(
      names = "--markdown",
      arity = ARITY,
      fallbackValue = Destination.STDOUT,
      paramLabel = "FILE",
      description = "Write Markdown; - is stdout.")
  private String markdown;

  @Option(
      names = "--json",
      arity = ARITY,
      fallbackValue = Destination.STDOUT,
      paramLabel = "FILE",
      description = "Write JSON; - is stdout.")
  private String json;

  @Option(names = "--ascii", description = "Print in plain ASCII.")
  private boolean ascii;

  @Option(
      names = "--columns",
      paramLabel = "COUNT",
      description = "The width of printed text, 40 or more; 80 where not said.")
  private int columns = 80;

  /** Tells whether the page is printed as text, as no other output is asked for. */
  final boolean printsText() {
    return html == null && markdown == null && json == null;
  }

  /** Writes every output asked for; texts that are not asked for are not made. */
  final void write(Page page, Supplier<String> jsonText, PrintWriter out) throws IOException {
    write(page, jsonText, new LinkedHashMap<>(), out);
  }

  /** Writes every output asked for, those that not every page has among them. */
  final void write(
      Page page, Supplier<String> jsonText, Map<String, Supplier<String>> others, PrintWriter out)
      throws IOException {
    Map<String, Supplier<String>> wanted = new LinkedHashMap<>(others);
    put(wanted, html, () -> HtmlPage.html(page));
    put(wanted, markdown, () -> MarkdownPage.text(page));
    put(wanted, json, jsonText);
    for (Map.Entry<String, Supplier<String>> e : wanted.entrySet()) {
      writeOne(e.getKey(), e.getValue().get(), out);
    }
    if (wanted.isEmpty()) {
      List<String> lines = TextPage.lines(page, columns, ascii);
      for (String line : lines) {
        // A println would be a write of its own, and a ledger has many lines.
        out.print(line);
        out.print(System.lineSeparator());
      }
      out.flush();
    }
  }

  static void put(Map<String, Supplier<String>> wanted, String target, Supplier<String> text)
      throws IOException {
    if (target != null && wanted.put(target, text) != null) {
      throw new IOException("two outputs were asked for in one place: " + target);
    }
  }

  private static void writeOne(String target, String text, PrintWriter out) throws IOException {
    try {
      Destination.write(target, text, out);
    } catch (InvalidPathException e) {
      throw new IOException(target + " is no file name", e);
    } catch (IOException e) {
      throw new IOException(target + " could not be written: " + e.getMessage(), e);
    }
  }
}
