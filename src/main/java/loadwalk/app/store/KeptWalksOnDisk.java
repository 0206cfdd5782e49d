package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.TreeMap;
import loadwalk.cli.Folders;
import loadwalk.cli.KeptWalks;
import loadwalk.cli.OwnTables;
import loadwalk.journal.ByteSum;
import loadwalk.journal.FaultKind;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovery;
import loadwalk.journal.StorageFault;
import loadwalk.journal.Witness;
import loadwalk.plan.Rules;
import loadwalk.report.page.Picture;

/** Hands walks to the commands that report on them, without holding any. */
public final class KeptWalksOnDisk implements KeptWalks {
  /**
   * The ledger's index is hidden and not under version control: it can be made anew at any time.
   */
  static final String INDEX = ".ledger-index";

  private final DataHome home;
  private final Rules rules;
  private final JournalFolder store;

  /** Makes the kept walks of a data home, judged by its rules. */
  public KeptWalksOnDisk(DataHome home, Rules rules) {
    this.home = home;
    this.rules = rules;
    this.store = new JournalFolder(home);
  }

  /** Returns the walks kept in a data home. */
  public static KeptWalks at(Optional<Path> home) {
    return of(DataHome.choose(DataHome.Surroundings.ofThisProcess(home)));
  }

  /** Returns the walks kept in a data home.by its own rules. */
  static KeptWalksOnDisk of(DataHome home) {
    return new KeptWalksOnDisk(home, OwnTables.rules(home.root()));
  }

  @Override
  public Rules rules() {
    return rules;
  }

  /** Nobody elsewhere can have made an index for this folder: he would not know its number. */
  @Override
  public String maker() {
    StringBuilder tables = new StringBuilder();
    new TreeMap<>(rules.ownTables())
        .forEach((name, text) -> tables.append(name).append(':').append(text));
    return String.join(
        " ",
        ProgramSum.ofThisProgram(),
        ByteSum.of(tables.toString().getBytes(UTF_8)),
        String.valueOf(folderKey()));
  }

  private Object folderKey() {
    try {
      return Files.readAttributes(home.sessions(), BasicFileAttributes.class).fileKey();
    } catch (IOException none) {
      return "none";
    }
  }

  @Override
  public Listing list() throws IOException {
    JournalFolder.Listing there = store.list();
    return new Listing(
        there.walks().stream().map(listed -> listed.name().text()).toList(), there.leftOut());
  }

  @Override
  public Unread bytes(String walk) throws IOException {
    WalkName name = new WalkName(walk);
    Witness witness = store.witness(name);
    byte[] bytes = store.bytes(name);
    return new Unread() {
      @Override
      public byte[] bytes() {
        return bytes;
      }

      @Override
      public String end() {
        return ByteSum.of(witness.toString().getBytes(UTF_8));
      }

      @Override
      public Journal read() throws IOException {
        return journal(JournalFolder.watching(Recovery.read(bytes, witness), ""));
      }
    };
  }

  @Override
  public String find(String typed) throws IOException {
    return new WalkFinder(store).find(typed).text();
  }

  @Override
  public Journal read(String typed) throws IOException {
    Optional<Path> path = WalkFinder.path(typed);
    return journal(
        path.isPresent() ? at(path.get()) : store.peek(new WalkFinder(store).find(typed)));
  }

  /** Reads a journal that lies anywhere. */
  private static OpeningOutcome at(Path journal) throws IOException {
    Witness witness = WitnessOnDisk.beside(journal).read();
    return JournalFolder.watching(Recovery.read(FileStorage.readAt(journal), witness), "");
  }

  private static Journal journal(OpeningOutcome opening) throws StorageFault {
    Optional<String> refusal = opening.refusal();
    if (refusal.isPresent()) {
      throw new StorageFault(FaultKind.GONE, refusal.get(), null);
    }
    Recovered read = opening.journal().orElseThrow();
    return new Journal(read.bodies(), read);
  }

  @Override
  public Optional<Picture> photo(String path, String sha256) {
    return new PhotoBox(home).find(path, sha256);
  }

  @Override
  public byte[] ledgerIndex() {
    Path file = home.sessions().resolve(INDEX);
    try {
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
              && Files.size(file) <= FileStorage.BYTES_MAX
          ? Files.readAllBytes(file)
          : new byte[0];
    } catch (IOException unreadable) {
      // Whatever it held is made anew.
      return new byte[0];
    }
  }

  @Override
  public void keepLedgerIndex(byte[] bytes) throws IOException {
    Folders.make(home.sessions());
    AtomicFile.write(home.sessions().resolve(INDEX), bytes);
  }
}
