package loadwalk.shipped;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped launcher walks a practice amplifier in plain mode, and goes on after a SIGKILL. */
class PlainWalkIT {
  private static final String FIRST_HALF =
      "begin\nearly it is a test\nbegin\nfill\ndone\n" + step(4);
  private static final String SECOND_HALF =
      step(2)
          + step(1)
          + step(4)
          + "lift it is a test\narm 4\nbegin\nearly it is a test\n"
          + step(1);

  @TempDir Path home;

  /** Whatever its brief says; the lines that do not fit are refused. */
  private static String step(int ohms) {
    return "lift it is a test\narm " + ohms + "\nbegin\nfill\ndone\n";
  }

  private static void type(Process program, String lines) throws IOException {
    OutputStream in = program.getOutputStream();
    in.write(lines.getBytes(UTF_8));
    in.flush();
  }

  @Test
  void walkKilledHalfWay_isResumedToItsSheet() throws Exception {
    Process first = Shipped.start("C", home, "walk", "stereo-only", "--practice", "1", "--plain");
    type(first, FIRST_HALF);
    BufferedReader out = new BufferedReader(new InputStreamReader(first.getInputStream(), UTF_8));
    String kept = null;
    for (String line = ""; !line.startsWith("stereo-4 done"); line = out.readLine()) {
      assertTrue(line != null, "the program ended by itself");
      kept = line.startsWith("kept stereo-4 outputVolts") ? line : kept;
    }
    assertTrue(first.toHandle().destroyForcibly(), "the program could not be killed");
    first.waitFor();

    Process second = Shipped.start("C", home, "resume", "--plain");
    type(second, SECOND_HALF + "sheet\n");
    second.getOutputStream().close();
    String said = new String(second.getInputStream().readAllBytes(), UTF_8);
    assertEquals(0, second.waitFor(), said);
    assertTrue(said.contains("Every step is done."), said);
    String volts = kept.split("[ ,]+")[3];
    assertTrue(said.matches("(?s).*\nstereo-4 +output volts +" + volts + ".*"), kept + "\n" + said);
  }

  @Test
  void exitCodesAndArguments_goThroughTheLauncherUnchanged() throws Exception {
    assertEquals(0, code("walk", "rated-conditions", "--practice", "1", "--fill"));
    Path odd = Files.writeString(home.resolve("a  b * $HOME 'ö\".json"), "{}");
    Process check = Shipped.start("C.UTF-8", home, "check", odd.toString(), "");
    String said = new String(check.getErrorStream().readAllBytes(), UTF_8);
    said += new String(check.getInputStream().readAllBytes(), UTF_8);
    assertEquals(2, check.waitFor(), said);
    assertTrue(said.contains(odd.toString()), said);
    String doubted = "begin\nearly it is a test\nbegin\nsupplyAmps 900 A\n";
    assertEquals(3, typed(doubted, "walk", "stereo-only", "--practice", "1", "--plain"));
    try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
      for (Path journal : files.filter(f -> f.toString().endsWith(".jsonl")).toList()) {
        Files.writeString(
            journal, Files.readString(journal).replaceFirst("\"seq\":2", "\"seq\":3"));
      }
    }
    assertEquals(4, code("sheet"));
  }

  @Test
  void inputThatIsClosed_isNoTypedLine() throws Exception {
    List<String> words = new ArrayList<>(List.of("sh", "-c", "exec \"$0\" \"$@\" <&-"));
    words.addAll(Shipped.command(home, "walk", "stereo-only", "--practice", "1", "--plain"));
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    Shipped.prepare(builder.environment());
    Process program = Shipped.limited(builder);
    String said = new String(program.getInputStream().readAllBytes(), UTF_8);
    assertEquals(0, program.waitFor(), said);
    assertTrue(said.endsWith("Type begin.\n"), said);
  }

  private int code(String... arguments) throws Exception {
    return typed("", arguments);
  }

  private int typed(String lines, String... arguments) throws Exception {
    Process program = Shipped.start("C", home, arguments);
    type(program, lines);
    program.getOutputStream().close();
    program.getInputStream().readAllBytes();
    return program.waitFor();
  }
}
