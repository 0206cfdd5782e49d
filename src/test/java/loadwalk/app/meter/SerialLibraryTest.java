package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loadwalk.Needs;
import loadwalk.app.Child;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The serial library looks for its native part in many places; only one of them is asked. */
class SerialLibraryTest {
  private static final String LIBRARY = "libjSerialComm.so";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"label\":\"DMM\",\"reads\":\"supplyVolts\","
          + "\"percent\":1,\"connection\":{\"serial\":\"/dev/loadwalk-none\",\"query\":\"READ?\"}}]}";

  @TempDir Path folder;

  private Path temporary;

  @BeforeEach
  void make() throws IOException {
    Needs.that("amd64".equals(System.getProperty("os.arch")), "the planted code is for amd64");
    temporary = Files.createDirectory(folder.resolve("tmp"));
  }

  /** Puts code that leaves a file where it is run. */
  private void plant(Path at) throws IOException {
    Files.createDirectories(at.getParent());
    try (InputStream code =
        SerialLibraryTest.class.getResourceAsStream("/native/marks-linux-amd64.so")) {
      Files.copy(code, at);
    }
  }

  /** Tries a meter in a process of its own; its own part is loaded, and nothing else. */
  private void loadsItsOwn(String... options) throws Exception {
    Path bench = Files.writeString(folder.resolve("bench.json"), BENCH);
    Path said = folder.resolve("said");
    List<String> words = new ArrayList<>(Child.command(folder, "meters", "--bench", "" + bench));
    words.addAll(1, List.of(options));
    words.add(1, "-Djava.io.tmpdir=" + temporary);
    words.add(1, "-Duser.home=" + folder);
    Process process =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertTrue(Files.readString(said).contains("there is no port"), Files.readString(said));
    assertFalse(Files.exists(folder.resolve("planted-code-ran")), "planted code has run");
  }

  @Test
  void partInTheSharedTemporaryDirectory_isNotLoaded() throws Exception {
    plant(temporary.resolve("jSerialComm/2.11.4").resolve(LIBRARY));
    plant(folder.resolve(".jSerialComm/2.11.4").resolve(LIBRARY));
    loadsItsOwn();
  }

  @Test
  void partThatAPropertyNames_isNotLoaded() throws Exception {
    plant(folder.resolve("planted").resolve(LIBRARY));
    plant(folder.resolve("planted/Linux/x86_64").resolve(LIBRARY));
    loadsItsOwn("-DjSerialComm.library.path=" + folder.resolve("planted"));
  }

  @Test
  void partOnThePathOfLibraries_isNotLoaded() throws Exception {
    plant(folder.resolve("planted").resolve(LIBRARY));
    loadsItsOwn("-Djava.library.path=" + folder.resolve("planted"));
  }

  @Test
  void linkInTheLibrarysOldFolder_doesNotLeadItToFilesThatItDeletes() throws Exception {
    Path walks = Files.createDirectory(folder.resolve("walks"));
    Path walk = Files.writeString(walks.resolve("walk.jsonl"), "kept");
    Files.createDirectories(temporary.resolve("jSerialComm/2.11.4"));
    Files.createSymbolicLink(temporary.resolve("jSerialComm/old"), walks);
    loadsItsOwn();
    assertEquals("kept", Files.exists(walk) ? Files.readString(walk) : "deleted");
  }
}
