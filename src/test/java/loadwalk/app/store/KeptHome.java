package loadwalk.app.store;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.cli.LedgerCommand;
import loadwalk.cli.ReplayCommand;
import loadwalk.cli.SheetCommand;
import loadwalk.report.Journals;
import picocli.CommandLine;

/**
 * A data home with walks in it, and the commands that report on them.
 *
 * @param folder the data home
 */
record KeptHome(Path folder) {
  static final String NAME = Journals.NAME;

  /**
   * What a command printed.
   *
   * @param code its exit code
   * @param out what it printed
   * @param err what it complained of
   */
  record Printed(int code, String out, String err) {}

  /** Keeps a walk as the program does. */
  KeptHome keep(List<String> bodies) {
    try {
      JournalFolder store = new JournalFolder(new DataHome(folder));
      OpeningOutcome.Writing opened =
          Walks.writing(store.create(new WalkName(NAME), bodies.get(0)));
      bodies.subList(1, bodies.size()).forEach(body -> Walks.keep(opened, body));
      opened.walk().close();
      return this;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  Path journal() {
    return folder.resolve("sessions").resolve(NAME + ".jsonl");
  }

  Path witness() {
    return folder.resolve("sessions").resolve("." + NAME + ".end");
  }

  /** Writes the first records only, as many as asked. */
  void cutAfter(byte[] whole, int records) throws IOException {
    int end = 0;
    for (int line = 0; line < records; end++) {
      line += whole[end] == '\n' ? 1 : 0;
    }
    Files.write(journal(), Arrays.copyOf(whole, end));
  }

  Printed sheet(String... more) {
    return run(new SheetCommand(KeptWalksOnDisk::at), List.of(NAME), more);
  }

  Printed ledger(String... more) {
    return run(new LedgerCommand(KeptWalksOnDisk::at), List.of(), more);
  }

  Printed replay(String... more) {
    return run(new ReplayCommand(KeptWalksOnDisk::at), List.of(NAME), more);
  }

  private Printed run(Object command, List<String> first, String... more) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<String> arguments = new ArrayList<>(first);
    arguments.addAll(List.of(more));
    arguments.addAll(List.of("--home", folder.toString()));
    int code =
        new CommandLine(command)
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(arguments.toArray(String[]::new));
    return new Printed(code, out.toString(), err.toString());
  }
}
