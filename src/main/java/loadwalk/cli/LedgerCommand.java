package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import loadwalk.report.ledger.ComparisonPage;
import loadwalk.report.ledger.Ledger;
import loadwalk.report.ledger.LedgerCsv;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerJson;
import loadwalk.report.ledger.LedgerPage;
import loadwalk.report.ledger.LedgerSort;
import loadwalk.report.page.Page;
import loadwalk.text.Sentence;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Compares all walks side by side. */
@Command(
    name = "ledger",
    description = "Compare all walks side by side; mark those taken under other conditions.",
    mixinStandardHelpOptions = true,
    footer = "Exit codes: 0 done, 2 bad usage or input, or a disk that fails, 4 a walk is damaged.")
public final class LedgerCommand implements Callable<Integer> {
  private static final int TOLD_MOST = 5;

  private final KeptWalks.Opener keptWalks;

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;
  @Mixin private ReportOptions outputs;

  @Option(
      names = "--sort",
      paramLabel = "ORDER",
      defaultValue = "newest",
      description = "The order: newest, name, power, watts-per-fuse-amp, honesty or efficiency.")
  private String sort;

  @Option(
      names = "--filter",
      paramLabel = "WORDS",
      description = "Show only walks with every one of these words in name, amplifier or sequence.")
  private String filter;

  @Option(
      names = "--compare",
      split = ",",
      paramLabel = "WALK",
      description = "Compare two to four walks, such as --compare A,B.")
  private List<String> compare = new ArrayList<>();

  /** Makes the command on the walks of a data home. */
  public LedgerCommand(KeptWalks.Opener keptWalks) {
    this.keptWalks = keptWalks;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    try {
      LedgerSort order = order();
      KeptWalks kept = keptWalks.at(common.homeToRead());
      LedgerReading.Read read =
          LedgerReading.of(kept, s -> told(Sentence.of("{} Ctrl-C stops.", s), err), () -> false);
      Ledger all = read.ledger().sorted(order);
      Ledger ledger = filter == null ? all : all.filtered(filter);
      if (compare.isEmpty()) {
        write(LedgerPage.of(ledger), ledger);
      } else {
        List<LedgerEntry> walks = compared(kept, all);
        write(ComparisonPage.of(walks), Ledger.of(walks));
      }
      if (outputs.hasTable()) {
        LedgerPage.first(all.notes()).forEach(err::println);
      }
      tell(read.unreadable(), err);
      return read.unreadable().isEmpty() ? ExitCode.DONE : ExitCode.DAMAGED;
    } catch (IOException | IllegalArgumentException e) {
      err.println(e.getMessage());
      return ExitCode.BAD_INPUT;
    } finally {
      err.flush();
    }
  }

  private LedgerSort order() {
    return LedgerSort.ofWord(sort)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    Sentence.of(
                        "--sort takes {}, not {}.",
                        Arrays.stream(LedgerSort.values())
                            .map(LedgerSort::word)
                            .collect(Collectors.joining(", ")),
                        sort)));
  }

  private void write(Page page, Ledger ledger) throws IOException {
    outputs.write(
        common,
        page,
        () -> LedgerCsv.text(ledger),
        () -> LedgerJson.text(ledger),
        spec.commandLine().getOut());
  }

  private List<LedgerEntry> compared(KeptWalks kept, Ledger all) throws IOException {
    List<LedgerEntry> walks = new ArrayList<>();
    for (String typed : compare) {
      String name = typed.strip();
      LedgerEntry walk =
          all.find(kept.find(name))
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          Sentence.of("There is no walk named {}.", name)));
      if (walks.contains(walk)) {
        throw new IllegalArgumentException(
            Sentence.of("{} is named twice; compare a walk with others.", name));
      }
      walks.add(walk);
    }
    return walks;
  }

  private static void told(String sentence, PrintWriter err) {
    err.println(sentence);
    err.flush();
  }

  private static void tell(List<String> unreadable, PrintWriter err) {
    unreadable.stream().limit(TOLD_MOST).forEach(err::println);
    if (unreadable.size() > TOLD_MOST) {
      err.println(
          Sentence.plural(
              unreadable.size() - TOLD_MOST,
              "1 more walk cannot be read.",
              "{} more walks cannot be read."));
    }
  }
}
