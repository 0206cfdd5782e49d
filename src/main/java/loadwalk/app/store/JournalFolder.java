package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import loadwalk.cli.Folders;
import loadwalk.journal.FaultKind;
import loadwalk.journal.Framing;
import loadwalk.journal.JournalWriter;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Writable;
import loadwalk.journal.Recovery;
import loadwalk.journal.Storage;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;

/** Finds, makes and opens the journals in the folder {@code sessions} of a data home. */
public final class JournalFolder {
  static final String ENDING = ".jsonl";

  private static final int TORN_MAX = 1000;
  private static final OpeningOutcome OUTSIDE =
      new OpeningOutcome.Refused(
          "The folder «sessions» is a link that leads out of the data home.");

  private final DataHome home;
  private final UnaryOperator<Storage> disk;

  /** Opens the store of a data home. */
  public JournalFolder(DataHome home) {
    this(home, UnaryOperator.identity());
  }

  /** Opens a store whose journals are written through what stands for the disk. */
  JournalFolder(DataHome home, UnaryOperator<Storage> disk) {
    this.home = home;
    this.disk = disk;
  }

  /** Returns the data home the walks are in. */
  DataHome home() {
    return home;
  }

  /**
   * A journal that is there, unread.
   *
   * @param name the walk
   * @param bytes the size of its journal
   * @param changed when the journal was last written on
   */
  public record Listed(WalkName name, long bytes, Instant changed) implements Comparable<Listed> {
    /** Sets the one changed last first. */
    @Override
    public int compareTo(Listed other) {
      int later = other.changed.compareTo(changed);
      return later != 0 ? later : name.text().compareTo(other.name.text());
    }
  }

  /** Lists the walks, the last changed first; links and files of other names are passed over. */
  public List<Listed> list() throws IOException {
    List<Listed> walks = new ArrayList<>();
    if (!Files.isDirectory(home.sessions()) || !home.stays(home.sessions())) {
      return walks;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(home.sessions())) {
      for (Path file : files) {
        Optional<Listed> walk = listed(file);
        if (walk.isPresent()) {
          walks.add(walk.get());
        }
      }
    }
    Collections.sort(walks);
    return walks;
  }

  private static Optional<Listed> listed(Path file) throws IOException {
    String fileName = file.getFileName().toString();
    if (!fileName.endsWith(ENDING)) {
      return Optional.empty();
    }
    String name = fileName.substring(0, fileName.length() - ENDING.length());
    BasicFileAttributes attributes =
        Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    if (WalkName.fault(name).isPresent() || !attributes.isRegularFile()) {
      return Optional.empty();
    }
    Instant changed = attributes.lastModifiedTime().toInstant();
    return Optional.of(new Listed(new WalkName(name), attributes.size(), changed));
  }

  /**
   * Makes a new walk and opens it; its journal appears with its first record in it or not at all.
   *
   * @param firstBody the body of the first record, which names the format
   * @throws IllegalArgumentException if the first body does not; the caller made a mistake
   */
  OpeningOutcome create(WalkName name, String firstBody) {
    byte[] firstLine = Framing.line(1, firstBody);
    if (!Recovery.read(firstLine).isWhole()) {
      throw new IllegalArgumentException("the first body does not name the format");
    }
    Path file = home.sessions().resolve(name.journalFile());
    return withLock(
        name,
        lock -> {
          if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new OpeningOutcome.NameTaken(name);
          }
          AtomicFile.write(file, firstLine);
          return openHeld(name, file, lock);
        },
        () -> new OpeningOutcome.NameTaken(name),
        OpeningOutcome.Refused::new);
  }

  /** Opens a walk for writing or, where that cannot be, for watching. */
  public OpeningOutcome open(WalkName name) {
    Path file = home.sessions().resolve(name.journalFile());
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return missing(name);
    }
    return withLock(
        name,
        lock -> openHeld(name, file, lock),
        () -> watch(name, "Another Loadwalk has this walk open."),
        why -> watch(name, why));
  }

  /**
   * Opens a walk for watching, whoever holds it.
   *
   * @param why one sentence that says why it is only watched
   */
  OpeningOutcome watch(WalkName name, String why) {
    if (!home.stays(home.sessions())) {
      return OUTSIDE;
    }
    try {
      Path file = home.sessions().resolve(name.journalFile());
      return watching(Recovery.read(FileStorage.read(file)), why);
    } catch (IOException e) {
      return new OpeningOutcome.Refused(DiskFaults.sentence(e));
    }
  }

  /** Reads a walk that nobody waits to watch. */
  OpeningOutcome peek(WalkName name) {
    return Files.exists(home.sessions().resolve(name.journalFile()), LinkOption.NOFOLLOW_LINKS)
        ? watch(name, "")
        : missing(name);
  }

  private static OpeningOutcome missing(WalkName name) {
    return new OpeningOutcome.Refused(Sentence.of("There is no walk named {}.", name.text()));
  }

  private static OpeningOutcome watching(Recovered read, String why) {
    Optional<String> refusal = read.refusal();
    return refusal.isPresent()
        ? new OpeningOutcome.Refused(refusal.get())
        : new OpeningOutcome.Watching(read, why);
  }

  private interface Act {
    OpeningOutcome with(WalkLock lock) throws IOException;
  }

  private OpeningOutcome withLock(
      WalkName name,
      Act act,
      Supplier<OpeningOutcome> heldElsewhere,
      Function<String, OpeningOutcome> otherwise) {
    if (!home.stays(home.sessions())) {
      return OUTSIDE;
    }
    try {
      Folders.make(home.sessions());
      Optional<WalkLock> lock = WalkLock.take(home.sessions().resolve(name.lockFile()));
      return lock.isPresent() ? actHolding(lock.get(), act) : heldElsewhere.get();
    } catch (IOException e) {
      return otherwise.apply(DiskFaults.sentence(e));
    }
  }

  private static OpeningOutcome actHolding(WalkLock lock, Act act) throws IOException {
    OpeningOutcome opening = null;
    try {
      opening = act.with(lock);
      return opening;
    } finally {
      if (opening == null || !opening.isHeld()) {
        lock.close();
      }
    }
  }

  private OpeningOutcome openHeld(WalkName name, Path file, WalkLock lock) throws IOException {
    Storage storage = disk.apply(FileStorage.open(file));
    OpeningOutcome opening = null;
    try {
      opening = openHeld(name, storage, lock);
      return opening;
    } finally {
      if (opening == null || !opening.isHeld()) {
        storage.close();
      }
    }
  }

  private OpeningOutcome openHeld(WalkName name, Storage storage, WalkLock lock)
      throws IOException {
    byte[] bytes = storage.readAll();
    Recovered read = Recovery.read(bytes);
    Optional<Writable> writable = read.writable();
    if (writable.isEmpty()) {
      return watching(read, read.told().orElse(""));
    }
    if (read.records().isEmpty()) {
      return new OpeningOutcome.Watching(
          read, "This walk is empty: it was cut off before its first record.");
    }
    Optional<String> told = read.told();
    Optional<TornTail> torn = read.torn();
    if (torn.isPresent()) {
      String aside = setAside(name, tail(bytes, torn.get()));
      told = Optional.of(Sentence.of("{} They are kept aside in {}.", torn.get().why(), aside));
    }
    JournalWriter writer = JournalWriter.after(storage, writable.get());
    writer.settle();
    return new OpeningOutcome.Writing(new HeldWalk(writer, lock), read, told);
  }

  private static byte[] tail(byte[] bytes, TornTail torn) {
    return Arrays.copyOfRange(bytes, Math.toIntExact(torn.soundBytes()), bytes.length);
  }

  private String setAside(WalkName name, byte[] torn) throws IOException {
    for (int number = 1; number <= TORN_MAX; number++) {
      Path file = home.sessions().resolve(name.tornFile(number));
      try {
        AtomicFile.writeNew(file, torn);
        return "sessions/" + file.getFileName();
      } catch (FileAlreadyExistsException taken) {
        continue;
      } catch (IOException e) {
        throw DiskFaults.of(file, e);
      }
    }
    throw new StorageFault(
        FaultKind.BROKEN,
        Sentence.of("{} already has {} torn pieces; move some away.", name.text(), TORN_MAX),
        null);
  }
}
