package loadwalk.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Compares each bridged step with the stereo step in which each channel drove the same load. By the
 * definition of a bridge, two equal channels give V_bridged(R) = 2·V_stereo(R/2).
 *
 * <p>The gain of one meter cancels in the ratio. If the loads are not exactly R and R/2, the volts
 * shift by r/(R + r) of the loads' relative error, where r is the fitted series resistance.
 */
final class Bridges {
  private Bridges() {}

  /**
   * Returns one comparison for each bridged step that has a stereo counterpart.
   *
   * @param steps the steps whose results represent their loads
   * @param fit the output modelled as one source, if known
   */
  static List<BridgeComparison> of(List<StepResult> steps, Optional<OutputFit> fit) {
    double series = fit.map(f -> Math.max(0, f.seriesOhms().value())).orElse(0.0);
    List<BridgeComparison> comparisons = new ArrayList<>();
    for (StepResult bridged : steps) {
      if (bridged.mode() != Mode.BRIDGED) {
        continue;
      }
      steps.stream()
          .filter(s -> s.mode() == Mode.STEREO && s.criterion() == bridged.criterion())
          .filter(s -> s.criterion().isStated())
          .filter(s -> StepResult.sameOhms(s.ohms(), bridged.ohms() / 2))
          .filter(s -> s.outputVolts().orElseThrow().value() > ReadingUncertainty.LEAST)
          .findFirst()
          .ifPresent(stereo -> comparisons.add(compare(bridged, stereo, series)));
    }
    return comparisons;
  }

  private static BridgeComparison compare(StepResult bridged, StepResult stereo, double series) {
    Quantity ratio =
        channelVolts(bridged, series).dividedBy(channelVolts(stereo, series), Unit.ONE);
    double off = ratio.value() - 1;
    boolean within = Math.abs(off) <= ratio.expanded();
    String text =
        Sentence.of(
            within
                ? "{} gives {} times twice the volts of {}, as two equal channels do"
                : "{} gives {} times twice the volts of {}, unlike two equal channels",
            bridged.stepId(),
            Printer.UTF8.quantity(ratio),
            stereo.stepId());
    return new BridgeComparison(bridged.stepId(), stereo.stepId(), ratio, within, text);
  }

  private static Quantity channelVolts(StepResult step, double series) {
    double part = step.mode() == Mode.BRIDGED ? 0.5 : 1;
    Quantity volts = step.outputVolts().orElseThrow().scaledBy(part);
    Quantity ohms = step.loadOhms().orElseThrow().scaledBy(part);
    double r = ohms.value();
    double byOhms = volts.value() * series / (r * (r + series));
    return volts.plus(ohms.mapped(0, byOhms, Unit.VOLT));
  }
}
