package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import loadwalk.Needs;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.json.Read;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.ScopeCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What never begins or never ends is not waited for. */
class PlainFilesTest {
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  @TempDir Path folder;

  private static String refusal(String file) {
    Read<Bench> read =
        assertTimeoutPreemptively(PATIENCE, () -> InputFile.read(file, BenchFiles.BENCH::read));
    assertEquals(1, read.faults().size());
    return read.faults().get(0).text();
  }

  @Test
  void pipeOrDevice_namedAsAFile_isRefusedAtOnce() throws Exception {
    Needs.tool("mkfifo");
    Path pipe = folder.resolve("pipe");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    Path link = Files.createSymbolicLink(folder.resolve("link"), pipe);
    for (String file : List.of(pipe.toString(), link.toString(), "/dev/zero", "/dev/tty")) {
      assertEquals(
          file + ":1:1: this is a pipe or a device; a plain file is needed, or - for stdin",
          refusal(file));
    }
    String within = refusal(folder.toString());
    assertTrue(within.endsWith("this is a folder; a file is needed"), within);
  }

  /** Gives so many zeros, then fails: they were not to be read. */
  private static final class Zeros extends InputStream {
    private long left = 1 << 20;

    @Override
    public int read() throws IOException {
      if (left-- <= 0) {
        throw new IOException("all of it was read");
      }
      return 0;
    }
  }

  @Test
  void captureThatCanBeNone_isReadFromStdinNoFurtherThanItsStart() throws Exception {
    try (CaptureFile file = CaptureFile.open("-", new Zeros(), ScopeCsv.Given.NOTHING)) {
      String why =
          assertThrows(
                  CaptureException.class,
                  () -> file.read(source -> WaveAnalysis.of(source, 1, Calibration.NONE)))
              .getMessage();
      assertTrue(why.contains("is not a WAV file"), why);
    }
  }
}
