package loadwalk.experiment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;

/** What one forecaster did on one population, with one arrangement of meters. */
final class Results {
  /** The slips that volts alone cannot show: the load changes the amps, not the volts. */
  static final List<Slip> HIDDEN_FROM_VOLTS = List.of(Slip.LOAD_DOUBLE, Slip.LOAD_HALF);

  /** What a slip that raised no doubt was taken for. */
  static final String PASSED = "passed";

  final String forecaster;
  final String population;
  final Arrangement arrangement;
  final Map<Slip, Tally> doubted = tallies();
  final Map<Slip, Tally> named = tallies();
  final Map<Slip, Map<String, Map<String, Integer>>> confusion = new EnumMap<>(Slip.class);
  final Map<String, Row> breakdown = new TreeMap<>();
  final Map<String, Integer> leftOut = new TreeMap<>();
  final Later later = new Later();
  final Tally honestDoubted = new Tally();
  final Map<String, Tally> honestBy = new TreeMap<>();
  final Map<ReadingId, Tally> inside = new EnumMap<>(ReadingId.class);
  final Map<String, Tally> insideBy = new TreeMap<>();
  final Map<ReadingId, Integer> unforetold = new EnumMap<>(ReadingId.class);

  /** Half-widths of the bands, fractions of their middle, by reading and step. */
  final Map<String, List<Double>> halfWidths = new TreeMap<>();

  /** What went otherwise than wished, in order. */
  final List<Miss> misses = new ArrayList<>();

  final List<Double> bridgedHalfWidths = new ArrayList<>();
  final Tally clearThoughExceeding = new Tally();
  final Tally clear = new Tally();
  final Tally run = new Tally();

  /**
   * One thing that went otherwise than wished.
   *
   * @param member the number of the amplifier
   * @param what the step and what was at stake
   * @param came what came of it
   */
  record Miss(int member, String what, String came) {}

  /** What was known of the load of a step when a slip was made there. */
  enum Standing {
    FIRST("first reading"),
    NEW("load new"),
    SEEN("load seen before");

    final String words;

    Standing(String words) {
      this.words = words;
    }

    /** Tells what is known of a step's load where some steps before it were run. */
    static Standing of(int step, IntPredicate run) {
      Standing standing = FIRST;
      for (int before = Ladder.FIRST_LOADED; before < step; before++) {
        if (run.test(before)) {
          if (channelOhms(before) == channelOhms(step)) {
            return SEEN;
          }
          standing = NEW;
        }
      }
      return standing;
    }

    private static double channelOhms(int step) {
      Target target = Ladder.at(step);
      return target.mode().channelOhms(target.ohms());
    }
  }

  /** How often one way of making a slip was doubted and named, by what was known of the load. */
  static final class Row {
    final Map<Standing, Tally> doubted = new EnumMap<>(Standing.class);
    final Map<Standing, Tally> named = new EnumMap<>(Standing.class);

    void add(Standing standing, boolean seen, boolean right) {
      doubted.computeIfAbsent(standing, s -> new Tally()).add(seen);
      named.computeIfAbsent(standing, s -> new Tally()).add(right);
    }
  }

  Results(String forecaster, String population, Arrangement arrangement) {
    this.forecaster = forecaster;
    this.population = population;
    this.arrangement = arrangement;
  }

  private static Map<Slip, Tally> tallies() {
    Map<Slip, Tally> tallies = new EnumMap<>(Slip.class);
    for (Slip slip : Slip.values()) {
      if (SlipMaker.makes(slip)) {
        tallies.put(slip, new Tally());
      }
    }
    return tallies;
  }

  /** Counts what a slip at a step was taken for; an empty list of doubts let it pass. */
  void confuse(Slip slip, String step, List<Doubt> doubts) {
    confusion
        .computeIfAbsent(slip, s -> new TreeMap<>())
        .computeIfAbsent(step, s -> new TreeMap<>())
        .merge(doubts.isEmpty() ? PASSED : doubts.get(0).slip().code(), 1, Integer::sum);
  }

  /** Returns all slips together; with volts only, the load slips stand by themselves. */
  Tally total(Map<Slip, Tally> tallies) {
    Tally sum = new Tally();
    tallies.forEach(
        (slip, tally) -> {
          if (counts(slip)) {
            sum.addAll(tally);
          }
        });
    return sum;
  }

  /** Returns how many slips were caught at a moment or before it. */
  Tally caughtBy(Later.Catch latest) {
    return later.by(latest, this::counts);
  }

  /** Tells whether a slip counts where all are taken together. */
  boolean counts(Slip slip) {
    return arrangement.withAmps || !HIDDEN_FROM_VOLTS.contains(slip);
  }

  /** Returns the tally under a key, made where there is none yet. */
  static Tally in(Map<String, Tally> tallies, String key) {
    return tallies.computeIfAbsent(key, k -> new Tally());
  }

  /** Adds a number to the list under a key, made where there is none yet. */
  static void in(Map<String, List<Double>> lists, String key, double number) {
    lists.computeIfAbsent(key, k -> new ArrayList<>()).add(number);
  }

  Tally allInside() {
    Tally sum = new Tally();
    inside.values().forEach(sum::addAll);
    return sum;
  }

  /** Returns the median half-width of bridged output volts in percent, NaN where there is none. */
  double medianHalfWidthPercent() {
    return medianPercent(bridgedHalfWidths);
  }

  /** Returns the median of fractions in percent, NaN where there is none. */
  static double medianPercent(List<Double> fractions) {
    List<Double> sorted = fractions.stream().sorted().toList();
    return sorted.isEmpty() ? Double.NaN : 100 * sorted.get(sorted.size() / 2);
  }
}
