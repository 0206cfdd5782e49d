package loadwalk.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loadwalk.text.Sentence;

/** Names each resistor of a stock, so that one can be taken from the shelf and is not another. */
public final class ResistorNames {
  private static final int LETTERS = 26;

  private final Map<String, Integer> sizes = new HashMap<>();
  private final Map<String, Integer> next = new HashMap<>();
  private final Set<String> alone = new HashSet<>();

  private ResistorNames(List<LoadResistor> stock) {
    stock.forEach(kind -> sizes.merge(kind.label(), kind.count(), Integer::sum));
    stock.stream().filter(this::isAlone).forEach(kind -> alone.add(kind.label()));
  }

  /**
   * Returns the names of a stock, one list for each kind: its label where it is the only one of it,
   * else the label and a letter: "4R-a", "4R-b", after z "4R-aa". The same stock always gets the
   * same names, and no two resistors the same one.
   */
  public static List<List<String>> of(List<LoadResistor> stock) {
    ResistorNames names = new ResistorNames(stock);
    return stock.stream().map(names::of).toList();
  }

  private boolean isAlone(LoadResistor kind) {
    return sizes.get(kind.label()) == 1
        && !kind.label().equals(LoadResistor.valueName(kind.ohms()));
  }

  private List<String> of(LoadResistor kind) {
    if (isAlone(kind)) {
      return List.of(kind.label());
    }
    List<String> names = new ArrayList<>();
    while (names.size() < kind.count()) {
      int index = next.merge(kind.label(), 1, Integer::sum) - 1;
      String name = Sentence.of("{}-{}", kind.label(), letters(index));
      if (!alone.contains(name)) {
        names.add(name);
      }
    }
    return names;
  }

  private static String letters(int index) {
    String last = String.valueOf((char) ('a' + index % LETTERS));
    return index < LETTERS ? last : letters(index / LETTERS - 1) + last;
  }
}
