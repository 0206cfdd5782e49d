package loadwalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * A sealed type of ours is not asked what it is, case by case: a case that is forgotten would fail
 * in silence. It answers for itself, or a visitor has a method for each case.
 *
 * <p>A cast to a case counts as asking for it, as the last rung of a ladder is often one.
 */
class NoLaddersTest {
  /** The cases of each sealed type by name, {@code Outer.Case}, to the topmost sealed type. */
  private final Map<String, String> cases = new HashMap<>();

  private final Set<String> sealed = new TreeSet<>();

  @Test
  void noClassAsksASealedTypeOfOursForTwoOfItsCases() throws IOException {
    List<CompilationUnitTree> units = parsed();
    units.forEach(unit -> new Declarations().scan(unit, ""));
    for (int depth = 0; depth < 3; depth++) {
      cases.replaceAll((name, of) -> cases.getOrDefault(of, of));
    }
    cases.values().removeIf(of -> !sealed.contains(of));
    assertTrue(cases.size() > 100, "so few cases were found: " + cases.keySet());
    Map<String, Set<String>> ladders = new TreeMap<>();
    for (CompilationUnitTree unit : units) {
      Questions asked = new Questions(unit);
      asked.scan(unit, null);
      asked.byType.forEach(
          (type, rungs) -> {
            String who = unit.getSourceFile().getName().replaceAll(".*/loadwalk/", "");
            if (rungs.size() > 1) {
              ladders.put(who + " asks " + type, rungs);
            }
          });
    }
    assertEquals(Map.of(), ladders);
  }

  private static List<CompilationUnitTree> parsed() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<CompilationUnitTree> units = new ArrayList<>();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        Stream<Path> walk = Files.walk(Path.of("src/main/java"))) {
      List<Path> sources = walk.filter(p -> p.toString().endsWith(".java")).sorted().toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      task.parse().forEach(units::add);
    }
    return units;
  }

  /** Returns a type's name as far as its outer type, without its type arguments. */
  private static String named(Tree type) {
    String[] parts = type.toString().replaceAll("<.*", "").split("\\.");
    int last = parts.length - 1;
    return last > 0 ? parts[last - 1] + "." + parts[last] : parts[last];
  }

  /** Notes each type that implements another, under its own name and that with its outer type. */
  private final class Declarations extends TreeScanner<Void, String> {
    @Override
    public Void visitClass(ClassTree type, String outer) {
      String name = type.getSimpleName().toString();
      String whole = outer.isEmpty() ? name : outer + "." + name;
      if (type.getModifiers().getFlags().contains(Modifier.SEALED)) {
        sealed.add(name);
      }
      for (Tree of : type.getImplementsClause()) {
        String above = named(of);
        cases.put(whole, above.substring(above.indexOf('.') + 1));
        cases.put(name, above.substring(above.indexOf('.') + 1));
      }
      return super.visitClass(type, name);
    }
  }

  /** Notes which cases a file asks for, by the sealed type they belong to. */
  private final class Questions extends TreeScanner<Void, Void> {
    private final Map<String, Set<String>> byType = new TreeMap<>();
    private final Map<String, String> imported = new HashMap<>();

    Questions(CompilationUnitTree unit) {
      for (ImportTree one : unit.getImports()) {
        String name = named(one.getQualifiedIdentifier());
        imported.put(name.substring(name.indexOf('.') + 1), name);
      }
    }

    private void asked(Tree type) {
      String name = named(type);
      String whole = cases.containsKey(name) ? name : imported.getOrDefault(name, name);
      String of = cases.getOrDefault(whole, cases.get(name));
      if (of != null) {
        byType.computeIfAbsent(of, key -> new TreeSet<>()).add(name);
      }
    }

    @Override
    public Void visitInstanceOf(InstanceOfTree tree, Void none) {
      if (tree.getType() != null) {
        asked(tree.getType());
      }
      return super.visitInstanceOf(tree, none);
    }

    @Override
    public Void visitTypeCast(TypeCastTree tree, Void none) {
      asked(tree.getType());
      return super.visitTypeCast(tree, none);
    }
  }
}
