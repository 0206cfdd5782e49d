package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Finds the walk that a command names: by its name, the start of its name if only one fits, or the
 * path of its journal.
 *
 * <p>The name of a walk is that of its journal's file. Where no file has it, the names count that
 * journals give their walks, so that one which was renamed is found by either.
 */
public final class WalkFinder {
  private static final int NAMED_MOST = 5;

  private final JournalFolder store;

  /** Makes the finder of the walks that a store keeps. */
  public WalkFinder(JournalFolder store) {
    this.store = store;
  }

  /**
   * Finds a walk of the data home.
   *
   * @throws StorageFault with one sentence if there is none, or more than one
   */
  public WalkName find(String typed) throws StorageFault {
    Optional<Path> path = path(typed);
    return path.isPresent() ? ofPath(path.get()) : ofName(typed);
  }

  /** Returns the journal that is named by a path, which may lie anywhere; empty for a name. */
  static Optional<Path> path(String typed) {
    try {
      Path path = Path.of(typed);
      boolean divided = path.getNameCount() > 1 || path.isAbsolute();
      return divided || typed.endsWith(JournalFolder.ENDING) && Files.exists(path)
          ? Optional.of(path.toAbsolutePath())
          : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private WalkName ofPath(Path path) throws StorageFault {
    Path folder = real(path).getParent();
    String file = real(path).getFileName().toString();
    if (!folder.equals(realSessions()) || !file.endsWith(JournalFolder.ENDING)) {
      throw none(
          Sentence.of(
              "{} is no journal in {}. For a walk kept elsewhere name its data home with --home.",
              Visible.line(path.toString(), Visible.SENTENCE),
              Visible.line(store.home().sessions().toString(), Visible.SENTENCE)));
    }
    return checked(WalkName.stem(file));
  }

  private static Path real(Path path) throws StorageFault {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      throw DiskFaults.reading(path, e);
    }
  }

  private Path realSessions() {
    try {
      return store.home().sessions().toRealPath();
    } catch (IOException none) {
      return store.home().sessions();
    }
  }

  private WalkName ofName(String typed) throws StorageFault {
    String name = checked(WalkName.stem(typed)).text();
    List<WalkName> all = store.list().walks().stream().map(JournalFolder.Listed::name).toList();
    Optional<WalkName> found = oneOf(all, name, WalkName::text);
    return found.isPresent()
        ? found.get()
        : oneOf(all, name, store::named)
            .orElseThrow(() -> none(Sentence.of("There is no walk named {}.", name)));
  }

  private interface Naming {
    String of(WalkName walk);
  }

  /** Returns the walk of that name, else the only one whose name begins so. */
  private static Optional<WalkName> oneOf(List<WalkName> all, String name, Naming naming)
      throws StorageFault {
    List<WalkName> whole = fitting(all, walk -> naming.of(walk).equals(name));
    List<WalkName> fits =
        whole.isEmpty() ? fitting(all, walk -> naming.of(walk).startsWith(name)) : whole;
    if (fits.size() > 1) {
      throw none(
          Sentence.of(
              "{} walks are named {} or begin so: {}{}. Name one of them.",
              fits.size(),
              name,
              String.join(", ", fits.stream().limit(NAMED_MOST).map(WalkName::text).toList()),
              fits.size() > NAMED_MOST ? ", …" : ""));
    }
    return fits.stream().findFirst();
  }

  private static List<WalkName> fitting(List<WalkName> all, Predicate<WalkName> fits) {
    return new ArrayList<>(all.stream().filter(fits).toList());
  }

  private static WalkName checked(String name) throws StorageFault {
    Optional<String> fault = WalkName.fault(name);
    if (fault.isPresent()) {
      throw none(fault.get());
    }
    return new WalkName(name);
  }

  private static StorageFault none(String sentence) {
    return new StorageFault(FaultKind.GONE, sentence, null);
  }
}
