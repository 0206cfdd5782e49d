package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import loadwalk.report.page.Page;
import picocli.CommandLine.Option;

/** The outputs of a sheet and a ledger: those of a page, and a table of their numbers. */
final class ReportOptions extends PageOptions {
  @Option(
      names = "--csv",
      arity = ARITY,
      fallbackValue = Destination.STDOUT,
      paramLabel = "FILE",
      description = "Write CSV; - is stdout.")
  private String csv;

  /** Tells whether a table is asked for, which has no place for notes. */
  boolean hasTable() {
    return csv != null;
  }

  /** Writes every output asked for; texts that are not asked for are not made. */
  void write(
      CommonOptions common,
      Page page,
      Supplier<String> csvText,
      Supplier<String> jsonText,
      PrintWriter out)
      throws IOException {
    Map<String, Supplier<String>> table = new LinkedHashMap<>();
    put(table, csv, csvText);
    write(common, page, jsonText, table, out);
  }
}
