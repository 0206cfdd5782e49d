package loadwalk.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.plan.Rules;
import loadwalk.report.page.Picture;

/** The folder of sessions, for commands that report on walks. */
public interface KeptWalks {

  /** Opens the walks of a data home. */
  interface Opener {
    /** Returns its walks; the home is the value of {@code --home}. */
    KeptWalks at(Optional<Path> home);
  }

  /**
   * A journal that is there, unread.
   *
   * @param name the walk
   * @param bytes the size of its journal
   * @param changedMillis when it was last written on, ms since 1970
   */
  record Listed(String name, long bytes, long changedMillis) {}

  /**
   * A journal that was read.
   *
   * @param bodies the bodies of its sound records, in order
   * @param damaged what is wrong with it, where something is
   */
  record Journal(List<String> bodies, Optional<String> damaged) {
    /** Copies the bodies. */
    public Journal {
      bodies = List.copyOf(bodies);
    }
  }

  /** Returns the rules of the data home. */
  Rules rules();

  /** Lists the walks, the last changed first. */
  List<Listed> list() throws IOException;

  /**
   * Reads a walk without holding it.
   *
   * @throws IOException if there is no such walk or it cannot be read; the message is one sentence
   */
  Journal read(String name) throws IOException;

  /**
   * Finds a photo that a walk names; empty where it is not there or not the one that was attached.
   */
  Optional<Picture> photo(String path, String sha256);

  /** Returns the bytes of the ledger's index as kept last; empty where there are none. */
  byte[] ledgerIndex() throws IOException;

  /** Keeps the ledger's index, replacing the one before. */
  void keepLedgerIndex(byte[] bytes) throws IOException;
}
