package loadwalk.view.state;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;

/**
 * What a new or resumed walk can start from.
 *
 * @param sequences the sequences
 * @param refused a sentence for each sequence file that cannot be read
 * @param amplifiers amplifiers described earlier
 * @param benches benches described earlier
 * @param walks kept walks, newest first
 */
public record Library(
    List<Sequence> sequences,
    List<String> refused,
    List<Amplifier> amplifiers,
    List<Bench> benches,
    List<KeptWalk> walks) {
  /** Copies the lists. */
  public Library {
    sequences = List.copyOf(sequences);
    refused = List.copyOf(refused);
    amplifiers = List.copyOf(amplifiers);
    benches = List.copyOf(benches);
    walks = List.copyOf(walks);
  }

  /** Returns a library before anything was read. */
  static Library empty() {
    return new Library(List.of(), List.of(), List.of(), List.of(), List.of());
  }

  /** Says which files of sequences are not offered: who wrote one looks for it. */
  public String notOffered() {
    if (refused.isEmpty()) {
      return "";
    }
    int more = refused.size() - 1;
    return more == 0
        ? Sentence.of("Not offered: {}. See loadwalk check.", refused.get(0))
        : Sentence.of("Not offered: {}, and {} more. See loadwalk check.", refused.get(0), more);
  }

  /**
   * One kept walk as a list shows it.
   *
   * @param name the walk's name
   * @param amplifier the amplifier's name
   * @param sequence the sequence's name
   * @param standing how far it has come, in words
   * @param isOpen whether steps are left to do
   */
  public record KeptWalk(
      String name, String amplifier, String sequence, String standing, boolean isOpen) {}
}
