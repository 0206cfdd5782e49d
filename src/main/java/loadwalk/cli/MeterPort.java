package loadwalk.cli;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;

/** The meters of this machine, for the command that tries and serves them. */
public interface MeterPort {

  /** Asks every connected meter of a bench once; all at the same time. */
  List<Tried> tryAll(Bench bench);

  /**
   * Serves the practice bench's meters on loopback ports.
   *
   * @param seed the seed of the practice bench
   * @param faultSeed what faults of the meters are drawn from, where they are wanted
   * @throws IOException if no port can be had
   */
  Served serve(long seed, OptionalLong faultSeed) throws IOException;

  /**
   * A meter and what came of asking it.
   *
   * @param meter the meter
   * @param identity who it says it is
   * @param reading what it answered; empty for a meter read by eye
   */
  record Tried(Meter meter, Optional<Identity> identity, Optional<MeterReading> reading) {}

  /**
   * Meters being served.
   *
   * @param amplifier the amplifier that stands there
   * @param bench the bench with their connections
   * @param setting takes what is to be connected, as typed, and returns what stands there then
   * @param end what ends the service
   */
  record Served(Amplifier amplifier, Bench bench, UnaryOperator<String> setting, Closeable end) {}
}
