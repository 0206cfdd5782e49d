package loadwalk.result;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.text.Sentence;

/**
 * The output of one step: volts and watts in one load, and watts in the other if it was measured.
 *
 * @param atLimit whether it was worked out at the limit from pairs of volts and THD near it
 * @param volts RMS volts across one load
 * @param power the power in that load
 * @param other the power in the other load
 */
record Output(
    boolean atLimit, Optional<Quantity> volts, Optional<Power> power, Optional<Quantity> other) {

  /** Computes the output of a step into a load; empty without volts or watts. */
  static Output of(
      MeasuredStep step,
      Quantity loadOhms,
      ReadingUncertainty readings,
      Optional<Quantity> limitVolts,
      List<Remark> remarks) {
    if (limitVolts.isPresent()) {
      if (step.reading(ReadingId.OTHER_OUTPUT_VOLTS).isPresent()) {
        remarks.add(
            new Remark(
                "other-channel-left-out",
                "the other channel was not read at the interpolated limit: it is left out"));
      }
      Power power = Power.ofVolts(limitVolts.get(), loadOhms, step.stepId());
      return new Output(true, limitVolts, Optional.of(power), Optional.empty());
    }
    Optional<Quantity> other =
        readings
            .of(step, ReadingId.OTHER_OUTPUT_VOLTS)
            .map(
                v ->
                    Power.ofVolts(v, loadOhms, Sentence.of("{} other channel", step.stepId()))
                        .watts());
    Optional<Quantity> volts = readings.of(step, ReadingId.OUTPUT_VOLTS);
    if (volts.isPresent()) {
      Power power = Power.ofVolts(volts.get(), loadOhms, step.stepId());
      return new Output(false, volts, Optional.of(power), other);
    }
    Optional<Quantity> shown = readings.of(step, ReadingId.OUTPUT_WATTS);
    if (shown.isEmpty() || shown.get().value() < 0) {
      return new Output(false, Optional.empty(), Optional.empty(), other);
    }
    remarks.add(
        new Remark(
            "volts-from-watts",
            "watts were typed: volts are worked back from the nominal load, taken as the load set"
                + " on the meter"));
    Power power = Power.ofWatts(shown.get(), step.ohms(), loadOhms);
    Quantity worked = Power.voltsOfWatts(shown.get(), step.ohms());
    return new Output(false, Optional.of(worked), Optional.of(power), other);
  }
}
