package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.cli.ExitCode;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plain mode on a disk that takes nothing: leaving asks first, and the exit code tells. */
class PlainFullDiskScenarioTest {
  private static final String ASKS =
      "The last entry is not on the disk. Type quit again to leave without it.";

  private static final String LOST =
      "NOT ON DISK: The disk is full: make room, then try again. The last entry is lost.";

  @TempDir Path folder;

  private ProgramUnderTest program;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  @BeforeEach
  void begin() {
    program = new ProgramUnderTest(folder, new FakeClocks(), new Look(false));
    program.open(
        new Effect.OpenWalk(
            "stereo-only",
            Amplifier.named("Verrin", "V1"),
            Bench.unknown(),
            OptionalLong.empty(),
            1));
  }

  private int typed(String lines) throws IOException {
    return program.type(
        new StringReader(lines), new PrintStream(out, true, StandardCharsets.UTF_8));
  }

  private List<String> said() {
    return out.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void quit_withAnEntryThatIsNotOnTheDisk_asksOnce() throws IOException {
    program.disk().fill();
    assertEquals(ExitCode.BAD_INPUT, typed("note it hums\nquit\nquit\nnote too late\n"));
    assertEquals(1, said().stream().filter(ASKS::equals).count(), said().toString());
    assertEquals(List.of(ASKS, LOST), said().subList(said().size() - 2, said().size()));
  }

  @Test
  void quit_withEverythingOnTheDisk_leavesAtOnce() throws IOException {
    assertEquals(ExitCode.DONE, typed("note it hums\nquit\nnote too late\n"));
    assertTrue(said().stream().noneMatch(ASKS::equals), said().toString());
    assertTrue(said().stream().noneMatch(line -> line.contains("too late")), said().toString());
  }
}
