package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
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
    description = "Plan the bench for a sequence: current, voltage drop, fuses, heat, load wiring.",
    mixinStandardHelpOptions = true,
    footer =
        "Exit codes: 0 done, 2 bad usage or input, or a disk that fails, 3 a step must not be"
            + " connected.")
public final class PlanCommand implements Callable<Integer> {
  private final KeptSequences keptSequences;

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;
  @Mixin private PageOptions outputs;

  @Parameters(
      paramLabel = "SEQUENCE",
      description = "The sequence, by name, such as full-walk, or by file; - is stdin.")
  private String sequence;

  @Option(
      names = "--amp",
      required = true,
      paramLabel = "FILE",
      description = "The amplifier file; needed.")
  private String amplifier;

  @Option(
      names = "--bench",
      paramLabel = "FILE",
      description = "The bench file; without it, the plan says what the bench needs.")
  private String bench;

  /** Makes the command on the sequences of a data home. */
  public PlanCommand(KeptSequences keptSequences) {
    this.keptSequences = keptSequences;
  }

  @Override
  public Integer call() {
    try {
      Optional<Path> home = common.homeToRead();
      Read<Sequence> steps = keptSequences.sequence(home, sequence);
      Read<Amplifier> amp = InputFile.read(amplifier, BenchFiles.AMPLIFIER::read);
      Read<Bench> table =
          bench == null
              ? new Read.Good<>(Bench.unknown())
              : InputFile.read(bench, BenchFiles.BENCH::read);
      List<Fault> faults = new ArrayList<>(steps.faults());
      faults.addAll(amp.faults());
      faults.addAll(table.faults());
      if (!faults.isEmpty()) {
        return refused(faults.stream().map(Fault::text).toList());
      }
      Rules rules = keptSequences.rules(home);
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
    outputs.sparing(sequence);
    outputs.sparing(amplifier);
    outputs.sparing(bench);
    try {
      outputs.write(
          common,
          PlanPage.of(plan, tables),
          () -> PlanJson.text(plan, tables),
          spec.commandLine().getOut());
    } catch (IOException e) {
      return refused(List.of(e.getMessage()));
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
