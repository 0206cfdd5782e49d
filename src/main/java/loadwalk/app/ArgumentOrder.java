package loadwalk.app;

import java.util.ArrayList;
import java.util.List;

/** Puts the words of a command line in order, its command first. */
final class ArgumentOrder {
  static final String HOME = "--home";
  private static final List<String> FLAGS = List.of("--plain", AsciiWanted.OPTION);

  private ArgumentOrder() {}

  /**
   * Moves options given ahead of a command behind its name, where the command takes or refuses
   * them; words without a command stay as they are.
   */
  static List<String> commandFirst(List<String> words, List<String> commands) {
    int at = 0;
    while (at < words.size() && isOption(words.get(at))) {
      at += words.get(at).equals(HOME) ? 2 : 1;
    }
    if (at == 0 || at >= words.size() || !commands.contains(words.get(at))) {
      return words;
    }
    List<String> ordered = new ArrayList<>(List.of(words.get(at)));
    ordered.addAll(words.subList(0, at));
    ordered.addAll(words.subList(at + 1, words.size()));
    return ordered;
  }

  private static boolean isOption(String word) {
    return word.equals(HOME) || word.startsWith(HOME + "=") || FLAGS.contains(word);
  }
}
