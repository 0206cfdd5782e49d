package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Target;
import loadwalk.text.Sentence;

/** Words what a forecast is based on and, if it is wide, why. */
public final class Basis {
  /**
   * Error scale, relative to the usual, from which the basis calls a forecast wide because of
   * contradicting readings. Chosen by hand.
   */
  private static final double CONTRADICTED = 3;

  /** Probability from which one kind of rails is named. Chosen by hand. */
  private static final double TOLD = 0.9;

  private Basis() {}

  /** Returns short sentences, starting with what the forecast is based on. */
  public static String sentences(WalkModel model, Target target) {
    List<String> said = new ArrayList<>();
    said.add(source(model));
    if (model.prior().absurd()) {
      said.add("A rating that cannot be true is left out.");
    }
    double regulated = model.output().regulatedProbability();
    if (regulated > TOLD) {
      said.add("The rails look regulated.");
    } else if (regulated < 1 - TOLD) {
      said.add("The rails follow the supply.");
    }
    double scale = model.output().scale();
    if (scale > CONTRADICTED) {
      said.add(
          Sentence.of(
              "Wide, because the readings scatter {} times more than one amplifier explains.",
              Math.round(scale)));
    }
    if (target.kind() == Target.Kind.IDLE && !model.idle().measured()) {
      said.add("Ratings say nothing of idle current.");
    }
    return String.join(" ", said);
  }

  private static String source(WalkModel model) {
    if (model.output().measured()) {
      return "From the readings so far.";
    }
    if (model.prior().rated()) {
      return "From the ratings alone, which may be off by 3 dB either way.";
    }
    return model.prior().fused()
        ? "From the fuses alone, good for the order of magnitude only."
        : "From the kind of amplifier alone, so the bands are wide.";
  }
}
