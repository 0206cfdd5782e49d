package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.OptionalLong;
import loadwalk.app.MachineEffects;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.canvas.Look;
import loadwalk.view.state.Library;
import loadwalk.walk.Effect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the home screen offers from earlier walks. */
class LibraryScenarioTest {
  @Test
  void realAmplifier_isOffered_aPracticeOneIsNot_finishedOrOpen(@TempDir Path folder) {
    ProgramUnderTest first = started(folder);
    first.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)));
    first.fill(new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));
    first.die();
    ProgramUnderTest second = started(folder);
    second.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 2, 60)));
    second.die();
    ProgramUnderTest third = started(folder);
    third.open(
        new Effect.OpenWalk(
            "stereo-only",
            Amplifier.named("Verrin", "V1"),
            Bench.unknown(),
            OptionalLong.empty(),
            1));
    third.die();
    Library library = started(folder).program().state().library();
    assertEquals(3, library.walks().size());
    assertEquals(List.of("Verrin V1"), library.amplifiers().stream().map(Amplifier::name).toList());
  }

  /** The one changed last is first; the other is the same walk, and says so. */
  @Test
  void copyOfAWalk_isToldApart(@TempDir Path folder) throws IOException {
    ProgramUnderTest first = started(folder);
    first.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)));
    first.die();
    Path sessions = folder.resolve("sessions");
    String name = started(folder).program().state().library().walks().get(0).name();
    Path walk = sessions.resolve(name + ".jsonl");
    Path copy = Files.copy(walk, sessions.resolve("copy.jsonl"));
    FileTime time = Files.getLastModifiedTime(walk);
    Files.setLastModifiedTime(copy, FileTime.fromMillis(time.toMillis() - 60_000));
    assertEquals(
        List.of("open at warm-up", "open at warm-up, begins as " + name),
        started(folder).program().state().library().walks().stream()
            .map(Library.KeptWalk::standing)
            .toList());
  }

  private static ProgramUnderTest started(Path folder) {
    return new ProgramUnderTest(folder, new FakeClocks(), new Look(false));
  }
}
