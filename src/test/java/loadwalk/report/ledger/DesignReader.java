package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import loadwalk.report.ledger.DrawnWalk.Rated;
import loadwalk.report.ledger.DrawnWalk.Run;

/**
 * Reads drawn walks by the rules of the design, section 4, in whole numbers and by brute force. It
 * was written from those sentences, each of which stands at the rule it became, and uses nothing of
 * the program.
 */
final class DesignReader {
  private static final List<String> MARKS = List.of("not-warm", "supply-off", "practice");

  private DesignReader() {}

  /**
   * What a run shows.
   *
   * @param walk its walk
   * @param run the run
   * @param criterion the word of the point it was at
   * @param marks the words of its marks, worst first
   * @param warm whether the warm-up was done, where known
   * @param watts in all loads
   */
  record Shown(
      DrawnWalk walk,
      Run run,
      String criterion,
      List<String> marks,
      Optional<Boolean> warm,
      double watts) {
    /**
     * "What was not at the limit, was stood by, is impossible or is practice never ranks among what
     * was": practice ranks, among practice.
     */
    boolean ranks() {
      return isStated()
          && marks.stream().noneMatch(Set.of("impossible", "stood-by", "in-doubt")::contains);
    }

    boolean isStated() {
      return criterion.equals("thd-limit") || criterion.equals("clipping-onset");
    }
  }

  /** Returns what each run of a walk shows. */
  static List<Shown> shown(DrawnWalk walk) {
    List<Shown> all = new ArrayList<>();
    boolean cooled = false;
    for (Run run : walk.runs()) {
      cooled |= run.cooledBefore();
      Optional<Boolean> warm = warm(walk, cooled);
      String criterion = criterion(walk, run);
      double watts = total(walk, run);
      all.add(
          new Shown(walk, run, criterion, marks(walk, run, criterion, warm, watts), warm, watts));
    }
    return all;
  }

  private static Optional<Boolean> warm(DrawnWalk walk, boolean cooled) {
    if (cooled) {
      return Optional.of(false);
    }
    return switch (walk.warmUp()) {
      case NONE, WITHOUT_A_CLOCK -> Optional.empty();
      case DONE -> Optional.of(true);
      case CUT_SHORT -> Optional.of(false);
    };
  }

  /**
   * "It is decided by the THD read where one was: within a third of the limit either way is at the
   * limit; beyond, it is below or above it, whatever was ticked."
   */
  private static String criterion(DrawnWalk walk, Run run) {
    return run.thd().isPresent()
        ? byThd(run.thd().getAsInt(), walk.limit())
        : run.said().orElse("not-known");
  }

  private static String byThd(int thd, int limit) {
    if (3 * Math.abs(thd - limit) <= limit) {
      return "thd-limit";
    }
    return thd < limit ? "below-limit" : "above-limit";
  }

  /** "R the measured load where there is one", else one in stock near it, else the nominal one. */
  private static double ohms(DrawnWalk walk, Run run) {
    return run.loadRead().isPresent()
        ? run.loadRead().getAsInt() / 1000.0
        : stockOhms(walk, run.milliohms());
  }

  private static double stockOhms(DrawnWalk walk, int nominal) {
    for (int stock : walk.stockMilliohms()) {
      if (10 * Math.abs(stock - nominal) <= nominal) {
        return stock / 1000.0;
      }
    }
    return nominal / 1000.0;
  }

  private static double watts(int millivolts, double ohms) {
    return millivolts / 1000.0 * (millivolts / 1000.0) / ohms;
  }

  private static double firstWatts(DrawnWalk walk, Run run) {
    return watts(run.volts(), ohms(walk, run));
  }

  /** "Loads of the others are taken at their own measured ohms, else at their stock value." */
  private static double otherWatts(DrawnWalk walk, Run run) {
    return watts(run.otherVolts().orElse(run.volts()), stockOhms(walk, run.milliohms()));
  }

  /** "Stereo total = sum of channels; one channel measured, both loaded: total = 2P." */
  private static double total(DrawnWalk walk, Run run) {
    double one = firstWatts(walk, run);
    return run.bridged() ? one : one + otherWatts(walk, run);
  }

  /** "Worst first: impossible, stood by, not warm, not at the limit, supply off, practice." */
  private static List<String> marks(
      DrawnWalk walk, Run run, String criterion, Optional<Boolean> warm, double watts) {
    List<String> marks = new ArrayList<>();
    if (run.milliamps().isPresent()) {
      double in = 1e-6 * run.milliamps().getAsInt() * run.supply().getAsInt();
      add(marks, "impossible", watts > 1.2 * in);
    }
    add(marks, "stood-by", run.stoodBy());
    add(marks, "in-doubt", run.inDoubt());
    add(marks, "not-warm", warm.isPresent() && !warm.get());
    add(marks, "above-limit", criterion.equals("above-limit"));
    add(marks, "below-limit", criterion.equals("below-limit"));
    add(marks, "limit-not-known", criterion.equals("not-known"));
    boolean read = run.supply().isPresent();
    add(marks, "supply-off", read && !sameSupply(run.supply().getAsInt(), walk.supply()));
    add(marks, "practice", walk.practice());
    return marks;
  }

  private static void add(List<String> marks, String mark, boolean holds) {
    if (holds) {
      marks.add(mark);
    }
  }

  /** "Within 1.5 % of the rated ones." */
  private static boolean sameSupply(int read, int rated) {
    return 1000 * Math.abs(read - rated) <= 15 * rated;
  }

  /**
   * What can be said of a rating.
   *
   * @param verdict the word; of a ratio near 1 both that can be, joined by "or"
   * @param differs of load, limit and supply, those that differ
   * @param estimated whether there is an estimate beside it
   * @param ratio measured over rated, of the lower channel
   */
  record OfRating(String verdict, Set<String> differs, boolean estimated, double ratio) {}

  /**
   * "A verdict needs like conditions: mode, load within 5 %, at the limit the rating states (or the
   * sequence's where it states none), supply volts within 1.5 % of the rated ones unless the rails
   * are known to be regulated. Else the verdict is other-conditions, and beside it the estimate at
   * the rating's supply volts where rails are known."
   */
  static Optional<OfRating> rating(Shown shown) {
    DrawnWalk walk = shown.walk();
    Run run = shown.run();
    for (Rated rated : walk.ratings()) {
      if (rated.bridged() == run.bridged() && rated.milliohms() == run.milliohms()) {
        return Optional.of(judged(walk, run, rated));
      }
    }
    return Optional.empty();
  }

  private static OfRating judged(DrawnWalk walk, Run run, Rated rated) {
    Set<String> differs = new TreeSet<>();
    double off = Math.abs(1000 * ohmsOfLower(walk, run) - rated.milliohms());
    if (off > 0.05 * rated.milliohms() + 1e-6) {
      differs.add("load");
    }
    if (!atLimitOf(walk, run, rated)) {
      differs.add("limit");
    }
    boolean regulated = walk.regulated().orElse(false);
    boolean read = run.supply().isPresent();
    boolean supply =
        rated.supply().isPresent()
            && !regulated
            && !(read && sameSupply(run.supply().getAsInt(), rated.supply().getAsInt()));
    if (supply) {
      differs.add("supply");
    }
    boolean estimated = supply && read && walk.regulated().isPresent();
    double lower = isOtherLower(walk, run) ? otherWatts(walk, run) : firstWatts(walk, run);
    double ratio = lower / rated.watts();
    String verdict = differs.isEmpty() ? verdict(ratio) : "other-conditions";
    return new OfRating(verdict, differs, estimated, ratio);
  }

  /** No uncertainty drawn is below 0.8 % or above 15 %. */
  private static String verdict(double ratio) {
    if (Math.abs(ratio - 1) < 0.001) {
      return "too-close";
    }
    String shown = ratio > 1 ? "meets" : "misses";
    return Math.abs(ratio - 1) > 0.2 ? shown : shown + " or too-close";
  }

  /** The lower channel is the one that is compared, so its load is. */
  private static double ohmsOfLower(DrawnWalk walk, Run run) {
    boolean other = run.otherVolts().isPresent() && otherWatts(walk, run) < firstWatts(walk, run);
    return other ? stockOhms(walk, run.milliohms()) : ohms(walk, run);
  }

  private static boolean isOtherLower(DrawnWalk walk, Run run) {
    return run.otherVolts().isPresent() && otherWatts(walk, run) < firstWatts(walk, run);
  }

  private static boolean atLimitOf(DrawnWalk walk, Run run, Rated rated) {
    int stated = rated.thd().orElse(walk.limit());
    if (run.thd().isPresent()) {
      return byThd(run.thd().getAsInt(), stated).equals("thd-limit");
    }
    boolean said = run.said().filter("thd-limit"::equals).isPresent();
    return said && byThd(walk.limit(), stated).equals("thd-limit");
  }

  /**
   * "Like with like in the ledger: a key of mode, load, tone, criterion reached, supply volts read
   * within 2 %, driven, warm, practice or real."
   */
  static boolean alike(Shown one, Shown other) {
    boolean limit =
        !one.criterion().equals("thd-limit") || one.walk().limit() == other.walk().limit();
    boolean tone = one.run().tone().isPresent() || one.walk().tone() == other.walk().tone();
    return one.run().sameLoad(other.run())
        && one.criterion().equals(other.criterion())
        && limit
        && tone
        && near(one.run().tone(), other.run().tone())
        && near(one.run().supply(), other.run().supply())
        && one.warm().equals(other.warm())
        && one.walk().practice() == other.walk().practice();
  }

  /** Within 2 % of the larger; what nobody read is alike only to what nobody read. */
  private static boolean near(OptionalInt one, OptionalInt other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() && other.isEmpty();
    }
    int a = one.getAsInt();
    int b = other.getAsInt();
    return 50 * Math.abs(a - b) <= Math.max(a, b);
  }

  /**
   * What a sheet publishes for each load, where any of its runs ranks. "The value at the stated
   * limit; clipping onset and THD limit are never mixed; the mean of runs that agree; where two
   * disagree the lower one."
   *
   * @param shown the run, or the mean of runs, whose conditions it carries
   * @param watts in all loads
   */
  record Published(Shown shown, double watts) {}

  static List<Published> published(DrawnWalk walk) {
    List<Published> published = new ArrayList<>();
    List<Shown> all = shown(walk);
    for (Shown first : all) {
      boolean again =
          all.subList(0, all.indexOf(first)).stream().anyMatch(s -> s.run().sameLoad(first.run()));
      if (!again) {
        List<Shown> runs =
            all.stream().filter(s -> s.ranks() && s.run().sameLoad(first.run())).toList();
        published(runs).ifPresent(published::add);
      }
    }
    return published;
  }

  private static Optional<Published> published(List<Shown> runs) {
    if (runs.isEmpty()) {
      return Optional.empty();
    }
    boolean limit = runs.stream().anyMatch(s -> s.criterion().equals("thd-limit"));
    String best = limit ? "thd-limit" : "clipping-onset";
    List<Shown> at = runs.stream().filter(s -> s.criterion().equals(best)).toList();
    int fewest = at.stream().mapToInt(s -> s.marks().size()).min().orElseThrow();
    Shown first = at.stream().filter(s -> s.marks().size() == fewest).findFirst().orElseThrow();
    List<Shown> same = at.stream().filter(s -> alike(first, s)).toList();
    double low = same.stream().mapToDouble(Shown::watts).min().orElseThrow();
    double high = same.stream().mapToDouble(Shown::watts).max().orElseThrow();
    if (high <= 1.15 * low) {
      double mean = same.stream().mapToDouble(Shown::watts).average().orElseThrow();
      return Optional.of(new Published(mean(same, mean), mean));
    }
    Shown lowest = same.stream().filter(s -> s.watts() == low).findFirst().orElseThrow();
    return Optional.of(new Published(lowest, low));
  }

  /** The mean of runs: of what was read in all of them, with the marks of any of them. */
  private static Shown mean(List<Shown> runs, double watts) {
    Shown first = runs.get(0);
    Run run = first.run();
    boolean read = runs.stream().allMatch(s -> s.run().thd().isPresent());
    Run mean =
        new Run(
            run.id(),
            run.bridged(),
            run.milliohms(),
            run.volts(),
            run.otherVolts(),
            run.loadRead(),
            read ? mean(runs, Run::thd) : OptionalInt.empty(),
            mean(runs, Run::tone),
            mean(runs, Run::supply),
            run.milliamps(),
            Optional.of(first.criterion()),
            false,
            false,
            run.cooledBefore());
    List<String> marks =
        MARKS.stream()
            .filter(mark -> runs.stream().anyMatch(s -> s.marks().contains(mark)))
            .toList();
    return new Shown(first.walk(), mean, first.criterion(), marks, first.warm(), watts);
  }

  /** What is drawn twice has a whole mean. */
  private static OptionalInt mean(List<Shown> runs, Function<Run, OptionalInt> what) {
    int sum = runs.stream().mapToInt(s -> what.apply(s.run()).orElse(0)).sum();
    return what.apply(runs.get(0).run()).isPresent()
        ? OptionalInt.of(sum / runs.size())
        : OptionalInt.empty();
  }

  /** Returns the lowest ratio to a rating that a walk shows under the conditions of that rating. */
  static OptionalDouble honesty(List<Published> published) {
    return published.stream()
        .flatMap(p -> rating(p.shown()).stream())
        .filter(r -> r.differs().isEmpty())
        .mapToDouble(OfRating::ratio)
        .min();
  }
}
