package loadwalk.tui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import loadwalk.Needs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Keys typed while Loadwalk leaves; a pipe stands for the terminal, neither can be skipped over.
 */
class UnreadInputTest {
  @TempDir Path folder;

  @Test
  void keysTypedWhileLeaving_areDroppedWithoutAFault() throws Exception {
    Needs.tool("mkfifo");
    Path pipe = folder.resolve("keys");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    try (RandomAccessFile held = new RandomAccessFile(pipe.toFile(), "rw");
        FileInputStream keys = new FileInputStream(pipe.toFile())) {
      typed(held);
      TtyTerminal.forget(keys);
      assertEquals(0, keys.available());
    }
  }

  private static void typed(RandomAccessFile held) throws IOException {
    held.write("\u001b[21~ and more".getBytes(StandardCharsets.UTF_8));
  }
}
