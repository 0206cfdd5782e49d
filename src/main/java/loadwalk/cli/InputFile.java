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
    } catch (IOException | InvalidPathException e) {
      String folder = "this is a folder; a file is needed";
      return unreadable(name, is(name, Files::isDirectory) ? folder : "the file cannot be read");
    }
  }

  /** Opens a file. */
  static InputStream opened(String name) throws IOException {
    return name.equals(STDIN) ? System.in : Files.newInputStream(Path.of(name));
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
