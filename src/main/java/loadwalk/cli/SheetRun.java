package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.report.Picture;
import loadwalk.report.Sheet;
import loadwalk.report.SheetCsv;
import loadwalk.report.SheetJson;
import loadwalk.report.SheetOptions;
import loadwalk.report.SheetPage;
import loadwalk.walk.FactReader;
import loadwalk.walk.UnreadableFact;
import loadwalk.walk.WalkState;

/**
 * One writing of a sheet.
 *
 * @param shelf where the walks are
 * @param walk the walk's name; the walk changed last where there is none
 * @param showSerial whether the amplifier's serial number is shown
 * @param outputs what is written, and where
 * @param out where outputs without a file go
 * @param err where refusals go
 */
record SheetRun(
    WalkShelf shelf,
    Optional<String> walk,
    boolean showSerial,
    ReportOptions outputs,
    PrintWriter out,
    PrintWriter err) {

  /** Writes the sheet and returns the exit code. */
  int run() {
    try {
      WalkShelf.Journal journal = shelf.read(walk.isPresent() ? walk.get() : newest());
      journal.damaged().ifPresent(err::println);
      if (journal.bodies().isEmpty()) {
        return refused("This walk holds no record that can be read.", ExitCode.DAMAGED);
      }
      WalkState state = FactReader.walk(journal.bodies());
      Sheet sheet = Sheet.of(state, new SheetOptions(showSerial, pictures(state)));
      outputs.write(
          SheetPage.of(sheet), () -> SheetCsv.text(sheet), () -> SheetJson.text(sheet), out);
      return journal.damaged().isPresent() ? ExitCode.DAMAGED : ExitCode.DONE;
    } catch (IOException e) {
      return refused(e.getMessage(), ExitCode.BAD_INPUT);
    } catch (UnreadableFact e) {
      return refused("This walk cannot be read: " + e.getMessage() + ".", ExitCode.DAMAGED);
    } finally {
      err.flush();
    }
  }

  private Map<String, Picture> pictures(WalkState state) {
    Map<String, Picture> pictures = new HashMap<>();
    for (WalkState.Attachment a : state.attachments()) {
      shelf.photo(a.path(), a.sha256()).ifPresent(p -> pictures.put(a.sha256(), p));
    }
    return pictures;
  }

  private String newest() throws IOException {
    List<WalkShelf.Listed> walks = shelf.list();
    if (walks.isEmpty()) {
      throw new IOException("There is no walk yet.");
    }
    return walks.get(0).name();
  }

  private int refused(String sentence, int code) {
    err.println(sentence);
    return code;
  }
}
