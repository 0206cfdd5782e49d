package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loadwalk.bench.ReadingId;
import loadwalk.report.Photos;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder of the walks is deleted in mid-step: the screen offers to write it all anew. */
class AwayScenarioTest {
  @TempDir Path folder;

  private Path home;
  private BenchSide bench;

  @BeforeEach
  void loseTheFolder() throws IOException {
    home = Files.createDirectories(folder.resolve("home"));
    bench = BenchSide.at(home).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter");
    try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(home.resolve("sessions"));
    bench.press("text:15.4 V", "Enter").sees("NOT ON DISK", "F9 write it all to …");
  }

  private void bothReadingsAreIn() {
    assertEquals(List.of("15.5 V"), bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS));
    assertEquals(List.of("15.4 V"), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
  }

  @Test
  void enter_writesTheWalkWhereItWas_andTheStepGoesOn() {
    bench.press("F9").sees("Write the whole walk to which folder or file?", "NOT ON DISK");
    bench.press("Enter").seesNot("NOT ON DISK", "Write the whole walk");
    bench.sees("The whole walk is written anew in", "15.4 V").journalTellsTheSame();
    bothReadingsAreIn();
    bench.killedAndStartedAgain().press("Up", "Enter").sees("stereo-4");
    bothReadingsAreIn();
    String note = bench.model().state().notes().get(0).text();
    assertTrue(note.startsWith("Loadwalk wrote the whole walk anew. 2"), note);
    assertTrue(note.endsWith("was not written: the file or its folder is gone."), note);
  }

  @Test
  void placeThatIsNotThere_isTold_andWhatWasTypedCanBeMended() throws IOException {
    Path stick = folder.resolve("stick");
    bench.press("F9", "text:" + stick, "Enter").sees("There is no folder", "NOT ON DISK");
    bench.sees("Enter write it all");
    Files.createDirectory(stick);
    bench.press("Enter").sees("The whole walk is written anew in", "15.4 V");
    bothReadingsAreIn();
    try (Stream<Path> files = Files.list(stick.resolve("sessions"))) {
      assertTrue(files.anyMatch(file -> file.toString().endsWith(".jsonl")));
    }
    bench.press("F10").sees("To resume this walk, name its data home: --home");
    assertTrue(Files.notExists(home.resolve("sessions")), "the old place was written to");
  }

  @Test
  void stoppedWalk_offersItToo_andTheStopIsKept() {
    bench.press("Esc").sees("OUTPUT DOWN", "NOT ON DISK", "F9 write it all to …");
    bench.press("F9", "text:nowhere/at all", "Enter").sees("There is no folder", "OUTPUT DOWN");
    bench.press("F10").sees("why did you stop?").press("F9", "Enter").seesNot("NOT ON DISK");
    bench.sees("OUTPUT DOWN", "The whole walk is written anew in").press("text:disk", "Enter");
    bench.sees("PAUSED", "Last stopped because: disk").journalTellsTheSame();
    bothReadingsAreIn();
  }

  @Test
  void questionOfLeaving_offersItAsWell_andALeaverLosesOnlyWhatHeLeaves() {
    bench.press("F10").sees("Type leave to leave without it", "F9 write it all to …");
    bench.press("F9").sees("Write the whole walk to which").press("Enter").seesNot("NOT ON DISK");
    bench.press("F10").sees("Resume").press("Up", "Enter").sees("stereo-4");
    bothReadingsAreIn();
  }

  @Test
  void photosThatStayBehind_areTold_andNewOnesGoAlong() throws IOException {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Path photo = Files.write(folder.resolve("sink.png"), Photos.png());
    bench.press("F9", "Enter").seesNot("NOT ON DISK");
    bench.press("F2", "F2", "text:" + photo + " the sink", "Enter").sees("The photo is kept as");
    bench.press("F2", "text:a note", "Enter");
    Files.move(home.resolve("sessions"), home.resolve("elsewhere"));
    bench.press("F2", "text:another", "Enter").sees("NOT ON DISK");
    bench.press("F9", "text:" + stick, "Enter").seesNot("NOT ON DISK");
    bench.sees("Copy its photo along from where it was.");
    bench.press("F2", "F2", "text:" + photo + " again", "Enter").sees("The photo is kept as");
    try (Stream<Path> files = Files.walk(stick)) {
      assertEquals(1, files.filter(file -> file.toString().endsWith(".png")).count());
    }
  }
}
