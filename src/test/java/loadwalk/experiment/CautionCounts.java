package loadwalk.experiment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;

/** Counts what briefs said beside what was true. */
final class CautionCounts {
  /** From here on a part is exceeded by a third. */
  static final double A_THIRD = 4.0 / 3;

  private static final int WORST = 5;

  final Tally clearThoughExceeded = new Tally();
  final Tally clearThoughShuttingOff = new Tally();
  final Tally missedByAThird = new Tally();
  final Tally haltedForNothing = new Tally();
  final List<Integer> cautionsPerWalk = new ArrayList<>();
  final List<Integer> armedPerWalk = new ArrayList<>();
  final List<Case> missed = new ArrayList<>();
  private final Map<String, Integer> verdicts = new TreeMap<>();
  private final Map<String, Integer> said = new TreeMap<>();
  private final Map<String, Integer> exceeded = new TreeMap<>();
  private final Map<String, Integer> needlessly = new TreeMap<>();

  /** Where the first needless halt of a walk stands; what follows knows no reading either. */
  private final Map<String, Integer> first = new TreeMap<>();

  /** What went wrong. */
  enum Kind {
    CLEAR("clear though exceeded"),
    SHUTS_OFF("clear though it shuts off"),
    A_THIRD("exceeded by a third and not halted"),
    FOR_NOTHING("halted with nothing exceeded");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** A step that went wrong, with all that is needed to do it again. */
  record Case(Kind kind, double badness, TrialBench bench, List<CautionWalk.Step> walk, int at) {
    @Override
    public String toString() {
      CautionWalk.Step step = walk.get(at);
      String before =
          walk.subList(0, at).stream()
              .filter(s -> !s.typed().isEmpty())
              .map(s -> s.id() + " " + s.typed())
              .collect(Collectors.joining("; "));
      return String.format(
          Locale.ROOT,
          "%s (%.2f): %s, %s%n  true: %s%n  said: %s%n  bands: %s%n  demand: %s%n  %s%n  %s%n"
              + "  %s%n  before: %s",
          kind.words,
          badness,
          bench.name(),
          step.id(),
          step.shares(),
          step.brief().cautions(),
          step.brief().readings(),
          step.brief().demand(),
          bench.amplifier(),
          bench.bench(),
          bench.limits(),
          before);
    }
  }

  void add(TrialBench bench, List<CautionWalk.Step> walk) {
    int cautions = 0;
    int armed = 0;
    boolean firstNeedless = true;
    for (int at = 0; at < walk.size(); at++) {
      CautionWalk.Step step = walk.get(at);
      cautions += step.brief().cautions().size();
      armed += step.asksToArm() ? 1 : 0;
      for (Caution caution : step.brief().cautions()) {
        said.merge(caution.gravity().word() + " " + caution.code(), 1, Integer::sum);
      }
      if (step.drives()) {
        count(bench, walk, at);
        if (firstNeedless && isNeedless(step)) {
          firstNeedless = false;
          first.merge(step.id() + ": " + step.brief().basis(), 1, Integer::sum);
        }
      }
    }
    cautionsPerWalk.add(cautions);
    armedPerWalk.add(armed);
  }

  private void count(TrialBench bench, List<CautionWalk.Step> walk, int at) {
    CautionWalk.Step step = walk.get(at);
    Verdict verdict = step.brief().verdict();
    double entered = step.worstEntered();
    verdicts.merge(verdict.word(), 1, Integer::sum);
    step.shares().stream()
        .filter(Exceeded::isReal)
        .forEach(share -> exceeded.merge(share.part() + " " + verdict.word(), 1, Integer::sum));
    boolean clear = verdict == Verdict.CLEAR;
    boolean shuts = step.worst() > 1 && entered <= 1;
    note(clearThoughExceeded, clear && entered > 1, Kind.CLEAR, entered, bench, walk, at);
    note(clearThoughShuttingOff, clear && shuts, Kind.SHUTS_OFF, step.worst(), bench, walk, at);
    boolean third = entered >= A_THIRD;
    note(missedByAThird, third && verdict != Verdict.HALT, Kind.A_THIRD, entered, bench, walk, at);
    boolean needless = isNeedless(step);
    if (needless) {
      step.brief().cautions().stream()
          .filter(caution -> caution.gravity() == Verdict.HALT)
          .forEach(caution -> needlessly.merge(caution.code(), 1, Integer::sum));
    }
    note(haltedForNothing, needless, Kind.FOR_NOTHING, 1 - step.worst(), bench, walk, at);
  }

  private static boolean isNeedless(CautionWalk.Step step) {
    return step.brief().verdict() == Verdict.HALT && step.worst() <= 1;
  }

  private void note(
      Tally tally,
      boolean wrong,
      Kind kind,
      double badness,
      TrialBench bench,
      List<CautionWalk.Step> walk,
      int at) {
    tally.add(wrong);
    if (wrong) {
      missed.add(new Case(kind, badness, bench, walk, at));
    }
  }

  static double median(List<Integer> numbers) {
    List<Integer> sorted = numbers.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2.0;
  }

  static double mean(List<Integer> numbers) {
    return numbers.stream().mapToInt(n -> n).average().orElse(Double.NaN);
  }

  /** Returns the worst cases of each kind. */
  String worst() {
    StringBuilder text = new StringBuilder();
    for (Kind kind : Kind.values()) {
      missed.stream()
          .filter(one -> one.kind == kind)
          .sorted(Comparator.comparingDouble(Case::badness).reversed())
          .limit(WORST)
          .forEach(one -> text.append(one).append(System.lineSeparator()));
    }
    return text.toString();
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d walks, %d driven steps %s%n"
            + "clear though exceeded: %d (%.3f %%); clear though it shuts off: %d%n"
            + "exceeded by a third and not halted: %d (%.3f %%)%n"
            + "halted with nothing exceeded: %d (%.2f %%)%n"
            + "cautions a walk: middle %.1f, mean %.2f; asked to arm: middle %.1f, mean %.2f%n"
            + "exceeded, by what was said: %s%nhalted with nothing exceeded: %s%n"
            + "the first in a walk: %s%nsaid: %s%n",
        cautionsPerWalk.size(),
        clearThoughExceeded.tries(),
        verdicts,
        clearThoughExceeded.hits(),
        clearThoughExceeded.percent(),
        clearThoughShuttingOff.hits(),
        missedByAThird.hits(),
        missedByAThird.percent(),
        haltedForNothing.hits(),
        haltedForNothing.percent(),
        median(cautionsPerWalk),
        mean(cautionsPerWalk),
        median(armedPerWalk),
        mean(armedPerWalk),
        exceeded,
        needlessly,
        first,
        said);
  }
}
