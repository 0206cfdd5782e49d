package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import loadwalk.app.Ramps;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.file.ScopeCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaptureFileTest {
  @TempDir Path folder;

  @Test
  void fileThatChangesBetweenTwoReadings_isRefused_asItsHashWouldStandForOneOfThem()
      throws IOException, CaptureException {
    Path file = Ramps.write(folder.resolve("a.wav"), Ramps.steady(0.4, 0.5));
    try (CaptureFile capture = CaptureFile.named(file.toString(), ScopeCsv.Given.NOTHING)) {
      String hash = capture.read(AudioSource::channels).sha256();
      assertEquals(hash, capture.read(AudioSource::channels).sha256());
      Ramps.write(file, Ramps.steady(0.5, 0.5));
      CaptureException refused =
          assertThrows(CaptureException.class, () -> capture.read(AudioSource::channels));
      assertEquals(
          "The file changed while it was read. Let the recording end first.", refused.getMessage());
    }
  }
}
