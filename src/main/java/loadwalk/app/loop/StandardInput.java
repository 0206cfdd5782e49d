package loadwalk.app.loop;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/**
 * Looks after the standard input of this process. Where it was closed, the first file that Java
 * opens takes its place, and the bytes of that would be read as typed lines.
 */
public final class StandardInput {
  private static final Path NAMED = Path.of("/proc/self/fd/0");

  private StandardInput() {}

  /** Puts an input that is at its end in the place of a file of Java's own. */
  public static void guard() {
    if (isJavasOwn()) {
      System.setIn(InputStream.nullInputStream());
    }
  }

  /** A system that does not say what stands there has to be believed. */
  private static boolean isJavasOwn() {
    try {
      Path there = Files.readSymbolicLink(NAMED);
      for (String property : List.of("java.home", "java.class.path")) {
        Path own = Path.of(System.getProperty(property));
        if (Files.exists(own) && there.startsWith(own.toRealPath())) {
          return true;
        }
      }
      return false;
    } catch (IOException | InvalidPathException | UnsupportedOperationException unknown) {
      return false;
    }
  }
}
