package loadwalk.experiment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Slip;

/**
 * Takes a rule that knows the population through the same walks and slips as {@link
 * ForecastExperiment}, to see how far any rule could come.
 *
 * <p>Its threshold is the one at which half a percent of the honest entries are doubted, chosen on
 * the walks themselves. A step is judged once, whole; what was measured before it is honest.
 */
final class CrowdExperiment {
  private static final double ALLOWED = 0.005;

  private final Map<String, Map<Results.Standing, List<Made>>> slips = new TreeMap<>();
  private final List<Double> honest = new ArrayList<>();
  private final Arrangement arrangement;
  private int entriesJudged;

  private record Made(Slip slip, CrowdRule.Verdict verdict) {}

  private CrowdExperiment(Arrangement arrangement) {
    this.arrangement = arrangement;
  }

  /** Runs the rule over a population and returns its table. */
  static CrowdExperiment run(
      Population population, Crowd crowd, long seed, int count, Arrangement arrangement) {
    CrowdExperiment experiment = new CrowdExperiment(arrangement);
    for (int number = 0; number < count; number++) {
      experiment.take(crowd, new Entries(population.specimen(seed, number), arrangement));
    }
    return experiment;
  }

  private void take(Crowd crowd, Entries entries) {
    Crowd.Member walk = Crowd.Member.of(new Entries(entries.specimen(), Arrangement.AMPS));
    CrowdRule[] rules = new CrowdRule[Ladder.STEPS.size()];
    Map<ReadingId, Double> before = entries.honest(0);
    entriesJudged += before.size();
    for (int step = Ladder.FIRST_LOADED; step < rules.length; step++) {
      if (entries.canRun(step)) {
        rules[step] =
            new CrowdRule(new CrowdDensity(crowd, walk, step, arrangement.withAmps), step, before);
        before = entries.honest(step);
        entriesJudged += before.size();
        honest.add(rules[step].weigh(before).logOdds());
      } else {
        before = Map.of();
      }
    }
    for (Slip slip : Slip.values()) {
      slipOnce(slip, entries, rules);
    }
  }

  private void slipOnce(Slip slip, Entries entries, CrowdRule[] rules) {
    List<Integer> steps =
        SlipMaker.stepsFor(slip, arrangement).stream().filter(step -> rules[step] != null).toList();
    if (slip == Slip.UNNAMED || steps.isEmpty()) {
      return;
    }
    int step = steps.get(entries.specimen().random("step " + slip.code(), 0).nextInt(steps.size()));
    if (new SlipMaker(entries).make(slip, step, rules[step].honestBefore())
        instanceof SlipMaker.Made made) {
      slips
          .computeIfAbsent(
              slip.code() + ", " + made.how(), k -> new EnumMap<>(Results.Standing.class))
          .computeIfAbsent(Results.Standing.of(step, s -> rules[s] != null), k -> new ArrayList<>())
          .add(new Made(slip, rules[step].weigh(made.entries())));
    }
  }

  /** Returns ln of the odds above which half a percent of the honest entries lie. */
  private double threshold() {
    List<Double> sorted = honest.stream().sorted(Comparator.reverseOrder()).toList();
    return sorted.get((int) Math.min(sorted.size() - 1, ALLOWED * entriesJudged));
  }

  /** Returns the table, all slips together first. */
  String table(String title) {
    double needed = threshold();
    Tally doubted = new Tally();
    Tally named = new Tally();
    StringBuilder rows = new StringBuilder();
    slips.forEach(
        (what, byStanding) -> {
          rows.append(String.format("    %-38s", what));
          byStanding.forEach(
              (standing, all) -> {
                Tally seen = new Tally();
                Tally right = new Tally();
                for (Made made : all) {
                  boolean doubt = made.verdict().logOdds() > needed;
                  seen.add(doubt);
                  right.add(doubt && made.verdict().slip() == made.slip());
                }
                rows.append(
                    String.format(
                        Locale.ROOT,
                        "  %s %.1f / %.1f (%d)",
                        standing.words,
                        seen.percent(),
                        right.percent(),
                        seen.tries()));
                if (arrangement.withAmps
                    || !Results.HIDDEN_FROM_VOLTS.contains(all.get(0).slip())) {
                  doubted.addAll(seen);
                  named.addAll(right);
                }
              });
          rows.append('\n');
        });
    return String.format(
        Locale.ROOT,
        "%n== %s, %s, knows the population, %.1f %% of honest entries doubted%n"
            + "  slips doubted %.2f %%, named right %.2f %%, of %d%n%s",
        title,
        arrangement.words,
        100 * ALLOWED,
        doubted.percent(),
        named.percent(),
        doubted.tries(),
        rows);
  }

  double doubtedPercent(String what) {
    double needed = threshold();
    Tally seen = new Tally();
    slips.getOrDefault(what, Map.of()).values().stream()
        .flatMap(List::stream)
        .forEach(made -> seen.add(made.verdict().logOdds() > needed));
    return seen.percent();
  }
}
