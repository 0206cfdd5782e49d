package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Hold;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mount;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.ResistorNames;
import loadwalk.bench.Tables;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds the search against brute force over all series-parallel networks. */
class WiringSearchTest {
  private static final double[] VALUES = {0.47, 1, 1.5, 2, 2.2, 3.3, 4, 8, 8.2, 10};
  private static final double[] WATTS = {25, 50, 100, 200};
  private static final int ROUNDS = Integer.getInteger("wiring.rounds", 25);

  /** What is borne in these tests: three quarters of a rating, or for a reading as mounted. */
  private static final ToDoubleFunction<LoadResistor> SHARE = Parts.share(0.75);

  private static final ResistorDerating DERATING = new ResistorDerating(Tables.stock());
  private static final ToDoubleFunction<LoadResistor> AS_MOUNTED =
      kind -> DERATING.mostWatts(kind, new Hold(60));

  static LoadResistor kind(double ohms, double watts, int count) {
    return new LoadResistor(
        ohms + " ohm " + watts + " W", ohms, 5, watts, count, OptionalDouble.empty());
  }

  private static List<LoadResistor> randomStock(Random random, int total) {
    List<LoadResistor> stock = new ArrayList<>();
    Set<String> labels = new HashSet<>();
    int left = total;
    while (left > 0) {
      int count = 1 + random.nextInt(Math.min(left, 3));
      LoadResistor kind =
          kind(VALUES[random.nextInt(VALUES.length)], WATTS[random.nextInt(WATTS.length)], count)
              .on(random.nextBoolean() ? Mount.PRESUMED : Mount.heatsink(0.3));
      if (labels.add(kind.label())) {
        stock.add(kind);
        left -= count;
      }
    }
    return stock;
  }

  private static List<Network.Part> parts(List<LoadResistor> stock) {
    List<Network.Part> parts = new ArrayList<>();
    List<List<String>> names = ResistorNames.of(stock);
    for (int kind = 0; kind < stock.size(); kind++) {
      for (String name : names.get(kind)) {
        parts.add(new Network.Part(name, stock.get(kind)));
      }
    }
    return parts;
  }

  @Test
  void search_ofUpToSixResistors_equalsBruteForce() {
    compare(20_260_401, ROUNDS, 6);
  }

  @Test
  void search_ofSevenResistors_equalsBruteForce() {
    compareStock(
        new Random(7), SHARE, List.of(kind(4, 100, 3), kind(8, 50, 2), kind(1, 25, 2)), "seven");
  }

  @Tag("long")
  @Test
  void search_ofManySmallStocks_equalsBruteForce() {
    compare(20_260_402, 1500, 6);
    compare(20_260_403, 60, 7);
  }

  private static void compare(long seed, int trials, int most) {
    Random random = new Random(seed);
    for (int i = 0; i < trials; i++) {
      List<LoadResistor> stock = randomStock(random, 2 + random.nextInt(most - 1));
      ToDoubleFunction<LoadResistor> bears = i % 2 == 0 ? SHARE : AS_MOUNTED;
      compareStock(random, bears, stock, "seed " + seed + ", trial " + i);
    }
  }

  private static void compareStock(
      Random random, ToDoubleFunction<LoadResistor> bears, List<LoadResistor> stock, String told) {
    EveryNetwork every = new EveryNetwork(parts(stock), bears);
    for (int ask = 0; ask < 6; ask++) {
      double ohms = 0.25 * Math.pow(2, random.nextInt(13) / 2.0);
      double watts = random.nextInt(3) == 0 ? 0 : 200 * random.nextDouble();
      double tolerance = random.nextBoolean() ? 5 : 1 + 20 * random.nextDouble();
      WiringRequest request = new WiringRequest(ohms, watts, 1 + random.nextInt(2), tolerance);
      compareAnswer(stock, bears, every, request, told + ": " + stock + " " + request);
    }
  }

  private static void compareAnswer(
      List<LoadResistor> stock,
      ToDoubleFunction<LoadResistor> bears,
      EveryNetwork every,
      WiringRequest request,
      String told) {
    double[] best = bruteForce(every, request);
    WiringAnswer answer = new WiringSearch(stock, bears).find(request);
    if (Double.isInfinite(best[0])) {
      assertInstanceOf(WiringAnswer.None.class, answer, told);
      return;
    }
    WiringAnswer.Found found = assertInstanceOf(WiringAnswer.Found.class, answer, told);
    assertTrue(found.fewest(), told);
    assertEquals(best[0], partCount(found), told);
    double off =
        found.loads().stream()
            .mapToDouble(n -> Math.abs(n.ohms() - request.ohms()))
            .max()
            .orElse(-1);
    assertEquals(best[1], off, 1e-9, told);
    assertHolds(stock, bears, found, told);
  }

  /** Returns the fewest resistors and, of those, the least distance from the value wanted. */
  private static double[] bruteForce(EveryNetwork every, WiringRequest request) {
    double[] off = new double[every.masks()];
    double slack = request.ohms() * request.tolerancePercent() / 100 * (1 + 1e-9);
    for (int mask = 0; mask < off.length; mask++) {
      off[mask] = Double.POSITIVE_INFINITY;
      for (EveryNetwork.Drawn drawn : every.of(mask)) {
        double distance = Math.abs(drawn.ohms() - request.ohms());
        boolean bears = drawn.hottest() * request.watts() <= 1 + 1e-12;
        if (bears && distance <= slack && distance < off[mask]) {
          off[mask] = distance;
        }
      }
    }
    double[] best = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    for (int a = 1; a < off.length; a++) {
      if (request.loads() == 1) {
        keep(best, Integer.bitCount(a), off[a]);
      }
      for (int b = 1; request.loads() == 2 && b < a; b++) {
        if ((a & b) == 0) {
          keep(best, Integer.bitCount(a | b), Math.max(off[a], off[b]));
        }
      }
    }
    return best;
  }

  private static void keep(double[] best, int size, double off) {
    boolean better = size < best[0] || size == best[0] && off < best[1];
    if (!Double.isInfinite(off) && better) {
      best[0] = size;
      best[1] = off;
    }
  }

  /** Checks a wiring from outside: own resistors, each once, value and watts as promised. */
  static void assertHolds(List<LoadResistor> stock, WiringAnswer.Found found, String told) {
    assertHolds(stock, SHARE, found, told);
  }

  private static void assertHolds(
      List<LoadResistor> stock,
      ToDoubleFunction<LoadResistor> bears,
      WiringAnswer.Found found,
      String told) {
    WiringRequest request = found.request();
    assertEquals(request.loads(), found.loads().size(), told);
    Set<Network.Part> used = new HashSet<>();
    Set<Network.Part> owned = new HashSet<>(parts(stock));
    for (Network load : found.loads()) {
      double slack = request.ohms() * request.tolerancePercent() / 100;
      assertEquals(request.ohms(), load.ohms(), slack * (1 + 1e-9), told);
      for (Network.Heat heat : load.heats(request.watts())) {
        assertTrue(owned.contains(heat.part()), told + ": not owned: " + heat.part());
        assertTrue(used.add(heat.part()), told + ": used twice: " + heat.part());
        assertTrue(heat.share(bears) <= 1 + 1e-9, told + ": " + heat);
      }
    }
  }

  @Test
  void twentyFourResistorsOfFourKinds_areWiredForEveryLoadOfAFullWalk() {
    List<LoadResistor> stock =
        List.of(kind(8, 100, 8), kind(4, 100, 8), kind(2, 100, 4), kind(1, 200, 4));
    double[][] asks = {
      {4, 100, 2}, {2, 200, 2}, {1, 300, 2}, {4, 300, 1}, {2, 600, 1}, {1, 1000, 1}, {0.5, 1000, 1}
    };
    for (double[] ask : asks) {
      WiringRequest request = continuous(ask[0], ask[1], (int) ask[2]);
      WiringAnswer answer = new WiringSearch(stock, Parts.share(0.75)).find(request);
      WiringAnswer.Found found =
          assertInstanceOf(WiringAnswer.Found.class, answer, request + ": " + answer);
      assertHolds(stock, found, request.toString());
    }
  }

  /** A wiring hidden in a stock of 24 is found, or one with fewer resistors. */
  @Test
  void hiddenWiring_inALargeStock_isFound() {
    long seed = 24;
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      List<LoadResistor> stock = new ArrayList<>();
      for (int k = 0; k < 4; k++) {
        stock.add(kind(VALUES[(random.nextInt(3) + 3 * k) % VALUES.length], 100, 6));
      }
      LoadResistor kind = stock.get(random.nextInt(4));
      LoadResistor other = stock.get(random.nextInt(4));
      int rows = 2 + random.nextInt(2);
      double branch = kind.ohms() + (other.equals(kind) ? 0 : other.ohms());
      int size = rows * (other.equals(kind) ? 1 : 2);
      double ohms = branch / rows;
      double hottest = Math.max(kind.ohms(), other.equals(kind) ? 0 : other.ohms()) / branch / rows;
      WiringRequest request = continuous(ohms, 0.75 * 100 / hottest, 2);
      String told = "seed " + seed + ", trial " + i + ": " + stock + " " + request;
      WiringAnswer answer = new WiringSearch(stock, Parts.share(0.75)).find(request);
      WiringAnswer.Found found = assertInstanceOf(WiringAnswer.Found.class, answer, told);
      assertTrue(partCount(found) <= 2 * size, told);
      assertHolds(stock, found, told);
    }
  }

  @Test
  void sameQuestion_getsTheSameAnswer() {
    List<LoadResistor> stock = List.of(kind(8, 100, 6), kind(4, 100, 6), kind(2.2, 50, 6));
    WiringRequest request = continuous(2, 150, 2);
    assertEquals(
        new WiringSearch(stock, Parts.share(0.75)).find(request),
        new WiringSearch(stock, Parts.share(0.75)).find(request));
  }

  @Test
  void noWiring_saysWhyAndWhatToBuy() {
    WiringAnswer.None none =
        assertInstanceOf(
            WiringAnswer.None.class,
            new WiringSearch(List.of(kind(8, 100, 1)), Parts.share(0.75))
                .find(continuous(4, 100, 1)));
    assertEquals("All resistors together bear 75 W. The step needs 100 W.", none.sentence());
    assertEquals(kind(8, 100, 1), none.purchase().orElseThrow(), "one more makes 4 Ω for 150 W");
    List<LoadResistor> larger = List.of(kind(8, 100, 2));
    assertInstanceOf(
        WiringAnswer.Found.class,
        new WiringSearch(larger, Parts.share(0.75)).find(continuous(4, 100, 1)));
  }

  @Test
  void noResistors_getASentenceAndAPurchase() {
    WiringAnswer.None none =
        assertInstanceOf(
            WiringAnswer.None.class,
            new WiringSearch(List.of(), Parts.share(0.75)).find(continuous(4, 100, 2)));
    assertEquals("The bench lists no load resistors.", none.sentence());
    LoadResistor bought = none.purchase().orElseThrow();
    WiringAnswer answer =
        new WiringSearch(List.of(bought), Parts.share(0.75)).find(continuous(4, 100, 2));
    assertInstanceOf(WiringAnswer.Found.class, answer, bought.toString());
  }

  @Test
  void absurdInput_getsASentence() {
    String thousand =
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new WiringSearch(List.of(kind(8, 100, 1000)), Parts.share(0.75))
                        .find(continuous(4, 100, 1)))
            .getMessage();
    assertEquals(
        "the stock holds 1000 resistors and the search looks through 200 at most: enter those"
            + " meant for the loads",
        thousand);
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> continuous(bad, 100, 1), bad + " Ω");
    }
    assertThrows(IllegalArgumentException.class, () -> continuous(4, -1, 1));
    assertThrows(IllegalArgumentException.class, () -> continuous(4, 1, 3));
    WiringAnswer answer =
        new WiringSearch(List.of(kind(8, 100, 200)), Parts.share(0.75)).find(continuous(4, 1e9, 1));
    WiringAnswer.None none = assertInstanceOf(WiringAnswer.None.class, answer);
    assertTrue(none.purchase().isEmpty(), none.toString());
  }

  /** Returns a load within 5 %, its resistors at no more than three quarters of their ratings. */
  private static WiringRequest continuous(double ohms, double watts, int loads) {
    return new WiringRequest(ohms, watts, loads, WiringRequest.DEFAULT_TOLERANCE_PERCENT);
  }

  private static int partCount(WiringAnswer.Found found) {
    return found.loads().stream().mapToInt(load -> load.parts().size()).sum();
  }
}
