package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a text where an option says: a file, replaced as a whole, or {@code -} for stdout. */
final class Destination {
  static final String STDOUT = "-";

  private Destination() {}

  /**
   * Writes a text.
   *
   * @throws IOException if the file cannot be written; what was there before is then untouched
   */
  static void write(String target, String text, PrintWriter out) throws IOException {
    if (target.equals(STDOUT)) {
      out.print(text);
      out.flush();
      return;
    }
    Path file = Path.of(target).toAbsolutePath();
    Path folder = file.getParent();
    if (folder == null || Files.isDirectory(file)) {
      throw new IOException("it is a folder");
    }
    Path fresh = Files.createTempFile(folder, ".loadwalk", ".new");
    try {
      Files.writeString(fresh, text);
      move(fresh, file);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
