package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import loadwalk.json.Fault;
import loadwalk.json.JsonText;
import loadwalk.json.Read;

/** Reads a file that a command line names; {@code -} is stdin. */
final class InputFile {
  private static final String STDIN = "-";

  private InputFile() {}

  /** A reader of one kind of file. */
  @FunctionalInterface
  interface Reader<T> {
    Read<T> read(byte[] bytes, String file);
  }

  /** Reads a file; one that cannot be read is a fault at its beginning. */
  static <T> Read<T> read(String name, Reader<T> reader) {
    try (InputStream in = opened(name)) {
      return reader.read(in.readNBytes(JsonText.LARGEST + 1), shown(name));
    } catch (NoSuchFileException e) {
      return unreadable(name, "there is no such file");
    } catch (AccessDeniedException e) {
      return unreadable(name, "you have no permission to read this file");
    } catch (NoPlainFile e) {
      return unreadable(name, e.getMessage());
    } catch (IOException | InvalidPathException e) {
      return unreadable(name, "the file cannot be read");
    }
  }

  /**
   * Opens a file.
   *
   * @throws NoPlainFile if it is something that could keep a reader waiting without end
   */
  static InputStream opened(String name) throws IOException {
    if (!name.equals(STDIN)) {
      requirePlain(Path.of(name));
    }
    return name.equals(STDIN) ? System.in : Files.newInputStream(Path.of(name));
  }

  /** A pipe or a device might never begin, or never end. */
  private static void requirePlain(Path file) throws NoPlainFile {
    if (Files.isDirectory(file)) {
      throw new NoPlainFile("this is a folder; a file is needed");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new NoPlainFile("this is a pipe or a device; a plain file is needed, or - for stdin");
    }
  }

  /** What is named is no plain file; the message says what it is, in a clause. */
  static final class NoPlainFile extends IOException {
    private static final long serialVersionUID = 1L;

    NoPlainFile(String clause) {
      super(clause);
    }
  }

  /** Returns the name that complaints about the file use. */
  static String shown(String name) {
    return name.equals(STDIN) ? "stdin" : name;
  }

  /** Tells whether there is such a file. */
  static boolean isThere(String name) {
    return name.equals(STDIN) || is(name, Files::exists);
  }

  private static boolean is(String name, Predicate<Path> asked) {
    try {
      return asked.test(Path.of(name));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static <T> Read<T> unreadable(String file, String sentence) {
    return new Read.Bad<>(List.of(new Fault(file, 1, 1, "", sentence)));
  }
}
