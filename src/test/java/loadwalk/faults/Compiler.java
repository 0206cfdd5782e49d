package loadwalk.faults;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;

/** Compiles as the build does, within this process; lints are left to the build. */
final class Compiler {
  private static final List<String> OPTIONS =
      List.of("--release", "17", "-parameters", "-proc:none", "-nowarn", "-XDstringConcat=inline");

  private Compiler() {}

  /** Compiles some files; what the compiler says about the first fault is the error's message. */
  static void compile(Collection<Path> sources, Path into, Collection<Path> classPath)
      throws IOException {
    if (sources.isEmpty()) {
      return;
    }
    Files.createDirectories(into);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter said = new StringWriter();
    try (StandardJavaFileManager files =
        compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
      files.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(into));
      files.setLocationFromPaths(StandardLocation.CLASS_PATH, classPath);
      boolean good =
          compiler
              .getTask(said, files, null, OPTIONS, null, files.getJavaFileObjectsFromPaths(sources))
              .call();
      if (!good) {
        String first = said.toString().lines().limit(2).collect(Collectors.joining(" "));
        throw new BadFault("it does not compile: " + first.replaceAll(" +", " "));
      }
    }
  }
}
