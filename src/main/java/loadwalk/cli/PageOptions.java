package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The outputs of every page; with none of them, the text goes to stdout. */
class PageOptions {
  static final String ARITY = "0..1";
  private static final int SHOWN = 300;
  private static final int COLUMNS_LEAST = 40;
  private static final int COLUMNS_MOST = 1000;

  @Option(
      names = "--html",
      arity = ARITY,
      fallbackValue = Destination.STDOUT,
      paramLabel = "FILE",
      description = "Write one self-contained HTML page; - is stdout.")
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

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  private int columns = 80;

  private final List<String> read = new ArrayList<>();

  @Option(
      names = "--columns",
      paramLabel = "COUNT",
      description = "The width of printed text, 40 to 1000 (default 80).")
  private void columns(int count) {
    if (count < COLUMNS_LEAST || count > COLUMNS_MOST) {
      throw new ParameterException(
          command.commandLine(),
          Sentence.of(
              "--columns takes a whole number from {} to {}, not {}.",
              COLUMNS_LEAST,
              COLUMNS_MOST,
              count));
    }
    columns = count;
  }

  /** Tells whether the page is printed as text, as no other output is asked for. */
  final boolean printsText() {
    return html == null && markdown == null && json == null;
  }

  /**
   * Takes the file behind {@code --json} as what is read, and JSON goes to stdout: the option was
   * one without a file once, and a command line that names no other file means that. Null where
   * none is named.
   */
  final String fileBehindJson() {
    String named = json;
    json = json == null ? null : Destination.STDOUT;
    return named;
  }

  /** Names a file that the command reads, if any: no output takes its place. */
  final void sparing(String file) {
    if (file != null) {
      read.add(file);
    }
  }

  /** Writes every output asked for; texts that are not asked for are not made. */
  final void write(CommonOptions common, Page page, Supplier<String> jsonText, PrintWriter out)
      throws IOException {
    write(common, page, jsonText, new LinkedHashMap<>(), out);
  }

  /** Writes every output asked for, those that not every page has among them. */
  final void write(
      CommonOptions common,
      Page page,
      Supplier<String> jsonText,
      Map<String, Supplier<String>> others,
      PrintWriter out)
      throws IOException {
    Map<String, Supplier<String>> wanted = new LinkedHashMap<>(others);
    put(wanted, html, () -> HtmlPage.html(page));
    put(wanted, markdown, () -> MarkdownPage.text(page));
    put(wanted, json, jsonText);
    for (String target : wanted.keySet()) {
      spare(target);
    }
    for (Map.Entry<String, Supplier<String>> e : wanted.entrySet()) {
      writeOne(e.getKey(), e.getValue().get(), out);
    }
    if (wanted.isEmpty()) {
      List<String> lines = TextPage.lines(page, columns, common.ascii());
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
      throw new IOException(
          Sentence.of("{} is named for two outputs.", Visible.line(target, SHOWN)));
    }
  }

  private void spare(String target) throws IOException {
    for (String file : read) {
      if (isSame(file, target)) {
        throw new IOException(
            Sentence.of(
                "{} is read by this command; name another file.", Visible.line(target, SHOWN)));
      }
    }
  }

  private static boolean isSame(String file, String target) {
    if (file.equals(Destination.STDOUT) || target.equals(Destination.STDOUT)) {
      return false;
    }
    try {
      return Files.isSameFile(Path.of(file), Path.of(target));
    } catch (IOException | InvalidPathException noSuchFile) {
      return false;
    }
  }

  private static void writeOne(String target, String text, PrintWriter out) throws IOException {
    try {
      Destination.write(target, text, out);
    } catch (InvalidPathException e) {
      throw new IOException(Sentence.of("{} is not a file name.", Visible.line(target, SHOWN)), e);
    } catch (IOException e) {
      throw new IOException(
          Sentence.of("{} cannot be written: {}.", Visible.line(target, SHOWN), e.getMessage()), e);
    }
  }
}
