package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileStorageTest {
  @TempDir Path folder;
  private Path home;
  private Path file;

  @BeforeEach
  void makeFile() throws IOException {
    home = Files.createDirectories(folder.resolve("home"));
    file = Files.write(home.resolve("a.jsonl"), new byte[] {1, 2, 3});
  }

  private interface Doing {
    void run() throws IOException;
  }

  private static void assertTrouble(FaultKind expected, Doing doing) {
    assertEquals(expected, assertThrows(StorageFault.class, doing::run).kind());
  }

  @Test
  void storage_appendsCutsAndReads() throws IOException {
    try (FileStorage storage = FileStorage.open(file)) {
      storage.append(new byte[] {4, 5});
      storage.truncate(4);
      storage.append(new byte[] {6});
      storage.force();
      assertEquals(5, storage.length());
      assertArrayEquals(new byte[] {1, 2, 3, 4, 6}, storage.readAll());
    }
    assertArrayEquals(new byte[] {1, 2, 3, 4, 6}, FileStorage.read(file));
  }

  @Test
  void append_toAFileThatWasRemoved_saysThatItIsGone() throws IOException {
    try (FileStorage storage = FileStorage.open(file)) {
      Files.delete(file);
      assertTrouble(FaultKind.GONE, () -> storage.append(new byte[] {4}));
      assertTrouble(FaultKind.GONE, storage::force);
      assertTrouble(FaultKind.GONE, storage::length);
    }
  }

  @Test
  void append_afterTheFolderWentAndCameBack_goesOn() throws IOException {
    try (FileStorage storage = FileStorage.open(file)) {
      Path away = Files.move(home, folder.resolve("away"));
      assertTrouble(FaultKind.GONE, () -> storage.append(new byte[] {4}));
      Files.move(away, home);
      storage.append(new byte[] {4});
      storage.force();
      assertArrayEquals(new byte[] {1, 2, 3, 4}, Files.readAllBytes(file));
    }
  }

  @Test
  void append_toAFileThatWasReplaced_touchesNeither() throws IOException {
    try (FileStorage storage = FileStorage.open(file)) {
      Files.move(file, folder.resolve("old"));
      Files.write(file, new byte[] {9});
      assertTrouble(FaultKind.GONE, () -> storage.append(new byte[] {4}));
      assertArrayEquals(new byte[] {9}, Files.readAllBytes(file));
      assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(folder.resolve("old")));
    }
  }

  @Test
  void append_afterAnInterrupt_goesOn() throws IOException {
    try (FileStorage storage = FileStorage.open(file)) {
      Thread.currentThread().interrupt();
      assertThrows(StorageFault.class, () -> storage.append(new byte[] {4}));
      assertEquals(true, Thread.interrupted());
      storage.truncate(3);
      storage.append(new byte[] {5});
      assertArrayEquals(new byte[] {1, 2, 3, 5}, storage.readAll());
    }
  }

  @Test
  void open_ofALinkOrFolder_isRefused() throws IOException {
    Path link = Files.createSymbolicLink(home.resolve("link.jsonl"), file);
    assertTrouble(FaultKind.BROKEN, () -> FileStorage.open(link));
    assertTrouble(FaultKind.BROKEN, () -> FileStorage.read(link));
    assertTrouble(FaultKind.BROKEN, () -> FileStorage.open(home));
    assertTrouble(FaultKind.GONE, () -> FileStorage.open(home.resolve("none.jsonl")));
  }

  @Test
  void read_ofAFileTooLarge_isRefusedUnread() throws IOException {
    Path huge = home.resolve("huge.jsonl");
    try (FileChannel channel =
        FileChannel.open(
            huge,
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.SPARSE,
            StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[1]), FileStorage.BYTES_MAX);
    }
    assertTrouble(FaultKind.BROKEN, () -> FileStorage.read(huge));
  }
}
