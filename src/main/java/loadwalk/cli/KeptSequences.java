package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** The sequences and rules of a data home, for commands that take no walk. */
public interface KeptSequences {

  /** Returns the version of Loadwalk. */
  String version();

  /**
   * Returns the rules of a data home: its own tables before the stock ones.
   *
   * @throws BadInput with one sentence if a table is wrong
   */
  Rules rules(Optional<Path> home);

  /** Finds a sequence by name, the user's own before a stock one; empty where there is none. */
  Optional<Read<Sequence>> named(Optional<Path> home, String name);

  /**
   * Finds a sequence by name, or by its file where there is none of that name; - is stdin.
   *
   * @throws BadInput with one sentence if there is neither
   */
  default Read<Sequence> sequence(Optional<Path> home, String nameOrFile) {
    Optional<Read<Sequence>> named = named(home, nameOrFile);
    if (named.isEmpty() && !InputFile.isThere(nameOrFile)) {
      throw new BadInput(
          Sentence.of(
              "There is no sequence named {}, and no such file.", Visible.name(nameOrFile)));
    }
    return named.orElseGet(() -> InputFile.read(nameOrFile, SequenceReader::read));
  }
}
