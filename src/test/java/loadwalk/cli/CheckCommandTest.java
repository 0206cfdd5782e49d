package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CheckCommandTest {
  @TempDir private Path folder;
  private final StringWriter printed = new StringWriter();

  @Test
  void check_ofAGoodFile_saysSoAndGives0() throws IOException {
    String file =
        file("amp.json", "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"B\",\"model\":\"2\"}");
    assertEquals(0, run(file));
    assertEquals(file + ": no errors (amplifier)\n", output());
  }

  @Test
  void check_ofAClassNobodyKnows_saysWhere() throws IOException {
    String file =
        file(
            "amp.json",
            "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"B\",\"model\":\"2\",\n"
                + "\"class\":\"XR\"}");
    assertEquals(2, run(file));
    assertTrue(output().contains(":2:9: "), output());
    assertTrue(output().contains("«class» «XR» is not known"), output());
    String known =
        "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"B\",\"model\":\"2\","
            + "\"class\":\"D (full range)\"}";
    assertEquals(0, run(file("d.json", known)));
  }

  @Test
  void check_ofSeveralFiles_printsAllErrorsOfAllAndGives2() throws IOException {
    String bench = file("bench.json", "{\"format\":\"loadwalk-bench/1\",\n\"nme\":1,\"fuse\":2}");
    String none = file("none.json", "{\n}");
    String missing = folder.resolve("missing.json").toString();
    assertEquals(2, run(bench, none, missing));
    assertEquals(
        bench
            + ":2:16: «fuse» must be an object, not a number\n"
            + bench
            + ":2:1: unknown key «nme»; nearest known key: «name»\n"
            + none
            + ":1:1: key «format» is missing; it must be «loadwalk-sequence/1»,"
            + " «loadwalk-amplifier/1» or «loadwalk-bench/1»\n"
            + missing
            + ":1:1: there is no such file\n",
        output());
  }

  @Test
  void check_ofASequenceAmongSequences_wantsTheNameOfItsFile() throws IOException {
    String stock = Files.readString(Path.of("sequences", "stereo-only.json"));
    assertEquals(0, run(file("copied.json", stock)));
    Path kept = Files.createDirectory(folder.resolve("sequences")).resolve("copied.json");
    Files.writeString(kept, stock);
    assertEquals(2, run(kept.toString()));
    assertTrue(output().contains("copied.json:3:11: «name» is «stereo-only» but"), output());
  }

  @Test
  void check_ofAFolderOrAnotherFormat_isRefusedInASentence() throws IOException {
    String other = file("x.json", "{\"format\":\"loadwalk-sheet/1\"}");
    assertEquals(2, run(folder.toString(), other));
    assertTrue(output().contains("this is a folder"), output());
    assertTrue(output().contains(":1:11: «format» does not say what this file is"), output());
  }

  @Test
  void check_withJson_printsOneObject() throws IOException {
    String file = file("seq.json", "{\"format\":\"loadwalk-sequence/2\"}");
    assertEquals(2, run("--json", file));
    Node.Obj root = (Node.Obj) JsonText.strict("out").read(output()).found().orElseThrow();
    assertTrue(output().startsWith("{\"format\":\"loadwalk-check/1\",\"files\":["), output());
    Node.Arr files = (Node.Arr) root.get("files").orElseThrow();
    Node.Arr errors = (Node.Arr) ((Node.Obj) files.items().get(0)).get("errors").orElseThrow();
    assertEquals(1, errors.items().size());
  }

  @Test
  void check_withoutFiles_isBadUsage() {
    StringWriter told = new StringWriter();
    CommandLine line = new CommandLine(new CheckCommand()).setErr(new PrintWriter(told));
    assertEquals(2, line.execute());
    assertTrue(told.toString().contains("FILE"), told.toString());
  }

  private int run(String... arguments) {
    return new CommandLine(new CheckCommand()).setOut(new PrintWriter(printed)).execute(arguments);
  }

  private String output() {
    return printed.toString().replace(System.lineSeparator(), "\n");
  }

  private String file(String name, String text) throws IOException {
    Path path = folder.resolve(name);
    Files.write(path, text.getBytes(StandardCharsets.UTF_8));
    return path.toString();
  }
}
