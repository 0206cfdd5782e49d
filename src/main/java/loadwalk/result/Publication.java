package loadwalk.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.result.PublishedPower.Spread;
import loadwalk.text.Sentence;

/**
 * Chooses the power that a sheet states for each load.
 *
 * <p>A value at the stated limit takes precedence, then one at the onset of clipping, then one
 * below both; criteria are never mixed, and what is impossible, in doubt or stood by counts only
 * where there is nothing else, and so do runs under other conditions than the best of them. Of runs
 * that agree the mean is published; of runs that disagree the lowest, with the spread.
 */
final class Publication {
  private static final Comparator<StepResult> BY_TOTAL =
      Comparator.comparingDouble(run -> run.totalWatts().orElseThrow().value());

  private final Ratings ratings;

  private Publication(Ratings ratings) {
    this.ratings = ratings;
  }

  /**
   * Returns the published power by the id of the first step at each load.
   *
   * @param ratings compares a mean of runs with the rating
   */
  static Map<String, PublishedPower> of(List<StepResult> steps, Ratings ratings) {
    Map<String, PublishedPower> published = new LinkedHashMap<>();
    List<StepResult> left = new ArrayList<>(steps.stream().filter(StepResult::isMeasured).toList());
    while (!left.isEmpty()) {
      StepResult first = left.get(0);
      List<StepResult> runs = left.stream().filter(first::sameLoad).toList();
      left.removeIf(first::sameLoad);
      published.put(first.stepId(), new Publication(ratings).choose(runs));
    }
    return published;
  }

  private PublishedPower choose(List<StepResult> runs) {
    List<StepResult> fit = runs.stream().filter(StepResult::isRanked).toList();
    List<StepResult> left = fit.isEmpty() ? runs : fit;
    Criterion best =
        left.stream().map(StepResult::criterion).min(Comparator.naturalOrder()).orElseThrow();
    List<StepResult> same = alike(left.stream().filter(r -> r.criterion() == best).toList());
    String others =
        same.size() < runs.size() ? "; runs under other conditions or in doubt do not count" : "";
    if (same.size() == 1) {
      String why =
          others.isEmpty() ? "" : Sentence.of("the only run read {}{}", best.text(), others);
      return power(same, why, Optional.empty());
    }
    if (!best.isStated()) {
      return power(
          same.subList(0, 1),
          Sentence.of("the first of {} runs, all read {}{}", same.size(), best.text(), others),
          Optional.empty());
    }
    return allAgree(same) ? mean(same, others) : lowest(same, others);
  }

  /**
   * Returns the runs that can be compared: those alike to the one with the fewest marks, so that
   * one read cold or at other supply volts is not taken into a mean.
   */
  private static List<StepResult> alike(List<StepResult> runs) {
    StepResult first =
        runs.stream().min(Comparator.comparingInt(run -> run.marks().size())).orElseThrow();
    return runs.stream().filter(run -> run.conditions().isLike(first.conditions())).toList();
  }

  private PublishedPower mean(List<StepResult> runs, String others) {
    String why = Sentence.of("the mean of {} runs that agree{}", runs.size(), others);
    return power(runs, why, Optional.empty());
  }

  private PublishedPower lowest(List<StepResult> runs, String others) {
    StepResult lowest = runs.stream().min(BY_TOTAL).orElseThrow();
    StepResult highest = runs.stream().max(BY_TOTAL).orElseThrow();
    String why = Sentence.of("the lowest of {} runs that disagree{}", runs.size(), others);
    Spread spread =
        new Spread(lowest.totalWatts().orElseThrow(), highest.totalWatts().orElseThrow());
    return power(List.of(lowest), why, Optional.of(spread));
  }

  private static boolean allAgree(List<StepResult> runs) {
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        if (RecheckComparison.of(runs.get(i), runs.get(j)).outcome()
            != RecheckAgreement.Outcome.AGREES) {
          return false;
        }
      }
    }
    return true;
  }

  /** Returns the mean of runs, or the one run. */
  private PublishedPower power(List<StepResult> runs, String why, Optional<Spread> spread) {
    Conditions conditions = Conditions.ofMean(runs.stream().map(StepResult::conditions).toList());
    List<Quantity> channels = channels(runs);
    Quantity total = mean(runs.stream().map(r -> r.totalWatts().orElseThrow()).toList());
    return new PublishedPower(
        conditions,
        runs.stream().flatMap(r -> r.marks().stream()).distinct().sorted().toList(),
        runs.stream().map(StepResult::stepId).toList(),
        channels,
        total,
        spread,
        runs.size() == 1 ? runs.get(0).rating() : rating(runs, conditions, channels),
        why,
        Budget.ofMean(total, runs));
  }

  private Optional<RatingComparison> rating(
      List<StepResult> runs, Conditions conditions, List<Quantity> channels) {
    Quantity lower =
        channels.stream().min(Comparator.comparingDouble(Quantity::value)).orElseThrow();
    boolean other = channels.indexOf(lower) > 0;
    List<Quantity> volts = runs.stream().flatMap(r -> r.supplyVolts().stream()).toList();
    return ratings.of(
        conditions,
        lower,
        mean(runs.stream().map(r -> (other ? r.otherOhms() : r.loadOhms()).orElseThrow()).toList()),
        volts.size() == runs.size() ? Optional.of(mean(volts)) : Optional.empty());
  }

  /** Returns the mean of each channel that was read in every run. */
  private static List<Quantity> channels(List<StepResult> runs) {
    int read = runs.stream().mapToInt(r -> r.channelWatts().size()).min().orElseThrow();
    List<Quantity> channels = new ArrayList<>();
    for (int i = 0; i < read; i++) {
      int channel = i;
      channels.add(mean(runs.stream().map(r -> r.channelWatts().get(channel)).toList()));
    }
    return channels;
  }

  private static Quantity mean(List<Quantity> watts) {
    return watts.stream().reduce(Quantity::plus).orElseThrow().scaledBy(1.0 / watts.size());
  }
}
