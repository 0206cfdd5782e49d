package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import loadwalk.bench.Tables;
import loadwalk.json.Fault;
import loadwalk.json.JsonText;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

/** Finds the files that a plan is made from. */
public final class PlanInput {
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
  private static final int LARGEST_TABLE = 1 << 20;

  private final Path home;

  /** Looks in a data home for the user's own sequences and data tables. */
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
    if (isOwn(own)) {
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

  /**
   * Reads the data tables, the user's own rows before the stock ones.
   *
   * @throws IllegalArgumentException with one sentence if a table is wrong
   */
  public Tables tables() {
    Tables tables = Tables.stock();
    for (String name : Tables.FILE_NAMES) {
      Optional<String> text = table(name);
      if (text.isPresent()) {
        tables = tables.with(name, text.get());
      }
    }
    return tables;
  }

  /** Tells whether the user has a data table of their own. */
  public boolean hasOwnTables() {
    Path folder = home.resolve("data");
    return Files.isDirectory(folder)
        && Tables.FILE_NAMES.stream().map(folder::resolve).anyMatch(this::isOwn);
  }

  /** Tells whether a file is there and no link leads to it from outside the data home. */
  private boolean isOwn(Path file) {
    try {
      return Files.isRegularFile(file) && file.toRealPath().startsWith(home.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  private Optional<String> table(String name) {
    Path file = home.resolve("data").resolve(name);
    if (!isOwn(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_TABLE + 1);
      if (bytes.length > LARGEST_TABLE) {
        throw new IllegalArgumentException(name + ": the table is larger than 1 MiB");
      }
      return Optional.of(new String(bytes, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new IllegalArgumentException(name + ": the table cannot be read", e);
    }
  }

  private static <T> Read<T> unreadable(String file, String sentence) {
    return Read.of(Optional.empty(), List.of(new Fault(file, 1, 1, "", sentence)));
  }
}
