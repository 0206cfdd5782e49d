package loadwalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the measurements of {@code src/bench} to the code they measure; no build compiles them. */
class BenchTest {
  @TempDir Path classes;

  @Test
  void measurements_compile() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    assertNotNull(compiler, "a JDK runs the tests");
    StringWriter said = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        var sources = Files.list(Path.of("src", "bench"))) {
      List<Path> java = sources.filter(file -> file.toString().endsWith(".java")).toList();
      assertTrue(java.size() > 3, "the measurements were not found");
      List<String> options =
          List.of("-cp", System.getProperty("java.class.path"), "-d", classes.toString());
      boolean done =
          compiler
              .getTask(said, files, null, options, null, files.getJavaFileObjectsFromPaths(java))
              .call();
      assertEquals("", done ? "" : said.toString());
    }
  }
}
