package loadwalk.forecast.model;

import java.util.Locale;
import loadwalk.bench.Target;

/** Says what a forecast rests on, and why it is wide where it is. */
public final class Basis {
  /**
   * The scale of the errors from which a forecast is said to be wide for it, times the usual.
   * Chosen by hand.
   */
  private static final double CONTRADICTED = 3;

  /** The probability from which one kind of rails is named. Chosen by hand. */
  private static final double TOLD = 0.9;

  private Basis() {}

  /** Returns one sentence. */
  public static String sentence(WalkModel model, Target target) {
    StringBuilder text = new StringBuilder("Rests on ").append(source(model));
    if (model.prior().absurd()) {
      text.append("; a rating that cannot be is left out");
    }
    double regulated = model.output().regulatedProbability();
    if (regulated > TOLD) {
      text.append("; the rails look regulated");
    } else if (regulated < 1 - TOLD) {
      text.append("; the rails follow the supply");
    }
    double scale = model.output().scale();
    if (scale > CONTRADICTED) {
      text.append(
          String.format(
              Locale.ROOT,
              "; wide because the readings scatter %.0f times more than one amplifier explains",
              scale));
    }
    if (target.kind() == Target.Kind.IDLE && !model.idle().measured()) {
      text.append("; idle current is not told by ratings");
    }
    return text.append('.').toString();
  }

  private static String source(WalkModel model) {
    if (model.output().measured()) {
      return "the readings taken so far";
    }
    if (model.prior().rated()) {
      return "the ratings alone, which may be off by 3 dB either way";
    }
    return model.prior().fused()
        ? "the fuses alone, which tell only the order of size"
        : "nothing but the kind of apparatus, so the bands are wide";
  }
}
