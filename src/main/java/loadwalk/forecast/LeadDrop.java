package loadwalk.forecast;

import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;

/** Tells the resistance of all lead runs between supply and amplifier. */
final class LeadDrop {
  private static final Wire WIRE = new Wire(Tables.stock());

  private LeadDrop() {}

  /** Returns the resistance of the runs in series at working temperature, ohms, where known. */
  static OptionalDouble ohms(Bench bench) {
    return bench.leads().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(WIRE.ohms(bench.leads(), WIRE.workingCelsius()));
  }
}
