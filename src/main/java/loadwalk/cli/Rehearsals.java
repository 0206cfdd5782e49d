package loadwalk.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.report.rehearsal.RehearsalJson;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.rehearse.Rehearsal;
import loadwalk.walk.rehearse.Rehearsal.Problem;

/**
 * Rehearses lines of input, each on its own, so that several threads may take lines.
 *
 * @param sequence the sequence
 * @param version the version of Loadwalk
 * @param rules what forecasts and results go by
 */
record Rehearsals(Sequence sequence, String version, Rules rules) {

  /**
   * The answer to one line.
   *
   * @param text the line to print; empty where the input line is bad or blank
   * @param complaints what is wrong with the input, a line each
   * @param code the exit code it asks for
   */
  record Answer(Optional<String> text, List<String> complaints, int code) {}

  /** Rehearses one line. */
  Answer answer(LineReader.Line line, String file) {
    if (line.isBlank()) {
      return new Answer(Optional.empty(), List.of(), ExitCode.DONE);
    }
    try {
      Read<RehearsalLine> read = RehearsalLine.read(line, file);
      return read.found().isPresent()
          ? rehearsed(read.found().get(), place(file, line))
          : bad(read.faults());
    } catch (RuntimeException bug) {
      String text = Sentence.of("{}: a fault of Loadwalk: {}", place(file, line), bug);
      return new Answer(Optional.empty(), List.of(text), ExitCode.FAULT);
    }
  }

  private static String place(String file, LineReader.Line line) {
    return Visible.line(file, 300) + ":" + line.number();
  }

  private static Answer bad(List<Fault> faults) {
    List<String> complaints = faults.stream().map(Fault::text).toList();
    return new Answer(Optional.empty(), complaints, ExitCode.BAD_INPUT);
  }

  private Answer rehearsed(RehearsalLine line, String place) {
    Fact.Opened opened =
        new Fact.Opened(
            line.name(),
            version,
            sequence,
            "",
            line.amplifier(),
            line.bench(),
            OptionalLong.empty());
    Map<String, Map<String, String>> answers = line.answers();
    Rehearsal.Outcome outcome = Rehearsal.of(rules, new Rehearsal.Script(opened, answers));
    List<Problem> problems = new ArrayList<>(line.problems());
    problems.addAll(outcome.problems());
    List<String> complaints = new ArrayList<>();
    line.strange().forEach(fault -> complaints.add(fault.text()));
    problems.forEach(problem -> complaints.add(sentence(place, problem)));
    String text =
        RehearsalJson.line(
            new Rehearsal.Outcome(outcome.steps(), problems, outcome.state()), rules);
    return new Answer(
        Optional.of(text), complaints, complaints.isEmpty() ? ExitCode.DONE : ExitCode.BAD_INPUT);
  }

  private static String sentence(String place, Problem problem) {
    String step = Visible.line(problem.step(), 40);
    return problem.reading().isEmpty()
        ? Sentence.of("{}: step {}: {}", place, step, problem.text())
        : Sentence.of(
            "{}: step {}, {}: {}",
            place,
            step,
            Visible.line(problem.reading(), 40),
            problem.text());
  }
}
