package loadwalk.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.bench.AmplifierClass;
import loadwalk.bench.BenchFiles;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * The outcome of checking one file.
 *
 * @param file the file's name as given
 * @param kind "sequence", "amplifier" or "bench", empty where the file does not say
 * @param faults everything that is wrong, empty where nothing is
 */
record FileCheck(String file, String kind, List<Fault> faults) {
  private static final Map<String, BiFunction<byte[], String, Read<?>>> READERS =
      new LinkedHashMap<>();

  private static final Pattern KEPT =
      Pattern.compile("(?:.*[/\\\\])?sequences[/\\\\]([^/\\\\]+)\\.json", Pattern.DOTALL);

  static {
    READERS.put("sequence", FileCheck::sequence);
    READERS.put("amplifier", BenchFiles.AMPLIFIER::read);
    READERS.put("bench", BenchFiles.BENCH::read);
  }

  /** Copies the faults. */
  public FileCheck {
    faults = List.copyOf(faults);
  }

  /**
   * Checks the bytes of a file; the key {@code format} tells its kind.
   *
   * @param bytes the file's content
   * @param file the name used in faults
   */
  static FileCheck of(byte[] bytes, String file) {
    Read<Node> tree = JsonText.commented(file).read(bytes);
    if (tree.found().isEmpty()) {
      return new FileCheck(file, "", tree.faults());
    }
    Node root = tree.found().get();
    Optional<Format> format = Format.stated(root);
    String kind = format.map(Format::kind).orElse("");
    BiFunction<byte[], String, Read<?>> reader = READERS.get(kind);
    if (reader == null) {
      return new FileCheck(file, "", List.of(withoutKind(root, file)));
    }
    List<Fault> faults = new ArrayList<>(reader.apply(bytes, file).faults());
    if (kind.equals("amplifier")) {
      unknownClass(root, file).ifPresent(faults::add);
    }
    return new FileCheck(file, kind, faults);
  }

  /** A walk takes any word for the class; the forecast then goes by none, which is said here. */
  private static Optional<Fault> unknownClass(Node root, String file) {
    Optional<Node> stated = root.object().flatMap(object -> object.get("class"));
    return stated
        .flatMap(Node::string)
        .filter(written -> AmplifierClass.of(written).isEmpty())
        .map(
            written -> {
              Node.Place place = stated.get().place();
              String sentence =
                  Sentence.of(
                      "«class» {} is not known: it is forecast as none; known are {}",
                      Visible.quoted(written),
                      AmplifierClass.KNOWN);
              return new Fault(file, place.line(), place.column(), "class", sentence);
            });
  }

  /** Reads a sequence; one in a folder of sequences is found by its file's name. */
  private static Read<Sequence> sequence(byte[] bytes, String file) {
    Matcher kept = KEPT.matcher(file);
    return kept.matches()
        ? SequenceReader.readNamed(bytes, file, kept.group(1))
        : SequenceReader.read(bytes, file);
  }

  private static Fault withoutKind(Node root, String file) {
    Optional<Node> stated = root.object().flatMap(object -> object.get(Format.KEY));
    boolean there = stated.isPresent();
    Node.Place place = stated.orElse(root).place();
    String known = "«loadwalk-sequence/1», «loadwalk-amplifier/1» or «loadwalk-bench/1»";
    String sentence =
        there
            ? Sentence.of("«format» does not say what this file is; it must be {}", known)
            : Sentence.of("key «format» is missing; it must be {}", known);
    return new Fault(file, place.line(), place.column(), Format.KEY, sentence);
  }
}
