package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loadwalk.plan.StockRules;
import loadwalk.report.ledger.DesignReader.OfRating;
import loadwalk.report.ledger.DesignReader.Published;
import loadwalk.report.ledger.DesignReader.Shown;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.walk.Results;
import loadwalk.walk.fact.FactText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sets the program's verdicts, bests, ranks and comparisons of walks drawn at random against {@link
 * DesignReader}, which reads the same walks by the sentences of the design.
 */
class DesignReaderExperimentTest {
  private static final long SEED = 20261201;

  private final Map<String, Integer> seen = new TreeMap<>();

  /** A walk as drawn, as read by the design and as folded by the program. */
  private record Both(DrawnWalk drawn, List<Published> read, LedgerEntry folded) {}

  @Test
  void someHundredWalks_areJudgedAsTheDesignSays() {
    judge(300, 100);
  }

  @Test
  @Tag("long")
  void tenThousandWalks_areJudgedAsTheDesignSays() {
    judge(10_000, 10_000);
  }

  /** Of 1.898 ohm read and 2 ohm in stock, 5.1 % apart, the second load gets less. */
  @Test
  void meanOfRuns_isJudgedByTheLoadOfItsLowerChannel() {
    DrawnWalk.Run run = run("stereo-2");
    DrawnWalk.Rated rated =
        new DrawnWalk.Rated(false, 2000, 30, OptionalInt.empty(), OptionalInt.empty());
    DrawnWalk walk =
        new DrawnWalk(
            "two",
            false,
            Optional.empty(),
            List.of(rated),
            OptionalInt.empty(),
            true,
            List.of(),
            1000,
            400,
            13_800,
            DrawnWalk.WarmUp.NONE,
            List.of(run, run("stereo-2#2")));
    honestyOf(folded(walk));
    assertTrue(folded(walk).folded().worstOfRated().isPresent());
  }

  private static DrawnWalk.Run run(String id) {
    OptionalInt volts = OptionalInt.of(10_839);
    OptionalInt none = OptionalInt.empty();
    return new DrawnWalk.Run(
        id,
        false,
        2000,
        volts.getAsInt(),
        volts,
        OptionalInt.of(1898),
        OptionalInt.of(1000),
        none,
        none,
        none,
        Optional.empty(),
        false,
        false,
        false);
  }

  private void judge(int count, int together) {
    WalkDraw draw = new WalkDraw(new Random(SEED));
    List<Both> ledger = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ledger.add(folded(draw.walk(i)));
      if (ledger.size() == together) {
        bestAreThoseOfTheDesign(ledger);
        ranksAreThoseOfTheDesign(ledger);
        honestyIsThatOfTheDesign(ledger);
        comparisonsAreThoseOfTheDesign(ledger);
        ledger.clear();
      }
    }
    System.out.printf("%d walks, seed %d: %s%n", count, SEED, seen);
    for (String word : List.of("meets", "misses", "too-close", "other-conditions")) {
      assertTrue(seen.getOrDefault(word, 0) > count / 100, () -> word + " is hardly drawn");
    }
    for (Mark mark : Mark.values()) {
      assertTrue(seen.getOrDefault(mark.word(), 0) > count / 100, mark::word);
    }
    for (Comparison.Outcome outcome : Comparison.Outcome.values()) {
      assertTrue(seen.getOrDefault(outcome.name(), 0) > count / 100, outcome::name);
    }
  }

  private void count(String word) {
    seen.merge(word, 1, Integer::sum);
  }

  private static String said(DrawnWalk walk) {
    return "seed " + SEED + ": " + walk;
  }

  private Both folded(DrawnWalk drawn) {
    List<String> bodies = DrawnFacts.bodies(drawn);
    WalkResult result = Results.of(FactText.walk(bodies), StockRules.RULES.wire());
    for (Shown shown : DesignReader.shown(drawn)) {
      StepResult step = result.step(shown.run().id()).orElseThrow();
      assertEquals(shown.criterion(), step.criterion().word(), () -> said(drawn));
      assertEquals(shown.warm(), step.conditions().around().warm(), () -> said(drawn));
      List<String> marks = step.marks().stream().map(Mark::word).toList();
      assertEquals(shown.marks(), marks, () -> shown.run().id() + " " + said(drawn));
      marks.forEach(this::count);
      assertEquals(
          shown.watts(),
          step.totalWatts().orElseThrow().value(),
          1e-9 * shown.watts(),
          () -> shown.run() + said(drawn));
      ratingIsThatOfTheDesign(shown, step.rating());
    }
    LedgerEntry entry = LedgerEntry.ofBodies(bodies, StockRules.RULES);
    List<Published> read = DesignReader.published(drawn);
    publishedIsThatOfTheDesign(drawn, read, entry);
    return new Both(drawn, read, entry);
  }

  private void ratingIsThatOfTheDesign(Shown shown, Optional<RatingComparison> judged) {
    Optional<OfRating> read = DesignReader.rating(shown);
    assertEquals(read.isPresent(), judged.isPresent(), () -> said(shown.walk()));
    if (read.isEmpty()) {
      return;
    }
    RatingComparison rating = judged.orElseThrow();
    String verdict = rating.verdict().word();
    count(verdict);
    Set<String> differs = new TreeSet<>();
    rating.differs().forEach(text -> differs.add(about(text)));
    assertEquals(read.get().differs(), differs, () -> shown.run().id() + said(shown.walk()));
    List<String> allowed = List.of(read.get().verdict().split(" or "));
    assertTrue(
        allowed.contains(verdict),
        () -> verdict + " is not " + allowed + ": " + shown.run().id() + " " + said(shown.walk()));
    assertEquals(read.get().estimated(), rating.estimate().isPresent(), () -> said(shown.walk()));
  }

  private static String about(String differs) {
    return differs.startsWith("rated into")
        ? "load"
        : differs.startsWith("rated at a supply") ? "supply" : "limit";
  }

  private static void publishedIsThatOfTheDesign(
      DrawnWalk drawn, List<Published> read, LedgerEntry entry) {
    List<LedgerEntry.Load> ranked = entry.loads().stream().filter(entry::ranks).toList();
    assertEquals(
        read.stream().map(DesignReaderExperimentTest::named).toList(),
        ranked.stream().map(DesignReaderExperimentTest::named).toList(),
        () -> said(drawn));
    for (int i = 0; i < read.size(); i++) {
      double watts = read.get(i).watts();
      assertEquals(watts, ranked.get(i).watts(), 1e-9 * watts, () -> said(drawn));
      assertEquals(
          read.get(i).shown().marks(),
          ranked.get(i).marks().stream().map(Mark::word).toList(),
          () -> said(drawn));
      assertEquals(
          read.get(i).shown().criterion(), ranked.get(i).criterion().word(), () -> said(drawn));
    }
  }

  private static String named(Published published) {
    return named(published.shown().run().bridged(), published.shown().run().milliohms());
  }

  private static String named(LedgerEntry.Load load) {
    return named(load.mode().loads() == 1, (int) Math.round(1000 * load.ohms()));
  }

  private static String named(boolean bridged, int milliohms) {
    return (bridged ? "bridged " : "stereo ") + milliohms;
  }

  /** A result of the design with the walk and the load that the program has for it. */
  private record Result(Published read, RankedResult folded) {}

  private static List<Result> results(List<Both> ledger) {
    List<Result> all = new ArrayList<>();
    for (Both walk : ledger) {
      List<LedgerEntry.Load> ranked =
          walk.folded().loads().stream().filter(walk.folded()::ranks).toList();
      for (int i = 0; i < ranked.size(); i++) {
        all.add(new Result(walk.read().get(i), new RankedResult(walk.folded(), ranked.get(i))));
      }
    }
    return all;
  }

  /** Every result against every other. */
  private void bestAreThoseOfTheDesign(List<Both> ledger) {
    List<Result> all = results(ledger);
    Map<String, Integer> best = new TreeMap<>();
    for (Result result : all) {
      int alike = 0;
      boolean beaten = false;
      for (Result other : all) {
        if (DesignReader.alike(result.read().shown(), other.read().shown())) {
          alike++;
          beaten |= other.folded().watts() > result.folded().watts();
        }
      }
      if (!beaten) {
        best.put(named(result.folded()), alike);
      }
    }
    Map<String, Integer> found = new TreeMap<>();
    for (BestAtLoad b : BestAtLoad.of(ledger.stream().map(Both::folded).toList())) {
      found.put(named(b.best()), b.compared().size());
    }
    assertEquals(apart(best, found), apart(found, best), "seed " + SEED);
    seen.merge("best", best.size(), Integer::sum);
  }

  private static Map<String, Integer> apart(Map<String, Integer> one, Map<String, Integer> other) {
    Map<String, Integer> apart = new TreeMap<>(one);
    apart.entrySet().removeAll(other.entrySet());
    return apart;
  }

  private static String named(RankedResult result) {
    return result.walk().walk() + " " + named(result.load());
  }

  private void ranksAreThoseOfTheDesign(List<Both> ledger) {
    Map<LedgerEntry, Both> walks = new IdentityHashMap<>();
    ledger.forEach(b -> walks.put(b.folded(), b));
    Ledger byPower = Ledger.of(ledger.stream().map(Both::folded).toList()).sorted(LedgerSort.POWER);
    List<LedgerEntry> ranked = new ArrayList<>();
    List<List<Published>> lists = new ArrayList<>();
    for (RankGroup group : byPower.groups()) {
      List<Published> list =
          group.walks().stream().map(w -> strongest(walks.get(w)).orElseThrow()).toList();
      allAlikeAndDescending(list);
      lists.add(list);
      ranked.addAll(group.walks());
    }
    realBeforePractice(ranked);
    noTwoListsAreOne(lists);
    long due = ledger.stream().filter(b -> strongest(b).isPresent()).count();
    assertEquals(due, ranked.size(), "every walk with a result that ranks is in one list");
    assertEquals(ranked, byPower.entries().subList(0, ranked.size()));
    assertEquals(ledger.size(), byPower.entries().size());
    seen.merge("ranked", ranked.size(), Integer::sum);
  }

  private static void honestyOf(Both walk) {
    OptionalDouble read = DesignReader.honesty(walk.read());
    OptionalDouble found =
        walk.folded().worstOfRated().map(LedgerEntry.Load::ratio).orElse(OptionalDouble.empty());
    assertEquals(read.isPresent(), found.isPresent(), () -> said(walk.drawn()));
    read.ifPresent(
        ratio -> assertEquals(ratio, found.getAsDouble(), 1e-9 * ratio, () -> said(walk.drawn())));
  }

  /** The real before the simulated, each by the lowest ratio of a verdict, the others nowhere. */
  private void honestyIsThatOfTheDesign(List<Both> ledger) {
    ledger.forEach(DesignReaderExperimentTest::honestyOf);
    List<String> due = new ArrayList<>();
    for (boolean practice : new boolean[] {false, true}) {
      ledger.stream()
          .filter(b -> b.drawn().practice() == practice)
          .filter(b -> DesignReader.honesty(b.read()).isPresent())
          .sorted(
              Comparator.<Both>comparingDouble(b -> -DesignReader.honesty(b.read()).getAsDouble())
                  .thenComparing(b -> b.drawn().name()))
          .forEach(b -> due.add(b.drawn().name()));
    }
    List<String> ranked = new ArrayList<>();
    Ledger.of(ledger.stream().map(Both::folded).toList())
        .sorted(LedgerSort.HONESTY)
        .groups()
        .stream()
        .flatMap(group -> group.walks().stream())
        .forEach(walk -> ranked.add(walk.walk()));
    assertEquals(due, ranked, "seed " + SEED);
    seen.merge("honest", due.size(), Integer::sum);
  }

  private static Optional<Published> strongest(Both walk) {
    return walk.read().stream().max((a, b) -> Double.compare(a.watts(), b.watts()));
  }

  private static void allAlikeAndDescending(List<Published> list) {
    for (int i = 0; i < list.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(DesignReader.alike(list.get(i).shown(), list.get(j).shown()), "seed " + SEED);
      }
      double before = i == 0 ? Double.POSITIVE_INFINITY : list.get(i - 1).watts();
      assertTrue(list.get(i).watts() <= before * (1 + 1e-9), "seed " + SEED);
    }
  }

  private static void realBeforePractice(List<LedgerEntry> ranked) {
    String order = ranked.stream().map(e -> e.practice() ? "p" : "r").collect(Collectors.joining());
    assertTrue(order.matches("r*p*"), order);
  }

  /** Walks are parted only where something parts them. */
  private static void noTwoListsAreOne(List<List<Published>> lists) {
    for (List<Published> one : lists) {
      for (List<Published> other : lists) {
        boolean parted =
            one == other
                || one.stream()
                    .anyMatch(
                        a ->
                            other.stream()
                                .anyMatch(b -> !DesignReader.alike(a.shown(), b.shown())));
        assertTrue(parted, "seed " + SEED);
      }
    }
  }

  /** Each walk against the fifty before it, at each load of both, ranked or not. */
  private void comparisonsAreThoseOfTheDesign(List<Both> ledger) {
    for (int i = 0; i < ledger.size(); i++) {
      for (int j = Math.max(0, i - 50); j < i; j++) {
        compare(ledger.get(j), ledger.get(i));
      }
    }
  }

  private void compare(Both first, Both other) {
    for (LedgerEntry.Load one : first.folded().loads()) {
      for (LedgerEntry.Load two : other.folded().loads()) {
        if (named(one).equals(named(two))) {
          compare(first, one, other, two);
        }
      }
    }
  }

  private void compare(Both first, LedgerEntry.Load one, Both other, LedgerEntry.Load two) {
    Comparison found =
        Comparison.of(new RankedResult(first.folded(), one), new RankedResult(other.folded(), two));
    count(found.outcome().name());
    Optional<Published> a = at(first, one);
    Optional<Published> b = at(other, two);
    List<Comparison.Outcome> allowed =
        a.isEmpty() || b.isEmpty()
            ? List.of(Comparison.Outcome.NOT_RANKED)
            : allowed(a.get(), b.get());
    assertTrue(
        allowed.contains(found.outcome()),
        () -> found + " is not " + allowed + ": " + said(first.drawn()) + said(other.drawn()));
  }

  private static Optional<Published> at(Both walk, LedgerEntry.Load load) {
    return walk.read().stream().filter(p -> named(p).equals(named(load))).findFirst();
  }

  /** Beyond a fifth nothing drawn is too close; within a thousandth everything is. */
  private static List<Comparison.Outcome> allowed(Published first, Published other) {
    if (!DesignReader.alike(first.shown(), other.shown())) {
      return List.of(Comparison.Outcome.OTHER_CONDITIONS);
    }
    double ratio = other.watts() / first.watts();
    Comparison.Outcome shown = ratio > 1 ? Comparison.Outcome.MORE : Comparison.Outcome.LESS;
    if (Math.abs(ratio - 1) < 0.001) {
      return List.of(Comparison.Outcome.TOO_CLOSE);
    }
    return Math.abs(ratio - 1) > 0.2
        ? List.of(shown)
        : List.of(shown, Comparison.Outcome.TOO_CLOSE);
  }
}
