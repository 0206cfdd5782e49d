package loadwalk.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A copy of the tree, compiled, into which one fault at a time is put.
 *
 * <p>What a fault changes is compiled into a folder of its own, which goes first on the class path.
 * The compiler copies constants from class to class, so every file that names the changed class is
 * compiled too, and so on from each class that came out otherwise. Sources are named from the root
 * of the copy.
 */
final class WorkCopy {
  private static final Pattern TYPE_NAME = Pattern.compile("\\b[A-Z]\\w*");
  private static final Path MAIN = Path.of("src/main/java");
  private static final Path TEST = Path.of("src/test/java");

  /** Folders of the tree that go on the class path as they are, and where. */
  private static final Map<Path, Path> RESOURCES =
      Map.of(
          Path.of("src/main/resources"), Path.of("target/classes"),
          Path.of("src/test/resources"), Path.of("target/test-classes"),
          Path.of("sequences"), Path.of("target/classes/loadwalk/sequences"));

  private final Path root;
  private final Path overlay;
  private final List<Path> classPath = new ArrayList<>();
  private final Map<String, Set<Path>> filesNaming = new HashMap<>();

  /** Folders have the build's names below both: by them tests are told from the rest. */
  private WorkCopy(Path root, List<Path> libraries) {
    this.root = root;
    this.overlay = root.resolve("fault");
    for (Path base : List.of(overlay, root)) {
      classPath.add(base.resolve("target/test-classes"));
      classPath.add(base.resolve("target/classes"));
    }
    classPath.addAll(libraries);
  }

  /** Copies files of a tree and compiles them. */
  static WorkCopy of(Path tree, List<String> files, Path root, List<Path> libraries)
      throws IOException {
    WorkCopy copy = new WorkCopy(root, libraries);
    for (String file : files) {
      Folders.copy(tree.resolve(file), root.resolve(file));
      copy.copyResource(Path.of(file), root);
    }
    List<Path> sources =
        files.stream()
            .filter(f -> f.endsWith(".java"))
            .map(Path::of)
            .filter(WorkCopy::isCompiled)
            .toList();
    copy.compile(sources, root);
    copy.readNames(sources);
    return copy;
  }

  Path root() {
    return root;
  }

  /** Returns the class path of the tests, the fault first. */
  List<Path> classPath() {
    return List.copyOf(classPath);
  }

  /** Does something while a fault is in. */
  <T> T with(Fault fault, Work<T> work) throws IOException {
    Path file = Path.of(fault.file());
    String before = Files.readString(root.resolve(file));
    try {
      Files.writeString(root.resolve(file), fault.patch().applied(before));
      if (isCompiled(file)) {
        compileOnwards(file);
      } else {
        copyResource(file, overlay);
      }
      return work.done();
    } finally {
      Files.writeString(root.resolve(file), before);
      Folders.delete(overlay);
    }
  }

  /** What is done with a fault. */
  interface Work<T> {
    T done() throws IOException;
  }

  private static boolean isCompiled(Path file) {
    return file.toString().endsWith(".java") && (file.startsWith(MAIN) || file.startsWith(TEST));
  }

  private void compileOnwards(Path changed) throws IOException {
    Set<Path> done = new HashSet<>();
    Set<Path> next = Set.of(changed);
    while (!next.isEmpty()) {
      compile(next, overlay);
      done.addAll(next);
      Set<Path> onwards = new HashSet<>();
      for (Path source : next) {
        if (cameOutOtherwise(source)) {
          onwards.addAll(filesNaming.getOrDefault(typeName(source), Set.of()));
        }
      }
      onwards.removeAll(done);
      next = onwards;
    }
    if (!cameOutOtherwise(changed)) {
      throw new BadFault("it changes nothing in what is compiled");
    }
  }

  private void compile(Collection<Path> sources, Path base) throws IOException {
    for (Path tree : List.of(MAIN, TEST)) {
      List<Path> its =
          sources.stream().filter(s -> s.startsWith(tree)).map(root::resolve).sorted().toList();
      Compiler.compile(its, classes(base, tree), classPath);
    }
  }

  private static Path classes(Path base, Path source) {
    return base.resolve(source.startsWith(TEST) ? "target/test-classes" : "target/classes");
  }

  private boolean cameOutOtherwise(Path source) throws IOException {
    Path its = (source.startsWith(TEST) ? TEST : MAIN).relativize(source.getParent());
    Path before = classes(root, source).resolve(its);
    Pattern name = Pattern.compile(typeName(source) + "(\\$.*)?\\.class");
    for (Path compiled : Folders.files(classes(overlay, source).resolve(its))) {
      Path file = compiled.getFileName();
      if (name.matcher(file.toString()).matches() && !areEqual(compiled, before.resolve(file))) {
        return true;
      }
    }
    return false;
  }

  private static boolean areEqual(Path a, Path b) throws IOException {
    return Files.exists(b) && Files.mismatch(a, b) < 0;
  }

  private static String typeName(Path source) {
    return source.getFileName().toString().replace(".java", "");
  }

  private void readNames(List<Path> sources) throws IOException {
    for (Path source : sources) {
      TYPE_NAME
          .matcher(Files.readString(root.resolve(source)))
          .results()
          .map(MatchResult::group)
          .forEach(name -> filesNaming.computeIfAbsent(name, n -> new HashSet<>()).add(source));
    }
  }

  /** Copies a file that goes on the class path as it is to its place below a base. */
  private void copyResource(Path file, Path base) throws IOException {
    for (Map.Entry<Path, Path> place : RESOURCES.entrySet()) {
      if (file.startsWith(place.getKey())) {
        Path inside = place.getKey().relativize(file);
        Folders.copy(root.resolve(file), base.resolve(place.getValue()).resolve(inside));
      }
    }
  }
}
