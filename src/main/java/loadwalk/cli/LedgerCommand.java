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
import loadwalk.report.ledger.LedgerBuilder;
import loadwalk.report.ledger.LedgerCsv;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerJson;
import loadwalk.report.ledger.LedgerPage;
import loadwalk.report.ledger.LedgerSort;
import loadwalk.report.page.Page;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Sets all walks side by side. */
@Command(
    name = "ledger",
    description = "Set all walks side by side; mark what was not done alike.",
    mixinStandardHelpOptions = true,
    footer = "Exit codes: 0 written, 2 bad usage or input, 4 a walk could not be read to its end.")
public final class LedgerCommand implements Callable<Integer> {
  private static final int TOLD_MOST = 5;

  private final KeptWalks.Opener shelves;

  @Spec private CommandSpec spec;
  @Mixin private HomeOption home;
  @Mixin private ReportOptions outputs;

  @Option(
      names = "--sort",
      paramLabel = "ORDER",
      defaultValue = "newest",
      description = "newest, name, power, watts-per-fuse-amp, honesty or efficiency.")
  private String sort;

  @Option(
      names = "--filter",
      paramLabel = "WORDS",
      description = "Only walks whose name, amplifier or sequence holds every word.")
  private String filter;

  @Option(
      names = "--compare",
      split = ",",
      paramLabel = "WALK",
      description = "Compare two to four walks: --compare A,B")
  private List<String> compare = new ArrayList<>();

  /** Makes the command on a shelf. */
  public LedgerCommand(KeptWalks.Opener shelves) {
    this.shelves = shelves;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    try {
      LedgerSort order = order();
      LedgerBuilder builder =
          LedgerReading.of(
              shelves.at(home.homeToRead()), s -> told(s + "; Ctrl-C stops.", err), () -> false);
      Ledger all = builder.ledger().sorted(order);
      Ledger ledger = filter == null ? all : all.filtered(filter);
      if (compare.isEmpty()) {
        write(LedgerPage.of(ledger), ledger);
      } else {
        List<LedgerEntry> walks = compared(all);
        write(ComparisonPage.of(walks), Ledger.of(walks));
      }
      tell(builder.unreadable(), err);
      return builder.unreadable().isEmpty() ? ExitCode.DONE : ExitCode.DAMAGED;
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
                    "--sort is one of "
                        + Arrays.stream(LedgerSort.values())
                            .map(LedgerSort::word)
                            .collect(Collectors.joining(", "))
                        + ", not "
                        + sort));
  }

  private void write(Page page, Ledger ledger) throws IOException {
    outputs.write(
        page,
        () -> LedgerCsv.text(ledger),
        () -> LedgerJson.text(ledger),
        spec.commandLine().getOut());
  }

  private List<LedgerEntry> compared(Ledger all) {
    List<LedgerEntry> walks = new ArrayList<>();
    for (String typed : compare) {
      String name = typed.strip();
      LedgerEntry walk =
          all.find(name)
              .orElseThrow(
                  () -> new IllegalArgumentException("There is no walk named " + name + "."));
      if (walks.contains(walk)) {
        throw new IllegalArgumentException(
            name + " is named twice; a walk can be compared with others only.");
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
      err.println("and " + (unreadable.size() - TOLD_MOST) + " more walks that cannot be read");
    }
  }
}
