package loadwalk.meter;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Unit;

/** Meters and questions of tests. */
final class Connections {
  static final int PATIENCE = 500;
  static final Identity WHO = new Identity("Halvorsen & Pike", "Loopback 6", "0", "1.0");
  static final Question VOLTS = new Question("MEAS:VOLT:AC?", Unit.VOLT, 1, PATIENCE);
  static final Question AMPS = new Question("MEAS:CURR:DC?", Unit.AMPERE, 1, PATIENCE);

  private Connections() {}

  static SimulatedInstrument instrument(
      Function<String, OptionalDouble> readings, OptionalLong faultSeed) {
    return new SimulatedInstrument(WHO, readings, faultSeed);
  }

  static Meter meter(double resolution) {
    Connection by =
        new Connection(new Connection.Tcp("127.0.0.1", 5025), "MEAS:VOLT:AC?", "V", 1, PATIENCE);
    return new Meter("DMM", ReadingId.OUTPUT_VOLTS, 0.5, 2, resolution, Optional.empty())
        .connectedBy(by);
  }
}
