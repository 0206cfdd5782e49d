package loadwalk.shipped;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import loadwalk.Needs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the machine lacks, and what the command line asks that cannot be: told in a sentence, with
 * the exit code 2, and nothing is written anywhere.
 */
class UnfitMachineIT {
  private static final String LOST = "has letters that this locale cannot write";

  @TempDir Path folder;

  private Path home;
  private Path userData;

  /** What a command printed, and its exit code. */
  private record Ran(int code, String said) {
    Ran endsWith(int due) {
      assertEquals(due, code, said);
      return this;
    }

    Ran says(String part) {
      assertTrue(said.contains(part), said);
      return this;
    }
  }

  @BeforeEach
  void furnish() throws IOException {
    home = Files.createDirectories(folder.resolve("home"));
    userData = Files.createDirectories(folder.resolve("data of the user"));
  }

  private Ran run(String locale, Path from, String... words) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(words).directory(from.toFile()).redirectErrorStream(true);
    Shipped.prepare(builder.environment());
    builder.environment().keySet().removeAll(List.of("LANG", "LC_CTYPE"));
    builder.environment().put("LC_ALL", locale);
    builder.environment().put("XDG_DATA_HOME", userData.toString());
    Process process = Shipped.limited(builder);
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Ran(process.waitFor(), said);
  }

  private static String[] launcher(String... words) {
    return words(List.of(Shipped.launcher().toString()), words);
  }

  private static String[] bareJava(String... words) {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return words(List.of(java, "-jar", Shipped.jar().toString()), words);
  }

  private static String[] words(List<String> first, String... rest) {
    return Stream.concat(first.stream(), Stream.of(rest)).toArray(String[]::new);
  }

  private static List<Path> journals(Path below) throws IOException {
    try (Stream<Path> all = Files.walk(below)) {
      return all.filter(file -> file.toString().endsWith(".jsonl")).toList();
    }
  }

  @Test
  void machineWithoutStty_isToldWhatIsMissing_andPlainWorksThere() throws Exception {
    Needs.tool("script");
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool : List.of("sh", "dirname", "readlink", "env")) {
      Path there =
          Stream.of("/bin/" + tool, "/usr/bin/" + tool)
              .map(Path::of)
              .filter(Files::isExecutable)
              .findFirst()
              .orElseThrow();
      Files.createSymbolicLink(tools.resolve(tool), there);
    }
    String narrow = "PATH='" + tools + "' '" + Shipped.launcher() + "' --home '" + home + "'";
    Ran screen = run("C.UTF-8", folder, "script", "-qfec", narrow, "/dev/null");
    screen.endsWith(2).says("need the programs sh and stty").says("use --plain");
    assertFalse(screen.said().contains("not found"), screen.said());
    String plain =
        "PATH='"
            + tools
            + "' '"
            + Shipped.launcher()
            + "' walk stereo-only --practice 1 --plain --home '"
            + home
            + "' < /dev/null";
    run("C.UTF-8", folder, "sh", "-c", plain).endsWith(0).says("Step 1 of 8");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C", "POSIX", ""})
  void homeOfLettersThatTheLocaleLacks_isTheOneNamed_andTextStaysAscii(String locale)
      throws Exception {
    Path named = Files.createDirectories(folder.resolve("Prüfstand"));
    run(
            locale,
            folder,
            launcher("walk", "stereo-only", "--practice", "1", "--fill", "--home", "Prüfstand"))
        .endsWith(0);
    assertEquals(1, journals(named).size());
    assertEquals(1, journals(folder).size(), "the walk went elsewhere");
    Ran sheet = run(locale, named, launcher("sheet", "--home", ".")).endsWith(0).says("4 ohm");
    assertTrue(sheet.said().chars().allMatch(c -> c < 128), sheet.said());
    Files.createDirectories(named.resolve("sequences"));
    run(locale, named, launcher("ledger")).endsWith(0).says("Halvorsen");
    run(locale, named, launcher("walk", "stereo-only", "--practice", "2", "--fill")).endsWith(0);
    assertEquals(2, journals(named).size(), "a walk begun in the folder went elsewhere");
  }

  @Test
  void bareJavaOnSuchAHome_saysSo_andWritesNowhere() throws Exception {
    Path named = Files.createDirectories(folder.resolve("Prüfstand"));
    Files.createDirectories(named.resolve("sequences"));
    String[] walk = {"walk", "stereo-only", "--practice", "1", "--fill"};
    run("C", folder, words(List.of(bareJava(walk)), "--home", "Prüfstand")).endsWith(2).says(LOST);
    run("C", named, bareJava(walk)).endsWith(2).says(LOST).says("C.UTF-8");
    run("C", named, bareJava("ledger")).endsWith(2).says(LOST);
    run("C", named, bareJava("sheet", "--home", ".")).endsWith(2).says(LOST);
    userData = folder.resolve("Müller");
    run("C", folder, bareJava(walk)).endsWith(2).says(LOST);
    assertEquals(List.of(), journals(folder));
  }

  @Test
  void inputThatIsAFolder_isNoFaultOfLoadwalk() throws Exception {
    String line = "\"$0\" walk stereo-only --practice 1 --plain --home home < .";
    run("C.UTF-8", folder, "sh", "-c", line, Shipped.launcher().toString())
        .endsWith(2)
        .says("The input cannot be read");
  }

  /** Java opens files of its own in the place of a closed stream: none of their bytes is typed. */
  @Test
  void closedInputUnderBareJava_typesNothing() throws Exception {
    String[] walk = bareJava("walk", "stereo-only", "--practice", "1", "--plain", "--home", "home");
    String line = "exec \"$@\" 0<&-";
    Ran ran = run("C.UTF-8", folder, words(List.of("sh", "-c", line, "sh"), walk)).endsWith(0);
    assertTrue(ran.said().endsWith("Type begin.\n"), ran.said());
    assertEquals(2, Files.readAllLines(journals(home).get(0)).size(), "something was typed");
  }

  @Test
  void metersThatDoNotAnswer_areInTheExitCode() throws Exception {
    Path bench = folder.resolve("bench.json");
    String meter =
        """
        {"format":"loadwalk-bench/1","meters":[{"label":"DMM","reads":"supplyVolts",
         "percent":0.5%s}]}
        """;
    String connection = ",\"connection\":{\"tcp\":\"127.0.0.1:%d\",\"query\":\"READ?\"}";
    Files.writeString(bench, meter.formatted(connection.formatted(portNobodyListensAt())));
    run("C.UTF-8", folder, launcher("meters", "--bench", "bench.json"))
        .endsWith(2)
        .says("Nothing was entered");
    Files.writeString(bench, meter.formatted(""));
    run("C.UTF-8", folder, launcher("meters", "--bench", "bench.json"))
        .endsWith(0)
        .says("read by eye");
  }

  private static int portNobodyListensAt() throws IOException {
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return free.getLocalPort();
    }
  }

  /** Who scripts a report learns from its help what the README says of the same code. */
  @Test
  void helpOfAReport_givesTheCodeOfADiskThatFails_asTheReadmeDoes() throws Exception {
    String code = "2 bad usage or input, or a disk that fails";
    String readme = Files.readString(Path.of("README.md")).replaceAll("\\s+", " ");
    assertTrue(readme.contains(code), readme);
    for (String command : List.of("sheet", "ledger", "plan")) {
      String help = run("C.UTF-8", folder, launcher(command, "--help")).endsWith(0).said();
      assertTrue(help.replaceAll("\\s+", " ").contains(code), help);
    }
  }

  @Test
  void numbersThatCannotBe_areRefusedWithTheirLimits() throws Exception {
    Path wav = folder.resolve("tone.wav");
    run("C.UTF-8", folder, launcher("tone", wav.toString(), "--seconds", "0.5")).endsWith(0);
    run("C.UTF-8", folder, launcher("sheet", "--columns", "40", "--home", "home"))
        .endsWith(2)
        .says("no walks");
    List<String> wrong = new ArrayList<>();
    for (String columns : List.of("-1", "0", "39", "1001", "2147483647")) {
      wrong.add("ledger --columns " + columns + " --home home: from 40 to 1000");
    }
    for (String command : List.of("sheet", "plan full-walk --amp none", "wave " + wav)) {
      wrong.add(command + " --columns -1: from 40 to 1000");
    }
    for (String option :
        List.of(
            "--burst -1",
            "--burst NaN",
            "--burst 0.1 --seconds -5",
            "--burst 0.1 --every 0",
            "--burst 0.1 --every NaN",
            "--burst 0.1 --seconds Infinity")) {
      wrong.add("tone new.wav " + option + ": from 0.001 to 86400");
    }
    wrong.add("tone new.wav --rate 2147483647: 44100, 48000 or 96000");
    wrong.add("tone new.wav --bits 0: 16 or 24");
    wrong.add("tone new.wav --channels -1: 1 or 2");
    wrong.add("tone new.wav --seconds -1: above 0");
    wrong.add("wave " + wav + " --channel 0: no channel 0");
    wrong.add("wave " + wav + " --calibration-percent -5: from 0 to 100");
    wrong.add("wave " + wav + " --full-scale -1: above 0");
    wrong.add("walk stereo-only --speed 61 --practice 1: from 1 to 60");
    wrong.add("walk stereo-only --practice 9007199254740993: up to 9007199254740992");
    for (String line : wrong) {
      String[] parts = line.split(": ");
      Ran ran = run("C.UTF-8", folder, launcher(parts[0].split(" ")));
      assertEquals(2, ran.code(), line + " gave " + ran.said());
      assertTrue(ran.said().contains(parts[1]), line + " said " + ran.said());
    }
    assertFalse(Files.exists(folder.resolve("new.wav")), "a tone was written");
    System.out.printf(Locale.ROOT, "numbers that cannot be: %d tried%n", wrong.size());
  }
}
