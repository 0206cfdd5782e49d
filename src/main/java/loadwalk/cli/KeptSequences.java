package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.sequence.Sequence;

/** What is kept in a data home, as commands that walk nothing need it. */
public interface KeptSequences {

  /** Returns the version of Loadwalk. */
  String version();

  /**
   * Returns the rules of a data home: its own tables before the stock ones.
   *
   * @throws BadInput with one sentence if a table is wrong
   */
  Rules rules(Optional<Path> home);

  /** Finds a sequence by name; empty where there is none. */
  Optional<Read<Sequence>> sequence(Optional<Path> home, String name);
}
