package loadwalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class MetersCommandTest {
  private static final String BENCH =
      """
      {"format":"loadwalk-bench/1","meters":[
        {"label":"DMM","reads":"supplyVolts","percent":0.5,
         "connection":{"tcp":"192.0.2.10","query":"MEAS:VOLT:DC?"}},
        {"label":"clamp","reads":"supplyAmps","percent":1,
         "connection":{"serial":"/dev/ttyUSB0","query":"READ?"}},
        {"label":"by eye","reads":"thdPercent","percent":5}]}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private String asked = "";

  private MeterPort room() {
    return new MeterPort() {
      @Override
      public List<Tried> tryAll(Bench bench) {
        MeterReading volts = new MeterReading.Value(13.7, Unit.VOLT, "+1.37000000E+01");
        Identity who = new Identity("Brightmoor", "M6", "0", "1.0");
        return List.of(
            new Tried(bench.meters().get(0), Optional.of(who), Optional.of(volts)),
            new Tried(
                bench.meters().get(1),
                Optional.empty(),
                Optional.of(new MeterReading.Overload("9.9E37"))),
            new Tried(bench.meters().get(2), Optional.empty(), Optional.empty()));
      }

      @Override
      public Served serve(long seed, OptionalLong faultSeed) {
        asked = "seed " + seed + ", faults " + faultSeed;
        return new Served(
            Amplifier.named("Verrin", "V1"),
            Bench.unknown(),
            typed -> "set to " + typed,
            () -> asked += ", ended");
      }
    };
  }

  private int run(String... words) {
    CommandLine line = new CommandLine(new MetersCommand(room()));
    return line.setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(words);
  }

  private static String file(Path folder, String text) throws Exception {
    return Files.writeString(folder.resolve("bench.json"), text).toString();
  }

  @Test
  void meters_areListedWithWhatTheyAnswered(@TempDir Path folder) throws Exception {
    assertEquals(ExitCode.DONE, run("--bench", file(folder, BENCH)));
    assertEquals(
        """
        DMM, reads the supply volts
          192.0.2.10:5025  MEAS:VOLT:DC?
          identity: Brightmoor,M6,0,1.0
          answer: 13.700 V  (+1.37000000E+01)
        clamp, reads the supply amps
          /dev/ttyUSB0 at 9600 baud  READ?
          identity: none
          answer: the meter shows overload: switch to a higher range. Nothing was entered.
        by eye, reads the THD
          read by eye; no connection in the bench file
        """,
        out.toString().replace("\r\n", "\n"));
  }

  @Test
  void json_carriesItsFormat_andNoValueForWhatIsNone(@TempDir Path folder) throws Exception {
    assertEquals(ExitCode.DONE, run("--json", "--bench", file(folder, BENCH)));
    String text = out.toString();
    assertTrue(text.startsWith("{\"format\":\"loadwalk-meters/1\""), text);
    assertTrue(text.contains("\"value\":13.7,\"raw\":\"+1.37000000E+01\""), text);
    assertTrue(text.contains("\"problem\":\"the meter shows overload"), text);
    assertEquals(1, text.split("\"value\"", -1).length - 1, text);
  }

  @Test
  void practice_servesWithTheSeedAndFaultsAskedFor_untilTheInputEnds() {
    InputStream machine = System.in;
    try {
      System.setIn(InputStream.nullInputStream());
      assertEquals(ExitCode.DONE, run("--practice", "3", "--faults", "7"));
      assertEquals("seed 3, faults OptionalLong[7], ended", asked);
      assertTrue(out.toString().contains("\"format\" : \"loadwalk-bench/1\""), out.toString());
      assertTrue(err.toString().contains("loadwalk meters --bench FILE"), err.toString());
      assertEquals(ExitCode.DONE, run("--practice"));
      assertEquals("seed 1, faults OptionalLong.empty, ended", asked);
    } finally {
      System.setIn(machine);
    }
  }

  @Test
  void practice_keepsFilesForAWalk_andTakesLinesThatSetTheBench(@TempDir Path folder)
      throws Exception {
    InputStream machine = System.in;
    try {
      System.setIn(new ByteArrayInputStream("idle\n\nstereo 2\n".getBytes(UTF_8)));
      assertEquals(ExitCode.DONE, run("--practice", "--keep", folder.toString()));
    } finally {
      System.setIn(machine);
    }
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("set to idle"), err.toString());
    assertTrue(err.toString().contains("set to stereo 2"), err.toString());
    assertEquals(2, err.toString().split("set to", -1).length - 1, err.toString());
    byte[] amp = Files.readAllBytes(folder.resolve("practice-amp.json"));
    assertEquals("V1", BenchFiles.AMPLIFIER.read(amp, "amp").found().orElseThrow().model());
    byte[] bench = Files.readAllBytes(folder.resolve("practice-bench.json"));
    assertEquals(Bench.unknown(), BenchFiles.BENCH.read(bench, "bench").found().orElseThrow());
  }

  @Test
  void examples_areNamed_andEachIsABenchWithAConnectedMeter() {
    assertEquals(ExitCode.DONE, run("--example"));
    List<String> names = out.toString().lines().toList();
    assertEquals(MetersCommand.EXAMPLES, names);
    for (String name : names) {
      out.getBuffer().setLength(0);
      assertEquals(ExitCode.DONE, run("--example", name));
      var read = BenchFiles.BENCH.read(out.toString().getBytes(UTF_8), name);
      assertEquals(List.of(), read.faults());
      assertTrue(
          read.found().orElseThrow().meters().stream().anyMatch(m -> m.connection().isPresent()));
    }
    assertEquals(ExitCode.BAD_INPUT, run("--example", "none"));
    assertTrue(err.toString().contains("There is no example named «none»"), err.toString());
  }

  @Test
  void faults_withoutPractice_areRefused() throws Exception {
    assertEquals(ExitCode.BAD_INPUT, run("--bench", "x", "--faults", "7"));
    assertTrue(err.toString().contains("--faults needs --practice."));
    assertEquals("", asked);
  }

  @Test
  void badUse_isRefused(@TempDir Path folder) throws Exception {
    assertEquals(ExitCode.BAD_INPUT, run());
    assertEquals(ExitCode.BAD_INPUT, run("--bench", "x", "--practice"));
    assertEquals(ExitCode.BAD_INPUT, run("--bench", "x", "--keep", "."));
    assertEquals(
        ExitCode.BAD_INPUT, run("--practice", "--keep", folder.resolve("none").toString()));
    assertEquals(ExitCode.BAD_INPUT, run("--bench", folder.resolve("none").toString()));
    String acting = BENCH.replace("READ?", "OUTP ON");
    assertEquals(ExitCode.BAD_INPUT, run("--bench", file(folder, acting)));
    assertTrue(err.toString().contains("only reads"), err.toString());
  }
}
