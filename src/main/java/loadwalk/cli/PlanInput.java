package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import loadwalk.json.Fault;
import loadwalk.json.JsonText;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

/** Finds the files that a plan is made from. */
public final class PlanInput {
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");

  private final Path home;

  /** Looks in a data home for the user's own sequences. */
  public PlanInput(Path home) {
    this.home = home;
  }

  /** A reader of one kind of file. */
  @FunctionalInterface
  interface Reader<T> {
    Read<T> read(byte[] bytes, String file);
  }

  /** Reads a file, or stdin where its name is a hyphen. */
  <T> Read<T> file(String name, Reader<T> reader) {
    try (InputStream in = name.equals("-") ? System.in : Files.newInputStream(Path.of(name))) {
      return reader.read(in.readNBytes(JsonText.LARGEST + 1), name.equals("-") ? "stdin" : name);
    } catch (NoSuchFileException e) {
      return unreadable(name, "there is no such file");
    } catch (AccessDeniedException e) {
      return unreadable(name, "the file may not be read");
    } catch (IOException | InvalidPathException e) {
      return unreadable(name, "the file cannot be read");
    }
  }

  /** Reads a sequence by its name, the user's own before the stock one, or by its file. */
  Read<Sequence> sequence(String nameOrFile) {
    if (!NAME.matcher(nameOrFile).matches()) {
      return file(nameOrFile, SequenceReader::read);
    }
    Path own = home.resolve("sequences").resolve(nameOrFile + ".json");
    if (OwnTables.isOwn(home, own)) {
      return file(
          own.toString(), (bytes, file) -> SequenceReader.readNamed(bytes, file, nameOrFile));
    }
    String path = "/loadwalk/sequences/" + nameOrFile + ".json";
    try (InputStream in = PlanInput.class.getResourceAsStream(path)) {
      return in == null
          ? unreadable(nameOrFile, "there is no sequence of this name")
          : SequenceReader.read(in.readAllBytes(), nameOrFile + ".json");
    } catch (IOException e) {
      return unreadable(nameOrFile, "the file cannot be read");
    }
  }

  private static <T> Read<T> unreadable(String file, String sentence) {
    return Read.of(Optional.empty(), List.of(new Fault(file, 1, 1, "", sentence)));
  }
}
