package loadwalk.json;

import java.util.Collection;
import java.util.Locale;

/** Finds the known word nearest to an unknown one. */
public final class Nearest {
  private static final int LONGEST = 64;

  private Nearest() {}

  /**
   * Returns the nearest candidate, the first if several are equally near, or "" if there are none.
   */
  public static String of(String word, Collection<String> candidates) {
    String best = "";
    int least = Integer.MAX_VALUE;
    for (String candidate : candidates) {
      int distance = distance(folded(word), folded(candidate));
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return best;
  }

  private static String folded(String word) {
    return word.substring(0, Math.min(word.length(), LONGEST)).toLowerCase(Locale.ROOT);
  }

  /**
   * Counts the insertions, deletions, replacements and swaps of adjacent letters between two words:
   * the restricted Damerau-Levenshtein distance.
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int least = Math.min(replace, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
