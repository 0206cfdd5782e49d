package loadwalk.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The words a field may hold, each with what it stands for.
 *
 * @param strange what is said of any other word in a journal, such as "is no reading"
 * @param all the meanings by their words, in order
 * @param word tells the word of a meaning
 * @param <E> what a word stands for
 */
public record Words<E>(String strange, Map<String, E> all, Function<E, String> word) {
  private static final String LATER = "is a word this version does not know";

  /** Makes the words of meanings. */
  public static <E> Words<E> of(List<E> meanings, Function<E, String> word) {
    return of(meanings, word, LATER);
  }

  /**
   * Makes the words of meanings, and says what is said of any other.
   *
   * @param meanings what can be meant, in order
   * @param word tells the word of a meaning
   * @param strange what is said of any other word in a journal
   */
  public static <E> Words<E> of(List<E> meanings, Function<E, String> word, String strange) {
    Map<String, E> all = new LinkedHashMap<>();
    for (E meaning : meanings) {
      all.put(word.apply(meaning), meaning);
    }
    return new Words<>(strange, all, word);
  }
}
