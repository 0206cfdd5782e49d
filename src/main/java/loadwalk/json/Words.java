package loadwalk.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The words a field may hold, each with its meaning.
 *
 * @param strange what the fault says of any other word in a journal, such as "is no reading"
 * @param all the meanings by their words, in order
 * @param word gives the word of a meaning
 * @param <E> the meaning of a word
 */
public record Words<E>(String strange, Map<String, E> all, Function<E, String> word) {
  private static final String LATER = "is a word this version does not know";

  /** Makes the set of words for some meanings. */
  public static <E> Words<E> of(List<E> meanings, Function<E, String> word) {
    return of(meanings, word, LATER);
  }

  /**
   * Makes the set of words for meanings that are written in several ways.
   *
   * @param spellings gives the words of a meaning, the one to write first
   */
  public static <E> Words<E> ofSpellings(List<E> meanings, Function<E, List<String>> spellings) {
    Map<String, E> all = new LinkedHashMap<>();
    for (E meaning : meanings) {
      spellings.apply(meaning).forEach(word -> all.put(word, meaning));
    }
    return new Words<>(LATER, all, meaning -> spellings.apply(meaning).get(0));
  }

  /**
   * Makes the set of words for some meanings, with the fault for any other word.
   *
   * @param meanings the meanings, in order
   * @param word gives the word of a meaning
   * @param strange what the fault says of any other word in a journal
   */
  public static <E> Words<E> of(List<E> meanings, Function<E, String> word, String strange) {
    Map<String, E> all = new LinkedHashMap<>();
    for (E meaning : meanings) {
      all.put(word.apply(meaning), meaning);
    }
    return new Words<>(strange, all, word);
  }
}
