package loadwalk.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.json.Fault;
import loadwalk.json.Faults;
import loadwalk.json.Fields;
import loadwalk.json.Format;
import loadwalk.json.JsonText;
import loadwalk.json.Nearest;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.report.rehearsal.RehearsalJson;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.rehearse.Rehearsal.Problem;

/**
 * One line of input: an amplifier on a bench and what an operator would type.
 *
 * @param name the walk's name, empty where none is given
 * @param amplifier the amplifier
 * @param bench the bench; nothing is known of it where none is given
 * @param answers the texts by step and reading, in order
 * @param problems answers that are no text and no number
 * @param strange keys that are not known; they are passed over
 */
record RehearsalLine(
    String name,
    Amplifier amplifier,
    Bench bench,
    Map<String, Map<String, String>> answers,
    List<Problem> problems,
    List<Fault> strange) {
  private static final List<String> KEYS = List.of(Format.KEY, "name", "amp", "bench", "answers");

  /** Reads a line; what makes it useless is a fault, a single answer that is wrong a problem. */
  static Read<RehearsalLine> read(LineReader.Line line, String file) {
    Read<Node> tree = new JsonText(file, false, line.number()).read(line.bytes());
    Faults faults = new Faults(file);
    Optional<RehearsalLine> found =
        tree.found()
            .flatMap(root -> Fields.of(root, "a rehearsal", faults))
            .flatMap(f -> read(f, tree.found().flatMap(Node::object).orElseThrow(), file, faults));
    return Read.of(found, tree.found().isPresent() ? faults.list() : tree.faults());
  }

  private static Optional<RehearsalLine> read(
      Fields fields, Node.Obj root, String file, Faults faults) {
    if (!RehearsalJson.FORMAT.check(fields, false)) {
      return Optional.empty();
    }
    fields.require("amp");
    Optional<Amplifier> amplifier =
        fields.node("amp").flatMap(node -> BenchFiles.AMPLIFIER.embedded(node, faults));
    Optional<Bench> bench = bench(fields, faults);
    Answers answers = new Answers(new LinkedHashMap<>(), new ArrayList<>());
    Optional<Node> said = fields.node("answers").filter(node -> !node.isNull());
    said.flatMap(node -> Fields.of(node, "«answers»", faults))
        .ifPresent(ignored -> said.flatMap(Node::object).ifPresent(answers::addAll));
    String name = fields.node("name").map(RehearsalLine::text).orElse(Optional.of("")).orElse("");
    return faults.isEmpty()
        ? Optional.of(
            new RehearsalLine(
                name,
                amplifier.orElseThrow(),
                bench.orElseThrow(),
                answers.texts(),
                answers.problems(),
                strange(root, file)))
        : Optional.empty();
  }

  private static Optional<Bench> bench(Fields fields, Faults faults) {
    Optional<Node> node = fields.node("bench").filter(n -> !n.isNull());
    return node.isEmpty()
        ? Optional.of(Bench.unknown())
        : BenchFiles.BENCH.embedded(node.get(), faults);
  }

  private static List<Fault> strange(Node.Obj root, String file) {
    Faults strange = new Faults(file);
    root.members()
        .forEach(
            (key, member) -> {
              if (!KEYS.contains(key)) {
                String sentence =
                    Sentence.of(
                        "unknown key {} is ignored; nearest known key: «{}»",
                        Visible.quoted(key),
                        Nearest.of(key, KEYS));
                strange.add(member.keyPlace(), key, sentence);
              }
            });
    return strange.list();
  }

  /** Returns what an operator would have typed: a text, or a number written out. */
  private static Optional<String> text(Node node) {
    return node.string().or(() -> node.number().stream().mapToObj(RehearsalLine::typed).findAny());
  }

  private static String typed(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    return whole ? String.valueOf((long) value) : String.valueOf(value);
  }

  /**
   * The answers while they are gathered.
   *
   * @param texts the texts by step and reading
   * @param problems what is no text and no number
   */
  private record Answers(Map<String, Map<String, String>> texts, List<Problem> problems) {
    void addAll(Node.Obj steps) {
      steps.members().forEach((step, member) -> addStep(step, member.value()));
    }

    private void addStep(String step, Node node) {
      Optional<Node.Obj> readings = node.object();
      if (readings.isPresent()) {
        Map<String, String> typed = new LinkedHashMap<>();
        readings.get().members().forEach((key, m) -> addReading(typed, step, key, m.value()));
        texts.put(step, typed);
      } else if (!node.isNull()) {
        problems.add(
            new Problem(step, "", Sentence.of("readings must be an object, not {}", node.kind())));
      }
    }

    private void addReading(Map<String, String> typed, String step, String key, Node node) {
      Optional<String> text = text(node);
      if (text.isPresent()) {
        typed.put(key, text.get());
      } else if (!node.isNull()) {
        problems.add(
            new Problem(step, key, Sentence.of("must be text or a number, not {}", node.kind())));
      }
    }
  }
}
