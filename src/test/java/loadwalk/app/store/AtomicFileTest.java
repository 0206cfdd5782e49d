package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void write_replacesTheFileAndLeavesNoDraft() throws IOException {
    Path file = folder.resolve("bench.json");
    AtomicFile.write(file, new byte[] {1, 2});
    AtomicFile.write(file, new byte[] {3});
    assertArrayEquals(new byte[] {3}, Files.readAllBytes(file));
    assertEquals(List.of("bench.json"), names());
  }

  @Test
  void write_ontoALink_replacesTheLinkAndNotItsTarget() throws IOException {
    Path target = Files.write(folder.resolve("target"), new byte[] {9});
    Path link = Files.createSymbolicLink(folder.resolve("link"), target);
    AtomicFile.write(link, new byte[] {1});
    assertFalse(Files.isSymbolicLink(link));
    assertArrayEquals(new byte[] {9}, Files.readAllBytes(target));
  }

  @Test
  void write_ontoAFolder_failsAndLeavesNoDraft() throws IOException {
    Path full = Files.createDirectories(folder.resolve("full"));
    Files.createFile(full.resolve("x"));
    assertThrows(StorageFault.class, () -> AtomicFile.write(full, new byte[] {1}));
    assertEquals(List.of("full"), names());
  }

  @Test
  void write_intoAFolderThatIsGone_saysSo() {
    Path file = folder.resolve("gone").resolve("bench.json");
    StorageFault fault =
        assertThrows(StorageFault.class, () -> AtomicFile.write(file, new byte[] {1}));
    assertEquals(FaultKind.GONE, fault.kind());
    assertTrue(fault.getMessage().startsWith("bench.json was not written:"), fault.getMessage());
  }

  @Test
  void writeNew_ontoAFileThatIsThere_leavesItAlone() throws IOException {
    Path file = Files.write(folder.resolve("x"), new byte[] {9});
    assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.writeNew(file, new byte[] {1}));
    assertArrayEquals(new byte[] {9}, Files.readAllBytes(file));
  }
}
