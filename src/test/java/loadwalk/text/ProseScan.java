package loadwalk.text;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Reads the sources for what people read: prints every sentence ({@code .ci/sentences}), and finds
 * those that are glued together or whose slots do not fit.
 *
 * <p>Prose is text with a blank beside a word of two letters or more. Text that holds one of {@code
 * < > = " \ | _} is markup, a format or a command, and what is said of a bug is for developers:
 * both are no prose.
 */
public final class ProseScan extends TreePathScanner<Void, Void> {
  /**
   * A piece of text in the sources.
   *
   * @param owner its package, as "loadwalk.view"
   * @param where the file with its line
   * @param text the text, {@code {}} where something is filled in
   */
  public record Found(String owner, String where, String text) {}

  private static final Pattern PROSE = Pattern.compile(" \\p{L}{2}|\\p{L}{2}[,.;:]? ");
  private static final Pattern MARKUP = Pattern.compile("[<>=\"\\\\|_]");
  private static final Pattern SLOT = Pattern.compile("\\{\\}");
  private static final Pattern FORMAT = Pattern.compile("%[-0-9.]*[sdfn%]");
  private static final Set<String> BUGS =
      Set.of("IllegalArgumentException", "IllegalStateException", "AssertionError");
  private static final Pattern STATED =
      Pattern.compile("\"(?:title|note|text)\"\\s*:\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");

  private final Trees trees;
  private final List<Found> sentences = new ArrayList<>();
  private final List<Found> glued = new ArrayList<>();
  private final List<Found> misfits = new ArrayList<>();
  private CompilationUnitTree unit;

  private ProseScan(Trees trees) {
    this.trees = trees;
  }

  /** Returns what the Java files beneath a folder say. */
  public static ProseScan of(Path folder) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files =
            compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8);
        Stream<Path> all = Files.walk(folder)) {
      List<Path> sources =
          all.filter(path -> path.toString().endsWith(".java"))
              .sorted(Comparator.comparing(Path::getParent).thenComparing(Path::getFileName))
              .toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      ProseScan scan = new ProseScan(Trees.instance(task));
      for (CompilationUnitTree unit : task.parse()) {
        scan.unit = unit;
        scan.scan(unit, null);
      }
      return scan;
    }
  }

  /** Returns every sentence and label, with {@code {}} for what is filled in. */
  public List<Found> sentences() {
    return sentences;
  }

  /** Returns prose that is put together from pieces. */
  public List<Found> glued() {
    return glued;
  }

  /** Returns calls of {@link Sentence} whose template is no literal or has other slots. */
  public List<Found> misfits() {
    return misfits;
  }

  @Override
  public Void visitNewClass(NewClassTree made, Void none) {
    return BUGS.contains(made.getIdentifier().toString()) ? null : super.visitNewClass(made, none);
  }

  @Override
  public Void visitAnnotation(AnnotationTree annotation, Void none) {
    boolean forCompiler = annotation.getAnnotationType().toString().equals("SuppressWarnings");
    return forCompiler ? null : super.visitAnnotation(annotation, none);
  }

  @Override
  public Void visitBinary(BinaryTree sum, Void none) {
    if (sum.getKind() != Tree.Kind.PLUS) {
      return super.visitBinary(sum, none);
    }
    List<ExpressionTree> parts = new ArrayList<>();
    flatten(sum, parts);
    if (parts.stream().anyMatch(ProseScan::isText)) {
      say(sum, text(parts), !parts.stream().allMatch(ProseScan::isText));
      parts.stream().filter(part -> !isText(part)).forEach(part -> scan(part, none));
      return null;
    }
    return super.visitBinary(sum, none);
  }

  @Override
  public Void visitLiteral(LiteralTree literal, Void none) {
    if (isText(literal)) {
      say(literal, text(List.of(literal)), false);
    }
    return null;
  }

  @Override
  public Void visitMethodInvocation(MethodInvocationTree call, Void none) {
    String method = call.getMethodSelect().toString();
    if (method.equals("Sentence.of")) {
      check(call, call.getArguments().get(0), call.getArguments().size() - 1);
    } else if (method.equals("Sentence.plural")) {
      check(call, call.getArguments().get(1), 0);
      check(call, call.getArguments().get(2), 1);
    } else if (method.equals("String.format")) {
      call.getArguments().forEach(argument -> filled(argument));
    } else if (call.getMethodSelect() instanceof MemberSelectTree select) {
      String name = select.getIdentifier().toString();
      if (name.equals("formatted")) {
        filled(select.getExpression());
      } else if (name.equals("append") || name.equals("concat")) {
        call.getArguments().forEach(argument -> filled(argument));
      }
    }
    return super.visitMethodInvocation(call, none);
  }

  /** Tells of prose that a method fills or sets behind other text. */
  private void filled(ExpressionTree argument) {
    List<ExpressionTree> parts = new ArrayList<>();
    flatten(argument, parts);
    if (parts.stream().allMatch(ProseScan::isText)) {
      String text = FORMAT.matcher(text(parts)).replaceAll("{}");
      if (isProse(text)) {
        glued.add(found(argument, text));
      }
    }
  }

  private void check(MethodInvocationTree call, ExpressionTree template, int slots) {
    if (template instanceof ParenthesizedTree inner) {
      check(call, inner.getExpression(), slots);
      return;
    }
    if (template instanceof ConditionalExpressionTree choice) {
      check(call, choice.getTrueExpression(), slots);
      check(call, choice.getFalseExpression(), slots);
      return;
    }
    List<ExpressionTree> parts = new ArrayList<>();
    flatten(template, parts);
    boolean whole = parts.stream().allMatch(ProseScan::isText);
    if (!whole || SLOT.matcher(text(parts)).results().count() != slots) {
      misfits.add(found(call, call.toString()));
    }
  }

  private void say(Tree tree, String text, boolean pieces) {
    if (isProse(pieces ? text : text.strip())) {
      sentences.add(found(tree, text));
      if (pieces) {
        glued.add(found(tree, text));
      }
    }
  }

  private Found found(Tree tree, String text) {
    long at = trees.getSourcePositions().getStartPosition(unit, tree);
    String path = unit.getSourceFile().getName().replace('\\', '/');
    String file = path.substring(path.indexOf("/loadwalk/") + 1);
    String owner = unit.getPackageName().toString();
    return new Found(owner, file + ":" + unit.getLineMap().getLineNumber(at), text);
  }

  private static boolean isProse(String text) {
    return PROSE.matcher(text).find() && !MARKUP.matcher(text).find();
  }

  private static void flatten(ExpressionTree tree, List<ExpressionTree> parts) {
    if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
      flatten(sum.getLeftOperand(), parts);
      flatten(sum.getRightOperand(), parts);
    } else {
      parts.add(tree);
    }
  }

  private static boolean isText(Tree tree) {
    return tree instanceof LiteralTree literal && literal.getValue() instanceof String;
  }

  private static String text(List<ExpressionTree> parts) {
    StringBuilder text = new StringBuilder();
    for (ExpressionTree part : parts) {
      text.append(part instanceof LiteralTree literal ? literal.getValue() : "{}");
    }
    return text.toString();
  }

  /** Prints every sentence; {@code --where} puts the file and line before each. */
  public static void main(String[] arguments) throws IOException {
    boolean where = List.of(arguments).contains("--where");
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    String owner = "";
    for (Found found : of(Path.of("src/main/java")).sentences()) {
      if (!found.owner().equals(owner)) {
        owner = found.owner();
        out.println("# " + owner);
      }
      out.println((where ? found.where() + ": " : "") + found.text().replace("\n", "\\n"));
    }
    out.println("# sequences");
    try (Stream<Path> all = Files.list(Path.of("sequences"))) {
      for (Path file : all.sorted().toList()) {
        for (Matcher stated = STATED.matcher(Files.readString(file)); stated.find(); ) {
          out.println((where ? file + ": " : "") + stated.group(1));
        }
      }
    }
    out.flush();
  }
}
