package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import loadwalk.bench.Hold;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mount;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks what holds for every network. */
class NetworkPropertyTest {
  private static final long SEED = 4_1973;
  private static final int ROUNDS = 80 * Integer.getInteger("wiring.rounds", 25);

  private static Network random(Random random, int size, boolean series) {
    if (size == 1) {
      int kind = random.nextInt(5);
      double ohms = new double[] {0.5, 1, 2, 4, 8}[kind];
      return Parts.part(ohms + " ohm", 1 + random.nextInt(99), ohms, 5, 50 * (1 + kind));
    }
    List<Network> members = new ArrayList<>();
    int left = size;
    while (left > 0) {
      int part = members.isEmpty() ? 1 + random.nextInt(size - 1) : 1 + random.nextInt(left);
      members.add(random(random, part, !series));
      left -= part;
    }
    return series ? new Network.Series(members) : new Network.Parallel(members);
  }

  @Test
  void parts_dissipateTheTotal() {
    Random random = new Random(SEED);
    for (int i = 0; i < ROUNDS; i++) {
      Network network = random(random, 1 + random.nextInt(24), random.nextBoolean());
      double watts = 2000 * random.nextDouble();
      double sum = network.heats(watts).stream().mapToDouble(Network.Heat::watts).sum();
      assertEquals(watts, sum, 1e-9 * (1 + watts), "seed " + SEED + ", trial " + i);
      assertEquals(network.parts().size(), network.heats(watts).size());
    }
  }

  @Test
  void mostWatts_bringTheHottestPartExactlyToItsShare() {
    Random random = new Random(SEED + 1);
    for (int i = 0; i < ROUNDS; i++) {
      Network network = random(random, 1 + random.nextInt(24), random.nextBoolean());
      double most = network.mostWatts(Parts.share(0.75));
      String told = "seed " + (SEED + 1) + ", trial " + i;
      double hottest = network.hottest(most, Parts.share(1)).share(Parts.share(1));
      assertEquals(0.75, hottest, 1e-9, told);
    }
  }

  @Test
  void swappingMembers_changesNothing() {
    Random random = new Random(SEED + 2);
    for (int i = 0; i < ROUNDS; i++) {
      Network network = random(random, 2 + random.nextInt(20), random.nextBoolean());
      Network swapped = reversed(network);
      String told = "seed " + (SEED + 2) + ", trial " + i;
      assertEquals(network.ohms(), swapped.ohms(), 1e-12 * network.ohms(), told);
      assertEquals(network.value().u(), swapped.value().u(), 1e-12 * network.ohms(), told);
      double most = network.mostWatts(Parts.share(1));
      assertEquals(most, swapped.mostWatts(Parts.share(1)), 1e-9 * most, told);
    }
  }

  private static Network reversed(Network network) {
    if (network instanceof Network.Series series) {
      return new Network.Series(turned(series.members()));
    }
    return network instanceof Network.Parallel parallel
        ? new Network.Parallel(turned(parallel.members()))
        : network;
  }

  private static List<Network> turned(List<Network> members) {
    List<Network> turned = new ArrayList<>(members.stream().map(n -> reversed(n)).toList());
    Collections.reverse(turned);
    return turned;
  }

  /** JCGM 100, 5.1.2 by differences: the uncertainty of a kind is that of moving it as a whole. */
  @Test
  void value_uncertaintyOfOneKind_isItsOwnRelativeOne() {
    Network.Part a = Parts.part("4 ohm", 1, 4, 5, 100);
    Network.Part b = Parts.part("4 ohm", 2, 4, 5, 100);
    Network grid =
        new Network.Parallel(
            List.of(new Network.Series(List.of(a, b)), new Network.Series(List.of(b, a))));
    assertEquals(4, grid.value().value(), 1e-12);
    assertEquals(4 * 0.05 / Math.sqrt(3), grid.value().u(), 1e-12);
    Network.Part other = Parts.part("8 ohm", 1, 8, 1, 100);
    Network mixed = new Network.Parallel(List.of(a, other));
    double da = Math.pow(8.0 / 12, 2) * 4 * 0.05 / Math.sqrt(3);
    double db = Math.pow(4.0 / 12, 2) * 8 * 0.01 / Math.sqrt(3);
    assertEquals(Math.hypot(da, db), mixed.value().u(), 1e-12);
  }

  /** A resistor below one ohm, or of less than a watt, is an ordinary one. */
  @Test
  void resistor_thatIsMeasured_mayBeSmallAndExact() {
    Network.Part exact = Parts.part("shunt", 1, 0.01, 0, 0.5);
    assertEquals(0, exact.value().u());
    assertEquals(0.25, exact.mostWatts(Parts.share(0.5)));
  }

  @ParameterizedTest
  @CsvSource({"-1, -1.0", "NaN, NaN", "Infinity, Infinity"})
  void watts_thatCannotBe_areRefused(double watts, String told) {
    Network.Part four = Parts.part("4 ohm", 1, 4, 5, 100);
    Network pair = new Network.Parallel(List.of(four, four));
    assertEquals("watts must be a number from 0 up, got " + told, refusal(() -> four.heats(watts)));
    assertThrows(IllegalArgumentException.class, () -> pair.heats(watts));
  }

  @Test
  void join_ofOneNetwork_isRefused() {
    List<Network> one = List.of(Parts.part("4 ohm", 1, 4, 5, 100));
    assertEquals("a network joins two or more, got 1", refusal(() -> new Network.Series(one)));
    assertEquals("a network joins two or more, got 1", refusal(() -> new Network.Parallel(one)));
  }

  private static String refusal(Executable asked) {
    return assertThrows(IllegalArgumentException.class, asked).getMessage();
  }

  /**
   * By hand: 24 Ω and 40 Ω in parallel share 120 W as 75 and 45. On 0.1 K/W, 100 W bear 225 / 2.35
   * = 95.7 W; in free air 50 W (catalogue pair).
   */
  @Test
  void hottest_isByWhatEachBearsAsMounted_notByItsRating() {
    LoadResistor onSink =
        new LoadResistor("sink", 24, 5, 100, 1, OptionalDouble.empty()).on(Mount.heatsink(0.1));
    LoadResistor inAir =
        new LoadResistor("air", 40, 5, 100, 1, OptionalDouble.empty())
            .on(Mount.of(Mount.Kind.FREE_AIR));
    Network load =
        new Network.Parallel(
            List.of(new Network.Part("sink", onSink), new Network.Part("air", inAir)));
    ResistorDerating derating = new ResistorDerating(Tables.stock());
    assertEquals("sink", load.hottest(120, LoadResistor::watts).part().name());
    Network.Heat hottest = load.hottest(120, kind -> derating.mostWatts(kind, Hold.CONTINUOUS));
    assertEquals("air", hottest.part().name(), "45 of 50 W, against 75 of 95.7 W");
  }

  /**
   * Published example (resistor-derating notes): 4 of 100 W, 4 Ω in series-parallel: 4 Ω, 400 W.
   */
  @Test
  void fourEqualResistors_inSeriesParallel_keepTheValueAndAddTheWatts() {
    Network.Part part = Parts.part("4 ohm", 1, 4, 1, 100);
    Network pair = new Network.Series(List.of(part, part));
    Network grid = new Network.Parallel(List.of(pair, pair));
    assertEquals(4, grid.ohms(), 1e-12);
    assertEquals(400, grid.mostWatts(Parts.share(1)), 1e-9);
    assertTrue(grid.heats(400).stream().allMatch(heat -> Math.abs(heat.watts() - 100) < 1e-9));
  }
}
