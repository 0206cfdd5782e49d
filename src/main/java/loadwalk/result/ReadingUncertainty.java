package loadwalk.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Adds to a raw reading the uncertainty of the meter that took it.
 *
 * <p>A specification of ±(percent of reading + digits) is treated as two rectangular distributions
 * of half-width a, each with u = a/√3 (JCGM 100:2008, 4.3.7). They stay separate sources: the
 * percent part is the meter's gain, the same for every reading of one function; the digits part
 * varies from reading to reading. A reading typed with fewer digits than the meter shows, or read
 * from a meter whose specification has no digits, adds ± half a step of the last digit, also
 * rectangular (JCGM 100:2008, F.2.2.1). If the meter took repeated readings, their scatter is added
 * as type A (4.2.2) with its degrees of freedom (4.2.6).
 */
final class ReadingUncertainty {
  /**
   * Half-width assumed for a meter that the bench does not list, percent of reading. Common
   * practice, no source.
   */
  static final double ASSUMED_PERCENT = 1;

  /**
   * Half-width assumed for a meter that the bench does not list, steps of the last digit typed.
   * Common practice, no source.
   */
  static final double ASSUMED_DIGITS = 2;

  /**
   * The smallest reading, in its unit, used as a divisor; anything less counts as zero on a bench.
   */
  static final double LEAST = 1e-6;

  private final Bench bench;
  private final double toneHertz;
  private final String stepId;
  private final List<Remark> remarks;

  ReadingUncertainty(Bench bench, double toneHertz, String stepId, List<Remark> remarks) {
    this.bench = bench;
    this.toneHertz = toneHertz;
    this.stepId = stepId;
    this.remarks = remarks;
  }

  /** Returns a reading of a step with its uncertainty, if it was taken. */
  Optional<Quantity> of(MeasuredStep step, ReadingId id) {
    return step.reading(id).map(this::of);
  }

  /** Returns the reading with its uncertainty; adds a remark if the uncertainty is assumed. */
  Quantity of(TakenReading taken) {
    ReadingId id = taken.id();
    if (taken.captured().isPresent()) {
      return captured(taken, taken.captured().get());
    }
    Optional<Meter> named = bench.meterFor(id);
    Meter meter = named.orElseGet(() -> assumed(taken));
    if (named.isEmpty()) {
      sayAssumed(id);
    } else {
      sayBand(meter, id);
    }
    double step = meter.resolution() > 0 ? meter.resolution() : taken.resolution();
    String label = Sentence.of("{} {}", meter.label(), meter.reads().label());
    String reading =
        meter.reads() == id
            ? Sentence.of("{} {}", label, stepId)
            : Sentence.of("{} ({}) {}", label, id.label(), stepId);
    Map<String, Double> halfWidths = new LinkedHashMap<>();
    halfWidths.put(Sentence.of("{} gain", label), Math.abs(taken.value()) * meter.percent() / 100);
    halfWidths.put(Sentence.of("{} digit", reading), meter.digits() * step);
    if (taken.resolution() > step || meter.digits() == 0) {
      double typed = Math.max(step, taken.resolution());
      halfWidths.put(Sentence.of("{} as typed", reading), typed / 2);
    }
    Quantity quantity = Quantity.exact(taken.value(), id.unit());
    for (Map.Entry<String, Double> part : halfWidths.entrySet()) {
      quantity =
          part.getValue() > 0 ? quantity.withRectangular(part.getKey(), part.getValue()) : quantity;
    }
    return taken.scatter() > 0
        ? quantity.withScatter(
            Sentence.of("{} scatter", reading), taken.scatter(), taken.scatterDegrees())
        : quantity;
  }

  /**
   * Returns a reading taken from a captured wave. The wave gives the scatter of its own reading;
   * its calibration applies to every reading taken with it. THD is a ratio, so a calibration in
   * volts does not affect it.
   */
  private Quantity captured(TakenReading taken, TakenReading.Captured by) {
    ReadingId id = taken.id();
    Quantity quantity = Quantity.exact(taken.value(), id.unit());
    if (taken.scatter() > 0) {
      quantity =
          quantity.withPart(Sentence.of("capture {} {}", id.label(), stepId), taken.scatter());
    }
    if (id == ReadingId.THD_PERCENT) {
      return quantity;
    }
    if (by.calibrationU().isEmpty()) {
      remarks.add(
          new Remark(
              "calibration-assumed",
              "the calibration of a captured wave states no uncertainty: taken as ±1 % of"
                  + " reading"));
    }
    String source = Sentence.of("capture calibration, {}", by.calibration());
    double value = Math.abs(taken.value());
    return by.calibrationU().isPresent()
        ? quantity.withPart(source, value * by.calibrationU().getAsDouble())
        : quantity.withRectangular(source, value * ASSUMED_PERCENT / 100);
  }

  private static Meter assumed(TakenReading taken) {
    return new Meter(
        "assumed meter",
        taken.id().meteredAs(),
        ASSUMED_PERCENT,
        ASSUMED_DIGITS,
        taken.resolution(),
        Optional.empty());
  }

  private void sayAssumed(ReadingId id) {
    remarks.add(
        new Remark(
            "meter-assumed",
            Sentence.of(
                "no meter is entered for {}: taken as ±(1 % of reading + 2 of the last digit"
                    + " typed)",
                id.label())));
  }

  private void sayBand(Meter meter, ReadingId id) {
    boolean carriesTone =
        id.meteredAs() == ReadingId.OUTPUT_VOLTS
            || id == ReadingId.OUTPUT_WATTS
            || id == ReadingId.THD_PERCENT;
    if (!carriesTone || meter.band().isEmpty()) {
      return;
    }
    Meter.Band band = meter.band().get();
    if (!band.holds(toneHertz)) {
      remarks.add(
          new Remark(
              "meter-band",
              Sentence.of(
                  "{} is specified from {} to {} and the tone is {}: its accuracy there is unknown",
                  meter.label(),
                  Printer.UTF8.exact(band.lowHertz(), Unit.HERTZ),
                  Printer.UTF8.exact(band.highHertz(), Unit.HERTZ),
                  Printer.UTF8.exact(toneHertz, Unit.HERTZ))));
    }
  }
}
