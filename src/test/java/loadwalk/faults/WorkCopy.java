package loadwalk.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
 * compiled too, and so on from each class that came out otherwise.
 */
final class WorkCopy {
  private static final Pattern TYPE_NAME = Pattern.compile("\\b[A-Z]\\w*");
  private static final Path MAIN = Path.of("src/main/java");
  private static final Path TEST = Path.of("src/test/java");

  /** Folders of the tree that go on the class path as they are, and where. */
  private static final Map<Path, Path> RESOURCES =
      Map.of(
          Path.of("src/main/resources"), Path.of(""),
          Path.of("src/test/resources"), Path.of(""),
          Path.of("sequences"), Path.of("loadwalk/sequences"));

  private final Path root;
  private final List<Path> libraries;
  private final Map<String, Set<Path>> filesNaming = new HashMap<>();

  private WorkCopy(Path root, List<Path> libraries) {
    this.root = root;
    this.libraries = List.copyOf(libraries);
  }

  /** Copies files of a tree and compiles them. */
  static WorkCopy of(Path tree, List<String> files, Path root, List<Path> libraries)
      throws IOException {
    WorkCopy copy = new WorkCopy(root, libraries);
    for (String file : files) {
      Folders.copy(tree.resolve(file), root.resolve(file));
      boolean test = file.startsWith("src/test");
      copy.copyResource(file, test ? copy.testClasses() : copy.mainClasses());
    }
    Compiler.compile(copy.sources(MAIN), copy.mainClasses(), copy.classPath());
    Compiler.compile(copy.sources(TEST), copy.testClasses(), copy.classPath());
    copy.readNames();
    return copy;
  }

  Path root() {
    return root;
  }

  Path testClasses() {
    return root.resolve("target/test-classes");
  }

  private Path mainClasses() {
    return root.resolve("target/classes");
  }

  private Path faultClasses() {
    return root.resolve("target/fault-classes");
  }

  /** Returns the class path of the tests, the fault first. */
  List<Path> classPath() {
    List<Path> path = new ArrayList<>(List.of(faultClasses(), testClasses(), mainClasses()));
    path.addAll(libraries);
    return path;
  }

  /** Does something while a fault is in. */
  <T> T with(Fault fault, Work<T> work) throws IOException {
    Path file = root.resolve(fault.file());
    String before = Files.readString(file);
    try {
      Files.writeString(file, fault.patch().applied(before));
      if (fault.file().endsWith(".java")) {
        compileOnwards(file);
      } else {
        copyResource(fault.file(), faultClasses());
      }
      return work.done();
    } finally {
      Files.writeString(file, before);
      Folders.delete(faultClasses());
    }
  }

  /** What is done with a fault. */
  interface Work<T> {
    T done() throws IOException;
  }

  private void compileOnwards(Path changed) throws IOException {
    Set<Path> done = new HashSet<>();
    Set<Path> next = Set.of(changed);
    while (!next.isEmpty()) {
      Compiler.compile(next, faultClasses(), classPath());
      done.addAll(next);
      Set<Path> onwards = new HashSet<>();
      for (Path file : next) {
        if (cameOutOtherwise(file)) {
          onwards.addAll(filesNaming.getOrDefault(typeName(file), Set.of()));
        }
      }
      onwards.removeAll(done);
      next = onwards;
    }
    if (!cameOutOtherwise(changed)) {
      throw new BadFault("it changes nothing in what is compiled");
    }
  }

  private boolean cameOutOtherwise(Path source) throws IOException {
    boolean main = source.startsWith(root.resolve(MAIN));
    Path folder = root.resolve(main ? MAIN : TEST).relativize(source.getParent());
    Path before = (main ? mainClasses() : testClasses()).resolve(folder);
    Pattern its = Pattern.compile(typeName(source) + "(\\$.*)?\\.class");
    for (Path compiled : Folders.files(faultClasses().resolve(folder))) {
      Path name = compiled.getFileName();
      if (its.matcher(name.toString()).matches() && !areEqual(compiled, before.resolve(name))) {
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

  private List<Path> sources(Path folder) throws IOException {
    return Folders.files(root.resolve(folder)).stream()
        .filter(file -> file.toString().endsWith(".java"))
        .toList();
  }

  private void readNames() throws IOException {
    for (Path folder : List.of(MAIN, TEST)) {
      for (Path file : sources(folder)) {
        TYPE_NAME
            .matcher(Files.readString(file))
            .results()
            .map(MatchResult::group)
            .forEach(name -> filesNaming.computeIfAbsent(name, n -> new HashSet<>()).add(file));
      }
    }
  }

  /** Copies a file that goes on the class path as it is into a folder of classes. */
  private void copyResource(String file, Path classes) throws IOException {
    for (Map.Entry<Path, Path> place : RESOURCES.entrySet()) {
      if (Path.of(file).startsWith(place.getKey())) {
        Path inside = place.getKey().relativize(Path.of(file));
        Folders.copy(root.resolve(file), classes.resolve(place.getValue()).resolve(inside));
      }
    }
  }
}
