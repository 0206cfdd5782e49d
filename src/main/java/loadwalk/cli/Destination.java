package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Writes a text where an option says: a file, replaced as a whole, or {@code -} for stdout. */
final class Destination {
  static final String STDOUT = "-";

  private static final byte[] JOURNAL = "{\"seq\":".getBytes(StandardCharsets.UTF_8);

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
    write(Path.of(target), file -> file.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The content of a file. */
  @FunctionalInterface
  interface Content {
    /** Writes all of it; the stream is closed by the caller. */
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes a file as a whole; a device or a pipe is written to as it stands, never replaced.
   *
   * @throws IOException if the file cannot be written; what was there before is then untouched
   */
  static void write(Path named, Content content) throws IOException {
    if (Files.isDirectory(named)) {
      throw new IOException("this is a folder");
    }
    if (Files.exists(named) && !Files.isRegularFile(named)) {
      try (OutputStream out = Files.newOutputStream(named, StandardOpenOption.WRITE)) {
        content.to(out);
      }
      return;
    }
    Path file = Files.exists(named) ? named.toRealPath() : named.toAbsolutePath();
    if (!Files.isDirectory(file.getParent())) {
      throw new IOException(
          Sentence.of("there is no folder {}", Visible.line(file.getParent().toString(), 300)));
    }
    if (holdsWalk(file)) {
      throw new IOException("that file holds a walk");
    }
    try {
      replace(file, content);
    } catch (AccessDeniedException refused) {
      throw new IOException("you have no permission to write in this folder", refused);
    }
  }

  /** Tells whether a file begins as every journal does; nothing may be put in the place of one. */
  private static boolean holdsWalk(Path file) throws IOException {
    if (!Files.exists(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Arrays.equals(JOURNAL, in.readNBytes(JOURNAL.length));
    } catch (AccessDeniedException unreadable) {
      return false;
    }
  }

  /**
   * The draft is made as any new file is: what is written here is for others to read as well. It is
   * forced before it takes the place of what is there, which a power cut would else leave empty.
   */
  private static void replace(Path file, Content content) throws IOException {
    String unique = "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".new";
    Path draft = file.resolveSibling(unique);
    try {
      try (FileChannel channel =
          FileChannel.open(draft, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
        content.to(Channels.newOutputStream(channel));
        channel.force(true);
      }
      move(draft, file);
      Folders.force(file.getParent());
    } finally {
      Files.deleteIfExists(draft);
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
