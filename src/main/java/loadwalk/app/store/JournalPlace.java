package loadwalk.app.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Finds the file that is meant where somebody types to which place a walk is to be written. */
final class JournalPlace {
  private static final String SESSIONS = "sessions";
  private static final String USER = "~/";

  private JournalPlace() {}

  /**
   * Returns the file of a journal: the one named, or in the data home that a folder is.
   *
   * @param typed a folder that is there or a file that ends in .jsonl; blank for where it is now
   * @param now the journal's file so far
   */
  static Path of(String typed, Path now) throws StorageFault {
    if (typed.isBlank()) {
      return now;
    }
    Path named = path(typed);
    if (Files.isDirectory(named)) {
      boolean isSessions = named.endsWith(SESSIONS);
      return (isSessions ? named : named.resolve(SESSIONS)).resolve(now.getFileName());
    }
    String name = named.getFileName() == null ? "" : named.getFileName().toString();
    if (!name.endsWith(JournalFolder.ENDING)) {
      throw StorageFault.broken(
          Sentence.of(
              "There is no folder {}. Name one that is there, or a file that ends in {}.",
              shown(named),
              JournalFolder.ENDING));
    }
    Optional<String> wrong = WalkName.fault(WalkName.stem(name));
    if (wrong.isPresent()) {
      throw StorageFault.broken(wrong.get());
    }
    if (!Files.isDirectory(named.getParent())) {
      throw StorageFault.broken(Sentence.of("There is no folder {}.", shown(named.getParent())));
    }
    return named;
  }

  private static Path path(String typed) throws StorageFault {
    String whole =
        typed.startsWith(USER)
            ? System.getProperty("user.home", "") + typed.substring(USER.length() - 1)
            : typed;
    try {
      return Path.of(whole).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw StorageFault.broken("This computer cannot use that path.");
    }
  }

  static String shown(Path path) {
    return Visible.line(path.toString(), Visible.SENTENCE);
  }
}
