package loadwalk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.walk.Stamped;

/** What is kept in a data home, as commands that walk nothing need it. */
public interface Shelves {

  /** Returns the version of Loadwalk. */
  String version();

  /** Finds a sequence by name; empty where there is none. */
  Optional<Read<Sequence>> sequence(Optional<Path> home, String name);

  /** Reads the journal of a walk. */
  Journal journal(Optional<Path> home, String walk);

  /**
   * A walk's journal as far as it can be read.
   *
   * @param records the facts of each record, oldest first; empty where nothing can be read
   * @param trouble what is wrong, one sentence; empty where nothing is
   * @param damaged whether the journal is there but damaged
   */
  record Journal(List<List<Stamped>> records, Optional<String> trouble, boolean damaged) {
    /** Copies the records. */
    public Journal {
      records = List.copyOf(records);
    }
  }
}
