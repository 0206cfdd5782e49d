package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files larger than any array: each is refused as bad input, never read whole. */
class HugeFileTest {
  private static final long LENGTH = 3L << 30;

  @TempDir private Path folder;
  private Path huge;
  private Path home;

  @BeforeEach
  void make() throws IOException {
    huge = folder.resolve("huge.json");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(LENGTH);
    }
    home = Files.createDirectories(folder.resolve("home"));
  }

  private int run(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    if (!words[0].equals("check")) {
      all.addAll(List.of("--home", home.toString()));
    }
    return Main.run(all.toArray(String[]::new));
  }

  @Test
  void hugeAmplifierBenchOrSequence_isBadInput() throws IOException {
    assertEquals(2, run("check", huge.toString()));
    assertEquals(2, run("walk", "full-walk", "--plain", "--amp", huge.toString()));
    assertEquals(2, run("plan", "full-walk", "--amp", huge.toString()));
    Files.createDirectories(home.resolve("sequences"));
    Files.move(huge, home.resolve("sequences/mine.json"));
    assertEquals(2, run("walk", "mine", "--plain", "--practice"));
    try (Stream<Path> files = Files.list(home)) {
      assertFalse(files.anyMatch(f -> f.toString().contains("crash")), "a fault was reported");
    }
  }

  @Test
  void hugeJournal_isNotReadWhole_andHarmsNoOther() throws IOException {
    Files.createDirectories(home.resolve("sessions"));
    Files.move(huge, home.resolve("sessions/huge.jsonl"));
    assertEquals(2, run("resume", "huge", "--plain"));
    assertEquals(0, run("walk", "stereo-only", "--fill"));
    assertEquals(2, run("resume", "huge", "--plain"));
    try (Stream<Path> files = Files.list(home)) {
      assertFalse(files.anyMatch(f -> f.toString().contains("crash")), "a fault was reported");
    }
  }
}
