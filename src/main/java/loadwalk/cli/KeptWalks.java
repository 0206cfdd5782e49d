package loadwalk.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.journal.Recovered;
import loadwalk.journal.Soundness;
import loadwalk.plan.Rules;
import loadwalk.report.page.Picture;
import loadwalk.walk.fact.FactText;

/** The folder of sessions, for commands that report on walks. */
public interface KeptWalks {

  /** Opens the walks of a data home. */
  interface Opener {
    /** Returns its walks; the home is the value of {@code --home}. */
    KeptWalks at(Optional<Path> home);
  }

  /**
   * A journal that was read.
   *
   * @param bodies the bodies of its sound records, in order
   * @param read how it was read
   */
  record Journal(List<String> bodies, Recovered read) {
    /** Copies the bodies. */
    public Journal {
      bodies = List.copyOf(bodies);
    }

    /**
     * Returns how far the bodies are all that was kept.
     *
     * @param finished whether every step of the walk read from them is over
     */
    public Soundness soundness(boolean finished) {
      return Soundness.of(read, FactText.isClosed(bodies, finished));
    }
  }

  /**
   * The journals that are there.
   *
   * @param walks the names of those that can be read, the last changed first
   * @param leftOut a sentence for each that is passed over, such as a link
   */
  record Listing(List<String> walks, List<String> leftOut) {
    /** Copies the lists. */
    public Listing {
      walks = List.copyOf(walks);
      leftOut = List.copyOf(leftOut);
    }
  }

  /** The bytes of a journal, not looked into yet. */
  interface Unread {
    /** Returns the bytes. */
    byte[] bytes();

    /** Returns the sum of what is told of the journal's end beside it; empty if nothing is. */
    String end();

    /**
     * Reads them.
     *
     * @throws IOException if they are no journal that this version reads
     */
    Journal read() throws IOException;
  }

  /** Returns the rules of the data home. */
  Rules rules();

  /** Names all that makes a ledger of journals: the program, the own tables and the folder. */
  String maker();

  /**
   * Lists the walks.
   *
   * @throws IOException if there may be some and they cannot be listed
   */
  Listing list() throws IOException;

  /**
   * Takes the bytes of a listed walk.
   *
   * @throws IOException if they cannot be read; the message is one sentence
   */
  Unread bytes(String walk) throws IOException;

  /**
   * Finds the name of a listed walk by that name, the start of it if only one fits, or the path of
   * its journal.
   *
   * @throws IOException if there is none, or more than one; the message is one sentence
   */
  String find(String typed) throws IOException;

  /**
   * Reads a walk without holding it, found as by {@link #find}; a path may lead anywhere.
   *
   * @throws IOException if there is no such walk or it cannot be read; the message is one sentence
   */
  Journal read(String typed) throws IOException;

  /**
   * Finds a photo that a walk names; empty where it is not there or not the one that was attached.
   */
  Optional<Picture> photo(String path, String sha256);

  /** Returns the bytes of the ledger's index as kept last; empty where none can be read. */
  byte[] ledgerIndex();

  /** Keeps the ledger's index, replacing the one before. */
  void keepLedgerIndex(byte[] bytes) throws IOException;
}
