package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import loadwalk.cli.Folders;
import loadwalk.journal.JournalWriter;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovery;
import loadwalk.journal.Storage;
import loadwalk.journal.StorageFault;
import loadwalk.journal.WholeJournal;
import loadwalk.text.Sentence;

/**
 * Writes a walk whole, to where its journal was or to another place, from what its holder has in
 * memory. Nothing is replaced but an older state of the same walk.
 *
 * @param walk the walk as it is held
 * @param disk what stands for the disk
 */
record WalkAnew(HeldWalk walk, UnaryOperator<Storage> disk) {

  /**
   * Writes it with one more record and returns it as it is held there; where that fails, it is held
   * as before.
   */
  HeldWalk in(Path file, String lastBody) throws IOException {
    Path folder = file.getParent();
    if (DataHome.around(folder).filter(home -> !home.stays(folder)).isPresent()) {
      throw StorageFault.broken("The folder «sessions» is a link that leads out of the data home.");
    }
    Folders.make(folder);
    WalkName name = name(file);
    WalkLock lock =
        WalkLock.takeInstead(folder.resolve(name.lockFile()), walk.lock())
            .orElseThrow(
                () -> StorageFault.broken("Another Loadwalk has a walk of that name open there."));
    HeldWalk anew = null;
    try {
      anew = held(file, lastBody, lock);
      walk.hand(lock);
      return anew;
    } finally {
      if (anew == null && lock != walk.lock()) {
        lock.close();
      }
    }
  }

  private HeldWalk held(Path file, String lastBody, WalkLock lock) throws IOException {
    boolean isThere = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    if (isThere && !isOlder(FileStorage.read(file))) {
      throw StorageFault.broken(
          Sentence.of(
              "{} is there and is not this walk as it was. It was left; name another place.",
              file.getFileName()));
    }
    List<String> bodies = new ArrayList<>(walk.bodies());
    bodies.add(lastBody);
    byte[] bytes = WholeJournal.of(bodies);
    AtomicFile.write(file, bytes);
    Storage storage = opened(file, isThere);
    WitnessOnDisk end = WitnessOnDisk.beside(file);
    JournalWriter writer =
        JournalWriter.after(storage, end, Recovery.read(bytes).writable().orElseThrow());
    settle(writer);
    return new HeldWalk(file, bodies, writer, lock);
  }

  /** Puts the witness beside it; where that fails, the next record tries again and says so. */
  private static void settle(JournalWriter writer) {
    try {
      writer.settle();
    } catch (IOException later) {
      // All is on the disk already: only what a later record needs is not ready.
    }
  }

  /** A file that was made and cannot be opened is taken away: the walk does not go on there. */
  private Storage opened(Path file, boolean wasThere) throws IOException {
    try {
      return disk.apply(FileStorage.open(file));
    } catch (IOException e) {
      if (!wasThere) {
        Files.deleteIfExists(file);
      }
      throw e;
    }
  }

  /** Tells whether bytes are this walk as it was before: then none of them is lost. */
  private boolean isOlder(byte[] bytes) {
    Recovered there = Recovery.read(bytes);
    List<String> found = there.bodies();
    List<String> ours = walk.bodies();
    return there.isWhole()
        && !found.isEmpty()
        && found.size() <= ours.size()
        && ours.subList(0, found.size()).equals(found);
  }

  private static WalkName name(Path file) {
    return new WalkName(WalkName.stem(file.getFileName().toString()));
  }
}
