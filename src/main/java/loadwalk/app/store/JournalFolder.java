package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
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
import loadwalk.cli.HomeFiles;
import loadwalk.journal.Framing;
import loadwalk.journal.JournalWriter;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Writable;
import loadwalk.journal.Recovery;
import loadwalk.journal.Storage;
import loadwalk.journal.StorageFault;
import loadwalk.journal.Witness;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.UnreadableFact;

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

  /**
   * What is in the folder.
   *
   * @param walks the journals, the last changed first
   * @param leftOut a sentence for each that has the ending of one and is passed over
   */
  public record Listing(List<Listed> walks, List<String> leftOut) {
    /** Copies the lists. */
    public Listing {
      walks = List.copyOf(walks);
      leftOut = List.copyOf(leftOut);
    }
  }

  /**
   * Lists the walks.
   *
   * @throws StorageFault if the folder may hold some and cannot be listed
   */
  public Listing list() throws StorageFault {
    List<Listed> walks = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (Path file : HomeFiles.list(home.root(), "sessions")) {
      if (file.getFileName().toString().endsWith(ENDING)) {
        sort(file, walks, leftOut);
      }
    }
    Collections.sort(walks);
    Collections.sort(leftOut);
    return new Listing(walks, leftOut);
  }

  private static void sort(Path file, List<Listed> walks, List<String> leftOut)
      throws StorageFault {
    String fileName = file.getFileName().toString();
    String shown = Visible.name(fileName);
    String name = WalkName.stem(fileName);
    try {
      BasicFileAttributes attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (attributes.isSymbolicLink()) {
        leftOut.add(Sentence.of("{} is left out: it is a link.", shown));
      } else if (!attributes.isRegularFile()) {
        leftOut.add(Sentence.of("{} is left out: it is no plain file.", shown));
      } else if (WalkName.fault(name).isPresent()) {
        leftOut.add(Sentence.of("{} is left out: no walk can have that name.", shown));
      } else {
        Instant changed = attributes.lastModifiedTime().toInstant();
        walks.add(new Listed(new WalkName(name), attributes.size(), changed));
      }
    } catch (NoSuchFileException goneMeanwhile) {
      return;
    } catch (IOException e) {
      throw DiskFaults.reading(file, e);
    }
  }

  /**
   * Makes a new walk and opens it; its journal appears with its first record in it or not at all.
   *
   * @param firstBody the body of the first record, which names the format
   * @throws IllegalArgumentException if the first body does not; the caller made a mistake
   */
  OpeningOutcome create(WalkName name, String firstBody) {
    byte[] firstLine = Framing.line(1, firstBody);
    Recovered first = Recovery.read(firstLine);
    if (!first.isWhole()) {
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
          // No record can be missing; what another walk of this name left behind is not asked.
          return openHeld(name, file, lock, Witness.of(first.records()));
        },
        () -> new OpeningOutcome.NameTaken(name),
        OpeningOutcome.Refused::new);
  }

  /** Opens a walk for writing or, where that cannot be, for watching. */
  public OpeningOutcome open(WalkName name) {
    Path file = file(name);
    Optional<OpeningOutcome> missing = missing(name);
    if (missing.isPresent()) {
      return missing.get();
    }
    return withLock(
        name,
        lock -> openHeld(name, file, lock, end(name).read()),
        () -> watch(name, "Another Loadwalk has this walk open."),
        why -> watch(name, why));
  }

  /**
   * Writes a walk whole, with one more record, and returns it as it is held from then on.
   *
   * @param place a folder or a file, as typed; blank for where its journal was
   * @throws IOException if it cannot be written there; it is then held as before
   */
  public HeldWalk writeAnew(HeldWalk walk, String place, String lastBody) throws IOException {
    return new WalkAnew(walk, disk).in(JournalPlace.of(place, walk.file()), lastBody);
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
      // The witness first: a record kept in between only makes it say less.
      Witness witness = witness(name);
      return watching(Recovery.read(bytes(name), witness), why);
    } catch (IOException e) {
      return new OpeningOutcome.Refused(DiskFaults.sentence(e));
    }
  }

  /** Reads a walk that nobody waits to watch. */
  OpeningOutcome peek(WalkName name) {
    return missing(name).orElseGet(() -> watch(name, ""));
  }

  /** Returns the bytes of a walk's journal. */
  byte[] bytes(WalkName name) throws StorageFault {
    return FileStorage.read(file(name));
  }

  /** Returns what the file beside a walk's journal says of its end. */
  Witness witness(WalkName name) {
    return end(name).read();
  }

  private WitnessOnDisk end(WalkName name) {
    return new WitnessOnDisk(home.sessions().resolve(name.endFile()));
  }

  /** Returns the name that a journal gives its walk; its own where it cannot be read. */
  String named(WalkName name) {
    try {
      Recovered opening = Recovery.read(FileStorage.firstLine(file(name)));
      return FactText.walk(opening.bodies()).opened().walk();
    } catch (IOException | UnreadableFact unknown) {
      return name.text();
    }
  }

  private Path file(WalkName name) {
    return home.sessions().resolve(name.journalFile());
  }

  /** Says that there is no such walk, where that is so or cannot be found out. */
  private Optional<OpeningOutcome> missing(WalkName name) {
    try {
      return HomeFiles.isFolderThere(home.root(), "sessions") && HomeFiles.isThere(file(name))
          ? Optional.empty()
          : Optional.of(
              new OpeningOutcome.Refused(Sentence.of("There is no walk named {}.", name.text())));
    } catch (StorageFault unknown) {
      return Optional.of(new OpeningOutcome.Refused(unknown.getMessage()));
    }
  }

  static OpeningOutcome watching(Recovered read, String why) {
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

  private OpeningOutcome openHeld(WalkName name, Path file, WalkLock lock, Witness witness)
      throws IOException {
    Storage storage = disk.apply(FileStorage.open(file));
    OpeningOutcome opening = null;
    try {
      opening = openHeld(name, storage, lock, witness);
      return opening;
    } finally {
      if (opening == null || !opening.isHeld()) {
        storage.close();
      }
    }
  }

  private OpeningOutcome openHeld(WalkName name, Storage storage, WalkLock lock, Witness witness)
      throws IOException {
    byte[] bytes = storage.readAll();
    Recovered read = Recovery.read(bytes, witness);
    Optional<Writable> writable = read.writable();
    if (writable.isEmpty()) {
      return watching(read, read.told().orElse(""));
    }
    if (read.records().isEmpty()) {
      return new OpeningOutcome.Watching(
          read, "This walk is empty: it was cut off before its first record.");
    }
    Optional<TornTail> torn = read.torn();
    Optional<String> aside = Optional.empty();
    if (torn.isPresent()) {
      aside = Optional.of(setAside(name, tail(bytes, torn.get())));
    }
    JournalWriter writer = JournalWriter.after(storage, end(name), writable.get());
    writer.settle();
    Path file = home.sessions().resolve(name.journalFile());
    HeldWalk walk = new HeldWalk(file, read.bodies(), writer, lock);
    return new OpeningOutcome.Writing(walk, read, aside);
  }

  private static byte[] tail(byte[] bytes, TornTail torn) {
    return Arrays.copyOfRange(bytes, Math.toIntExact(torn.soundBytes()), bytes.length);
  }

  private String setAside(WalkName name, byte[] torn) throws IOException {
    for (int number = 1; number <= TORN_MAX; number++) {
      Path file = home.sessions().resolve(name.tornFile(number));
      try {
        AtomicFile.writeNew(file, torn);
        return Sentence.of(
            "The bytes that are not used are kept aside in sessions/{}.", file.getFileName());
      } catch (FileAlreadyExistsException taken) {
        continue;
      } catch (IOException e) {
        throw DiskFaults.of(file, e);
      }
    }
    throw StorageFault.broken(
        Sentence.of("{} already has {} torn pieces; move some away.", name.text(), TORN_MAX));
  }
}
