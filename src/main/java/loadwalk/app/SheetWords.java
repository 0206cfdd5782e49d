package loadwalk.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The words of {@code sheet} in its plain form, {@code sheet [WALK] [--home DIR]}.
 *
 * @param home the data home, where one is named
 * @param walk the walk, where one is named
 */
record SheetWords(Optional<Path> home, Optional<String> walk) {
  /** Takes a command's words apart; empty where the command line must do it. */
  static Optional<SheetWords> of(List<String> words) {
    if (words.isEmpty() || !words.get(0).equals("sheet")) {
      return Optional.empty();
    }
    Optional<Path> home = Optional.empty();
    Optional<String> walk = Optional.empty();
    for (int at = 1; at < words.size(); at++) {
      boolean named =
          words.get(at).equals(CommandWords.HOME) && home.isEmpty() && at + 1 < words.size();
      String word = named ? words.get(++at) : words.get(at);
      // An option, or a file that holds words.
      if (word.isEmpty() || word.startsWith("-") || word.startsWith("@")) {
        return Optional.empty();
      }
      if (named) {
        home = Optional.of(Path.of(word));
      } else if (walk.isEmpty()) {
        walk = Optional.of(word);
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(new SheetWords(home, walk));
  }
}
