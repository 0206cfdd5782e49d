package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loadwalk.report.Photos;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo is attached on the walk screen, and found on the sheet. */
class PhotoScenarioTest {
  @TempDir Path folder;

  @Test
  void photo_isAttachedBehindTheNoteKey_andOutlivesAKill() throws IOException {
    Path photo = Files.write(folder.resolve("sink.png"), Photos.png());
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("F2").sees("a photo").press("F2").sees("path of a PNG or JPEG");
    bench
        .press("text:" + photo + " the heatsink, warm", "Enter")
        .sees("The photo is kept as sessions/");
    bench.press("F2", "F2", "text:gone.png nothing", "Enter").sees("no file at that path");
    bench.press("F2", "F2", "text:" + photo, "Enter").sees("what the photo shows");
    bench.press("F10", "F6");
    for (int i = 0; i < 30 && !bench.picture().contains("the heatsink, warm"); i++) {
      bench.press("PageDown");
    }
    bench.sees("the heatsink, warm").press("F10");
    WalkState.Attachment kept = bench.model().state().attachments().get(0);
    assertEquals("stereo-4", kept.stepId());
    assertEquals("the heatsink, warm", kept.caption());
    assertEquals(1, bench.model().state().attachments().size());
    bench.killedAndStartedAgain().press("Up", "Enter").journalTellsTheSame();
    assertEquals(kept, bench.model().state().attachments().get(0));
  }
}
