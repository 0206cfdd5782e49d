package loadwalk.app.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.journal.JournalWriter;
import loadwalk.journal.KeepResult;
import loadwalk.text.Sentence;

/**
 * A walk that this process holds and writes on; for use by one thread. It has every record in
 * memory, so that the walk outlives its file.
 */
public final class HeldWalk implements Closeable {
  private final Path file;
  private final List<String> bodies;
  private final JournalWriter writer;
  private final WalkLock lock;

  HeldWalk(Path file, List<String> bodies, JournalWriter writer, WalkLock lock) {
    this.file = file;
    this.bodies = new ArrayList<>(bodies);
    this.writer = writer;
    this.lock = lock;
  }

  /** Returns the number of the record that is due. */
  public long due() {
    return writer.lastSeq() + 1;
  }

  /** Returns the journal's file. */
  public Path file() {
    return file;
  }

  /** Returns the data home that the journal is in; empty where it is a file by itself. */
  public Optional<DataHome> home() {
    return DataHome.around(file.getParent());
  }

  /**
   * Says where the walk goes on, now that it was written anew, and how to find it later.
   *
   * @param photos how many photos belong to it
   */
  public String goesOn(DataHome usual, int photos) {
    Optional<String> elsewhere = elsewhere(usual);
    List<String> told = new ArrayList<>();
    if (elsewhere.isPresent() && photos > 0) {
      told.add(
          Sentence.plural(
              photos,
              "Copy its photo along from where it was.",
              "Copy its {} photos along from where they were."));
    }
    told.add(
        Sentence.of(
            "The whole walk is written anew in {} and goes on there.", JournalPlace.shown(file)));
    elsewhere.ifPresent(told::add);
    return String.join(" ", told);
  }

  /** Says how to find the walk later; empty where it is in the data home that is looked at. */
  public Optional<String> elsewhere(DataHome usual) {
    if (home().equals(Optional.of(usual))) {
      return Optional.empty();
    }
    return Optional.of(
        home()
            .map(
                home ->
                    Sentence.of(
                        "To resume this walk, name its data home: --home {}",
                        JournalPlace.shown(home.root())))
            .orElseGet(
                () ->
                    Sentence.of(
                        "To resume this walk, put {} into the folder sessions of a data home.",
                        JournalPlace.shown(file))));
  }

  /** Returns the bodies of the records that count, in order. */
  List<String> bodies() {
    return List.copyOf(bodies);
  }

  WalkLock lock() {
    return lock;
  }

  /** Adds a record; it counts only when the answer says that it is kept. */
  public KeepResult append(String body) {
    KeepResult result = writer.append(body);
    if (result.failure().isEmpty()) {
      bodies.add(body);
    }
    return result;
  }

  /** Lets the file go, as the walk goes on in another one under this lock or another. */
  void hand(WalkLock next) {
    try {
      writer.close();
      if (next != lock) {
        lock.close();
      }
    } catch (IOException gone) {
      // It is no longer written on; the walk is whole where it goes on.
    }
  }

  /** Lets the walk go; everything kept is on the disk already. */
  @Override
  public void close() throws IOException {
    try {
      writer.close();
    } finally {
      lock.close();
    }
  }
}
