package loadwalk.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * The source resistance of the output, from its volts with and without the load: Rₛ = R·(V₀/V − 1),
 * damping factor = nominal R/Rₛ (IEC 60268-3, from memory). The gain of one meter cancels in V₀/V.
 * The factor's range is that of Rₛ turned over, because a small Rₛ makes any ± of it wrong.
 *
 * @param ohms the source resistance
 * @param dampingFactor empty if the resistance is not resolved
 */
record SourceResistance(Optional<Quantity> ohms, Optional<Ratio> dampingFactor) {
  private static final SourceResistance UNKNOWN =
      new SourceResistance(Optional.empty(), Optional.empty());

  /** Computes the resistance from the first step with unloaded volts; adds remarks on its basis. */
  static SourceResistance of(
      List<MeasuredStep> steps, Bench bench, double toneHertz, List<Remark> remarks) {
    for (MeasuredStep open : steps) {
      if (open.reading(ReadingId.OPEN_VOLTS).isPresent()) {
        return loadedFor(open, steps)
            .map(loaded -> compute(open, loaded, bench, toneHertz, remarks))
            .orElse(UNKNOWN);
      }
    }
    return UNKNOWN;
  }

  /** Returns the step whose loaded volts belong with the unloaded volts. */
  private static Optional<MeasuredStep> loadedFor(MeasuredStep open, List<MeasuredStep> steps) {
    if (open.ohms() > 0 && hasVolts(open)) {
      return Optional.of(open);
    }
    List<MeasuredStep> loaded =
        steps.stream()
            .filter(s -> s.kind() == Target.Kind.LOADED && hasVolts(s))
            .filter(s -> s.mode() == open.mode())
            .toList();
    Optional<MeasuredStep> same =
        loaded.stream().filter(s -> StepResult.sameOhms(s.ohms(), open.ohms())).findFirst();
    return same.isPresent()
        ? same
        : loaded.stream().max(Comparator.comparingDouble(MeasuredStep::ohms));
  }

  private static boolean hasVolts(MeasuredStep step) {
    return step.reading(ReadingId.OUTPUT_VOLTS)
        .filter(v -> v.value() > ReadingUncertainty.LEAST)
        .isPresent();
  }

  private static SourceResistance compute(
      MeasuredStep open, MeasuredStep loaded, Bench bench, double toneHertz, List<Remark> remarks) {
    if (loaded != open) {
      remarks.add(
          new Remark(
              "source-resistance-other-step",
              Sentence.of(
                  "source resistance uses the loaded volts of {} and the unloaded volts of {}:"
                      + " right only if nobody touched the generator in between",
                  loaded.stepId(),
                  open.stepId())));
    }
    Quantity unloaded =
        new ReadingUncertainty(bench, toneHertz, Sentence.of("{} open", open.stepId()), remarks)
            .of(open.readings().get(ReadingId.OPEN_VOLTS));
    ReadingUncertainty readings =
        new ReadingUncertainty(bench, toneHertz, loaded.stepId(), remarks);
    Quantity volts = readings.of(loaded.readings().get(ReadingId.OUTPUT_VOLTS));
    Load chosen = LoadChoice.of(loaded, bench, readings, remarks);
    Quantity load = chosen.hot(volts.value() * volts.value() / chosen.cold().value());
    Quantity source =
        unloaded
            .dividedBy(volts, Unit.ONE)
            .minus(Quantity.exact(1, Unit.ONE))
            .times(load, Unit.OHM);
    if (source.value() > source.expanded()) {
      return new SourceResistance(
          Optional.of(source), Optional.of(Ratio.of(loaded.ohms(), source)));
    }
    double most = Math.max(0, source.value()) + source.expanded();
    remarks.add(
        new Remark(
            "damping-factor-not-resolved",
            most > 0
                ? Sentence.of(
                    "the meter cannot tell the volts with and without load apart: the damping"
                        + " factor is at least {}",
                    Printer.UTF8.value(loaded.ohms() / most, Unit.ONE, 2))
                : "the volts with and without load are equal: no damping factor can be given"));
    return new SourceResistance(Optional.of(source), Optional.empty());
  }
}
