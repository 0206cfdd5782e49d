package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Tables;
import loadwalk.forecast.Verdict;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.plan.BenchPlan;
import loadwalk.plan.PlanJson;
import loadwalk.plan.Rules;
import loadwalk.report.plan.PlanPage;
import loadwalk.sequence.Sequence;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a bench for a sequence before anything is connected. */
@Command(
    name = "plan",
    description =
        "Plan a bench for a sequence: currents, drops, fuses, heat, and how to wire the loads.",
    mixinStandardHelpOptions = true,
    footer = "Exit codes: 0 planned, 2 bad input, 3 a step must not be connected.")
public final class PlanCommand implements Callable<Integer> {
  private final Function<Optional<Path>, Path> homes;

  @Spec private CommandSpec spec;
  @Mixin private HomeOption home;
  @Mixin private PageOptions outputs;

  @Parameters(paramLabel = "SEQUENCE", description = "The name of a sequence, or a file.")
  private String sequence;

  @Option(names = "--amp", required = true, paramLabel = "FILE", description = "The amplifier.")
  private String amplifier;

  @Option(
      names = "--bench",
      paramLabel = "FILE",
      description = "The bench; without it the plan says what a bench would need.")
  private String bench;

  /**
   * Makes the command.
   *
   * @param homes chooses the data home, which holds the user's own sequences and data tables, from
   *     the value of {@code --home}
   */
  public PlanCommand(Function<Optional<Path>, Path> homes) {
    this.homes = homes;
  }

  @Override
  public Integer call() {
    try {
      Path root = homes.apply(home.homeToRead());
      PlanInput input = new PlanInput(root);
      Read<Sequence> steps = input.sequence(sequence);
      Read<Amplifier> amp = input.file(amplifier, BenchFiles.AMPLIFIER::read);
      Read<Bench> table =
          bench == null
              ? Read.of(Optional.of(Bench.unknown()), List.of())
              : input.file(bench, BenchFiles.BENCH::read);
      List<Fault> faults = new ArrayList<>(steps.faults());
      faults.addAll(amp.faults());
      faults.addAll(table.faults());
      if (!faults.isEmpty()) {
        return refused(faults.stream().map(Fault::text).toList());
      }
      Rules rules = OwnTables.rules(root);
      BenchPlan plan =
          rules.plan(
              steps.found().orElseThrow(),
              amp.found().orElseThrow(),
              table.found().orElseThrow(),
              List.of());
      return write(plan, rules.tables());
    } catch (BadInput | IllegalArgumentException e) {
      return refused(List.of(e.getMessage()));
    }
  }

  private int write(BenchPlan plan, Tables tables) {
    try {
      outputs.write(
          PlanPage.of(plan, tables),
          () -> PlanJson.text(plan, tables),
          spec.commandLine().getOut());
    } catch (IOException e) {
      return refused(List.of("The plan was not written: " + e.getMessage() + "."));
    }
    return plan.verdict() == Verdict.HALT ? ExitCode.HELD : ExitCode.DONE;
  }

  private int refused(List<String> sentences) {
    PrintWriter err = spec.commandLine().getErr();
    sentences.forEach(err::println);
    err.flush();
    return ExitCode.BAD_INPUT;
  }
}
