package loadwalk.wave.analysis;

import java.util.OptionalDouble;
import loadwalk.wave.Clipping;

/** Watches for more samples at the ends of the input's range than a sine has there. */
final class Rails {
  private final OptionalDouble step;
  private boolean overdriven;

  Rails(OptionalDouble step) {
    this.step = step;
  }

  /** Checks a stretch of samples that holds several periods. */
  void watch(double[] samples, int from, int to) {
    if (step.isEmpty()) {
      return;
    }
    double width = Math.max(step.getAsDouble(), 1e-6);
    double top = 1 - 1.5 * width;
    double bottom = -1 + 0.5 * width;
    int atTop = 0;
    int atBottom = 0;
    for (int i = from; i < to; i++) {
      atTop += samples[i] >= top ? 1 : 0;
      atBottom += samples[i] <= bottom ? 1 : 0;
    }
    // A sine that just fills the range spends this part of its time within two steps of an end.
    double undriven = Math.acos(1 - 2 * width) / Math.PI;
    overdriven |= Math.max(atTop, atBottom) > 2 * undriven * (to - from) + 4;
  }

  Clipping.Overdriven verdict() {
    if (step.isEmpty()) {
      return Clipping.Overdriven.CANNOT_TELL;
    }
    return overdriven ? Clipping.Overdriven.YES : Clipping.Overdriven.NO;
  }
}
