package loadwalk.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.ToldOnce;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.WalkState;

/** Makes the brief of a step from everything known before the step. */
public final class Briefing {
  private static final double LEVEL = 0.95;

  private Briefing() {}

  /** Returns the brief of a step. */
  public static Forecast of(Forecaster forecaster, WalkState state, PlannedStep planned) {
    Optional<Target> target = Targets.of(state, planned);
    if (target.isEmpty()) {
      return withoutLoad(planned);
    }
    Forecast forecast =
        ToldOnce.after(
            briefsBefore(state, planned),
            forecaster.forecast(Targets.evidenceBefore(state, planned.id()), target.get()));
    List<Caution> more = new ArrayList<>();
    heldByDoubt(state, planned).ifPresent(more::add);
    cooled(state, target.get()).ifPresent(more::add);
    return more.isEmpty() ? forecast : adding(forecast, more);
  }

  private static List<Forecast> briefsBefore(WalkState state, PlannedStep planned) {
    return state.plan().stream()
        .takeWhile(before -> !before.equals(planned))
        .flatMap(before -> state.step(before.id()).brief().stream())
        .toList();
  }

  private static Forecast withoutLoad(PlannedStep planned) {
    String basis =
        planned.step().repeats().isPresent()
            ? "There is no measured step to recheck yet."
            : "This step drives no load at the limit, so there is no forecast.";
    return new Forecast(
        planned.id(), LEVEL, Map.of(), Forecast.Demand.unknown(), List.of(), Verdict.CLEAR, basis);
  }

  /**
   * Returns a caution if another step has an open doubt, which holds every step that loads the
   * amplifier.
   */
  private static Optional<Caution> heldByDoubt(WalkState state, PlannedStep planned) {
    return state.openDoubts().stream()
        .filter(d -> !d.stepId().equals(planned.id()))
        .findFirst()
        .map(
            d ->
                new Caution(
                    "doubt-open",
                    Verdict.HEED,
                    Sentence.of(
                        "The doubt on {}, {}, is not answered yet. Heavy steps wait until it is.",
                        d.stepId(),
                        d.reading().label()),
                    1));
  }

  /** Tells whether the brief of the current step says a text among its cautions. */
  static boolean tells(WalkState state, String text) {
    return state
        .current()
        .flatMap(planned -> Targets.of(state, planned))
        .flatMap(target -> cooled(state, target))
        .filter(caution -> caution.text().equals(text))
        .isPresent();
  }

  private static Optional<Caution> cooled(WalkState state, Target target) {
    return target.kind() == Target.Kind.LOADED
        ? state.cooled().map(why -> new Caution("cooled", Verdict.HEED, why, 0.9))
        : Optional.empty();
  }

  private static Forecast adding(Forecast forecast, List<Caution> more) {
    List<Caution> all = new ArrayList<>(forecast.cautions());
    all.addAll(more);
    all.sort(
        Comparator.comparing(Caution::gravity).thenComparingDouble(Caution::severity).reversed());
    Verdict verdict = forecast.verdict();
    for (Caution caution : more) {
      verdict = verdict.graver(caution.gravity());
    }
    return forecast.with(all, verdict);
  }
}
