package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import loadwalk.app.MachineEffects;
import loadwalk.app.Ramps;
import loadwalk.app.TextsForScreen;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.loop.LineFeed;
import loadwalk.app.loop.PlainLoop;
import loadwalk.app.loop.ProgramRunner;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.result.Criterion;
import loadwalk.view.Program;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.StepState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Waves from files entering a walk in plain mode, read by the real effects. */
class CaptureWalkTest {
  private static final String TO_STEREO_4 = "skip not now\nskip not now\nlift test it\narm 4\n";

  @TempDir private Path folder;
  private MachineEffects effects;
  private ProgramRunner runner;

  @BeforeEach
  void start() throws Exception {
    effects =
        new MachineEffects(
            new WalkFolder(new JournalFolder(new DataHome(folder))),
            new SequenceFinder(new DataHome(folder)),
            new TextsForScreen(StockRules.RULES, false),
            new FakeClocks(),
            () -> {});
    runner =
        new ProgramRunner(
            new ProgramUpdate(new Walker(StockRules.RULES)),
            effects,
            Program.atHome("home", StockRules.RULES));
    effects
        .open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)))
        .forEach(runner::accept);
  }

  private String type(String lines) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PlainLoop loop =
        new PlainLoop(
            runner,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new Look(false),
            new FakeClocks());
    try (LineFeed typed = new LineFeed(new StringReader(lines))) {
      loop.run(typed);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  private StepState step() {
    return runner.program().walk().orElseThrow().state().step("stereo-4");
  }

  @Test
  void cautions_comeFirst_andMustBeConfirmed() throws Exception {
    Path file = Ramps.write(folder.resolve("ramp.wav"), Ramps.rising(8));
    String said = type(TO_STEREO_4 + "wave " + file + " full-scale 2 divider 21\n");
    assertTrue(said.contains("only through a divider"), said);
    assertTrue(said.contains("isolating transformer"), said);
    assertEquals(List.of(), step().captures());
    type("wave confirm\nwave " + file + " full-scale 2 divider 21\n");
    assertEquals(1, step().captures().size());
  }

  @Test
  void rampFile_entersVoltsAtTheLimit_withNameAndHash() throws Exception {
    Path file = Ramps.write(folder.resolve("my ramp.wav"), Ramps.rising(8));
    String said =
        type(
            TO_STEREO_4
                + "wave confirm\nwave \""
                + file
                + "\" full-scale 2 divider 21 percent 0.5\n");
    double expected = 42 * Ramps.LIMIT_RMS;
    assertEquals(
        expected, step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value(), 0.002 * expected);
    assertEquals(1, step().latest(ReadingId.THD_PERCENT).orElseThrow().value());
    assertEquals(Criterion.THD_LIMIT, step().criterion(1));
    Capture capture = step().captures().get(0);
    assertEquals("my ramp.wav", capture.file());
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    assertEquals(HexFormat.of().formatHex(hash), capture.sha256());
    assertEquals(128, capture.cycle().size());
    assertEquals(1.0, capture.harmonics().get(1), 0.05);
    assertTrue(said.contains("Taken from my ramp.wav: 17.9"), said);
    assertTrue(said.contains("kept stereo-4 outputVolts 17.9"), said);
  }

  @Test
  void steadyFile_entersVoltsAndThd_andTheCalibrationIsKept() throws Exception {
    Path first = Ramps.write(folder.resolve("a.wav"), Ramps.steady(0.3, 3));
    Path second = Ramps.write(folder.resolve("b.wav"), Ramps.steady(0.6, 3));
    type(TO_STEREO_4 + "wave confirm\nwave " + first + " known 10\nwave " + second + "\n");
    double ratio = 0.6 * (1 - 0.075 * 0.36) / (0.3 * (1 - 0.075 * 0.09));
    assertEquals(
        10 * ratio, step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value(), 0.001 * 20);
    double thd = 100 * 0.025 * 0.36 / (1 - 0.075 * 0.36);
    assertEquals(thd, step().latest(ReadingId.THD_PERCENT).orElseThrow().value(), 0.01);
    assertEquals(2, step().captures().size());
  }

  @Test
  void takenUpAgain_theWalkKeepsWaveAndCalibration() throws Exception {
    Path file = Ramps.write(folder.resolve("a.wav"), Ramps.steady(0.6, 3));
    type(TO_STEREO_4 + "wave confirm\nwave " + file + " full-scale 2 divider 21\n");
    Capture before = step().captures().get(0);
    String name = runner.program().walk().orElseThrow().state().opened().walk();
    runner.perform(new Effect.CloseWalk());
    effects.resume(new WalkName(name)).forEach(runner::accept);
    assertEquals(List.of(before), step().captures());
    assertTrue(runner.program().state().waves().cautioned());
    assertEquals(42, runner.program().state().waves().setup().fullScaleVolts().orElseThrow());
  }

  @Test
  void whatCannotBeTaken_isToldInASentence() throws Exception {
    Path file = Ramps.write(folder.resolve("a.wav"), Ramps.steady(0.6, 3));
    Path text = Files.writeString(folder.resolve("a.txt"), "nothing to hear");
    Path silent = Ramps.write(folder.resolve("silent.wav"), new double[48_000]);
    String said =
        type(
            TO_STEREO_4
                + "wave confirm\nwave "
                + file
                + "\nwave nowhere.wav known 3\nwave "
                + folder
                + " known 3\nwave "
                + text
                + " known 3\nwave "
                + silent
                + " known 3\nwave "
                + file
                + " known 3 channel 2\nwave \u0000 known 3\n");
    assertTrue(said.contains("First say what a sample is in volts"), said);
    assertTrue(said.contains("There is no file nowhere.wav."), said);
    assertTrue(said.contains("is a folder, not a capture."), said);
    assertTrue(said.contains("no rows of numbers"), said);
    assertTrue(said.contains("silent"), said);
    assertTrue(said.contains("There is no channel 2"), said);
    assertFalse(said.contains("Exception"), said);
    assertEquals(List.of(), step().captures());
  }
}
