package loadwalk.app.meter;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.cli.MeterPort;
import loadwalk.meter.Act;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;
import loadwalk.meter.SimulatedInstrument;
import loadwalk.text.Sentence;

/** Tries the meters of a bench, and serves those of the practice bench. */
public final class MeterTrial implements MeterPort {
  private static final long PATIENCE_MILLIS = 10_000;

  private final Port.Maker ports;
  private final Clocks clocks;

  /** Makes the trial with ports and clocks of the machine. */
  public MeterTrial(Port.Maker ports, Clocks clocks) {
    this.ports = ports;
    this.clocks = clocks;
  }

  @Override
  public List<Tried> tryAll(Bench bench) {
    List<Meter> meters = MeterLinks.connected(bench);
    CountDownLatch waiting = new CountDownLatch(meters.size());
    Map<Meter, Identity> identities = new ConcurrentHashMap<>();
    Map<Meter, MeterReading> readings = new ConcurrentHashMap<>();
    MeterLinks links =
        MeterLinks.start(
            bench,
            ports,
            clocks,
            (meter, news) ->
                news.to(
                    new Act.Listener() {
                      @Override
                      public void heard(MeterReading reading) {
                        if (readings.put(meter, reading) == null) {
                          waiting.countDown();
                        }
                      }

                      @Override
                      public void identified(Identity identity) {
                        identities.put(meter, identity);
                      }
                    }));
    try (links) {
      // A meter that has not answered by then is reported as silent.
      boolean all = waiting.await(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
      String none = all ? "no answer" : "no answer in time";
      return bench.meters().stream()
          .map(
              meter ->
                  new Tried(
                      meter,
                      Optional.ofNullable(identities.get(meter)),
                      meter
                          .connection()
                          .map(by -> readings.getOrDefault(meter, new MeterReading.Silent(none)))))
          .toList();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return List.of();
    }
  }

  @Override
  public Served serve(long seed, OptionalLong faultSeed) throws IOException {
    PracticeStand stand = new PracticeStand(seed, clocks);
    Bench described = stand.rig().bench().described();
    List<MeterServer> servers = new ArrayList<>();
    List<Meter> meters = new ArrayList<>();
    for (Meter meter : described.meters()) {
      String query = QUERIES.getOrDefault(meter.reads(), "FETC?");
      SimulatedInstrument instrument =
          new SimulatedInstrument(
              new Identity(
                  "Loadwalk", Sentence.of("practice {}", meter.label()), String.valueOf(seed), "1"),
              asked ->
                  asked.equalsIgnoreCase(query)
                      ? stand.read(meter.reads())
                      : OptionalDouble.empty(),
              faultSeed);
      MeterServer server =
          new MeterServer(instrument, Connection.Tcp.SCPI_RAW + servers.size(), clocks);
      servers.add(server);
      String unit = meter.reads().unit().asciiSymbol();
      meters.add(
          meter.connectedBy(
              new Connection(server.line(), query, unit, 1, Connection.DEFAULT_ANSWER_MILLIS)));
    }
    return new Served(
        stand.rig().amplifier().printed(),
        described.with(meters),
        stand::set,
        () -> closeAll(servers));
  }

  private static void closeAll(List<MeterServer> servers) throws IOException {
    for (MeterServer server : servers) {
      server.close();
    }
  }

  /** SCPI-1999, chapter 3: MEASure with the function's short name. */
  private static final Map<ReadingId, String> QUERIES = new EnumMap<>(ReadingId.class);

  static {
    QUERIES.put(ReadingId.OUTPUT_VOLTS, "MEAS:VOLT:AC?");
    QUERIES.put(ReadingId.SUPPLY_VOLTS, "MEAS:VOLT:DC?");
    QUERIES.put(ReadingId.SUPPLY_AMPS, "MEAS:CURR:DC?");
    QUERIES.put(ReadingId.SINK_CELSIUS, "MEAS:TEMP?");
    QUERIES.put(ReadingId.LOAD_OHMS, "MEAS:FRES?");
  }
}
