package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each resistor of a stock has a name of its own. */
class ResistorNamesTest {
  private static final long SEED = 4_2026;

  private static LoadResistor kind(String label, double ohms, int count) {
    return new LoadResistor(label, ohms, 5, 100, count, OptionalDouble.empty());
  }

  private static LoadResistor unnamed(double ohms, int count) {
    return kind(LoadResistor.valueName(ohms), ohms, count);
  }

  /** The values as IEC 60062 writes them on a part. */
  @ParameterizedTest
  @CsvSource({
    "4, 4R",
    "0.5, 0R5",
    "2.2, 2R2",
    "1000, 1k",
    "4700, 4k7",
    "0.47, 0R47",
    "10, 10R",
    "0.001, 0R001",
    "4.0396, 4R04",
    "999.9, 1k",
    "1000000, 1M",
    "0.6666667, 0R667"
  })
  void value_isWrittenAsOnAPart(double ohms, String name) {
    assertEquals(name, LoadResistor.valueName(ohms));
  }

  @Test
  void names_areLabelsAndLetters() {
    assertEquals(
        List.of(
            List.of("4R-a", "4R-b"),
            List.of("0R5-a"),
            List.of("bank-a", "bank-b"),
            List.of("dummy"),
            List.of("4R-c")),
        ResistorNames.of(
            List.of(
                unnamed(4, 2),
                unnamed(0.5, 1),
                kind("bank", 2, 2),
                kind("dummy", 1, 1),
                unnamed(4, 1))));
  }

  @Test
  void names_afterZ_haveTwoLetters_andPassOverALabelThatIsOne() {
    List<List<String>> names = ResistorNames.of(List.of(unnamed(4, 703), kind("4R-b", 8, 1)));
    assertEquals(List.of("4R-a", "4R-c", "4R-d"), names.get(0).subList(0, 3));
    assertEquals(List.of("4R-z", "4R-aa", "4R-ab"), names.get(0).subList(24, 27));
    assertEquals(List.of("4R-zz", "4R-aaa", "4R-aab"), names.get(0).subList(700, 703));
  }

  @Test
  void names_ofAnyStock_areAllDifferent_andAlwaysTheSame() {
    Random random = new Random(SEED);
    String[] labels = {"bank", "bank-a", "4R", "4R-a", "4R-a-a", "a", "Ω"};
    double[] values = {4, 4.0001, 0.5, 2.2, 1000};
    for (int trial = 0; trial < 3000; trial++) {
      List<LoadResistor> stock = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(7); i++) {
        double ohms = values[random.nextInt(values.length)];
        int count = 1 + random.nextInt(random.nextInt(9) == 0 ? 60 : 3);
        stock.add(
            random.nextBoolean()
                ? unnamed(ohms, count)
                : kind(labels[random.nextInt(labels.length)], ohms, count));
      }
      List<List<String>> names = ResistorNames.of(stock);
      assertEquals(names, ResistorNames.of(List.copyOf(stock)));
      HashSet<String> seen = new HashSet<>();
      for (int i = 0; i < stock.size(); i++) {
        assertEquals(stock.get(i).count(), names.get(i).size());
        for (String name : names.get(i)) {
          assertTrue(seen.add(name), "seed " + SEED + ", trial " + trial + ": " + name + stock);
        }
      }
    }
  }
}
