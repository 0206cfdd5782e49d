package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import loadwalk.app.Main;
import loadwalk.cli.ReplayCommand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Fills a walk on the practice bench and replays it by the same rules. */
class ReplayScenarioTest {
  @TempDir private Path home;

  @Test
  void replay_ofAWalkJustFilled_findsNothingDifferent() throws IOException {
    assertEquals(
        0, Main.run("walk", "stereo-only", "--practice", "3", "--fill", "--home", home.toString()));
    String walk = onlyWalk();
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    CommandLine replay =
        new CommandLine(new ReplayCommand(KeptWalksOnDisk::at))
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(complained));
    assertEquals(0, replay.execute("--home", home.toString(), walk), complained.toString());
    assertEquals(walk + ": nothing differs" + System.lineSeparator(), printed.toString());
    printed.getBuffer().setLength(0);
    assertEquals(2, replay.execute("--json", "--home", home.toString(), walk, "no-such-walk"));
    assertEquals(
        "{\"format\":\"loadwalk-replay/1\",\"walks\":[{\"walk\":\""
            + walk
            + "\",\"journal\":\"whole\",\"differences\":[]}]}",
        printed.toString().strip());
    assertTrue(complained.toString().startsWith("no-such-walk: There is no walk"));
    assertEquals(2, replay.execute("--home", home.toString(), "no-such-walk", walk));
  }

  private String onlyWalk() throws IOException {
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(home.resolve("sessions"), "*.jsonl")) {
      return files.iterator().next().getFileName().toString().replace(".jsonl", "");
    }
  }
}
