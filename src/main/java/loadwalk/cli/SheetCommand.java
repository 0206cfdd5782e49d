package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import loadwalk.journal.Soundness;
import loadwalk.report.page.Picture;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetCsv;
import loadwalk.report.sheet.SheetJson;
import loadwalk.report.sheet.SheetOptions;
import loadwalk.report.sheet.SheetPage;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheet of a walk. */
@Command(
    name = "sheet",
    description = "Write the sheet of a walk, finished or not.",
    mixinStandardHelpOptions = true,
    footer = "Exit codes: 0 done, 2 bad usage or input, or a disk that fails, 4 a damaged journal.")
public final class SheetCommand implements Callable<Integer> {
  private final KeptWalks.Opener keptWalks;

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;
  @Mixin private ReportOptions outputs;

  @Parameters(
      arity = "0..1",
      paramLabel = "WALK",
      description =
          "The walk: its name, the start of it, or the path of its journal; without, the one"
              + " changed last.")
  private String walk;

  @Option(
      names = "--show-serial",
      description = "Show the serial number of the amplifier; hidden otherwise.")
  private boolean showSerial;

  /** Makes the command on the walks of a data home. */
  public SheetCommand(KeptWalks.Opener keptWalks) {
    this.keptWalks = keptWalks;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    try {
      return write(keptWalks.at(common.homeToRead()), err);
    } catch (IOException e) {
      return refused(err, e.getMessage(), ExitCode.BAD_INPUT);
    } catch (UnreadableFact e) {
      return refused(
          err, Sentence.of("This walk cannot be read: {}.", e.getMessage()), ExitCode.DAMAGED);
    } finally {
      err.flush();
    }
  }

  private int write(KeptWalks kept, PrintWriter err) throws IOException {
    KeptWalks.Journal journal = kept.read(walk == null ? newest(kept) : walk);
    if (journal.bodies().isEmpty()) {
      journal.read().told().ifPresent(err::println);
      return refused(err, "This walk has no record that can be read.", ExitCode.DAMAGED);
    }
    WalkState state = FactText.walk(journal.bodies());
    Soundness soundness = journal.soundness(state.isFinished());
    soundness.remarks().forEach(err::println);
    Sheet sheet =
        Sheet.of(
            state, soundness, new SheetOptions(showSerial, pictures(kept, state)), kept.rules());
    outputs.write(
        common,
        SheetPage.of(sheet),
        () -> SheetCsv.text(sheet),
        () -> SheetJson.text(sheet),
        spec.commandLine().getOut());
    return soundness.standing().isFaulty() ? ExitCode.DAMAGED : ExitCode.DONE;
  }

  private static Map<String, Picture> pictures(KeptWalks kept, WalkState state) {
    Map<String, Picture> pictures = new HashMap<>();
    for (WalkState.Attachment a : state.attachments()) {
      kept.photo(a.path(), a.sha256()).ifPresent(p -> pictures.put(a.sha256(), p));
    }
    return pictures;
  }

  private static String newest(KeptWalks kept) throws IOException {
    List<String> walks = kept.list().walks();
    if (walks.isEmpty()) {
      throw new IOException("There are no walks yet.");
    }
    return walks.get(0);
  }

  private static int refused(PrintWriter err, String sentence, int code) {
    err.println(sentence);
    return code;
  }
}
