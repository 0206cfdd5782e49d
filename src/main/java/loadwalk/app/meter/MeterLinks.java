package loadwalk.app.meter;

import java.io.Closeable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.meter.Act;

/** Keeps one link to each connected instrument of a bench. */
final class MeterLinks implements Closeable {
  private final List<MeterLink> links;

  private MeterLinks(List<MeterLink> links) {
    this.links = List.copyOf(links);
  }

  /** Starts a link for every instrument that the bench names; it may name none. */
  static MeterLinks start(
      Bench bench, Port.Maker ports, Clocks clocks, BiConsumer<Meter, Act.News> news) {
    Map<Connection.Line, List<Meter>> byLine = new LinkedHashMap<>();
    for (Meter meter : connected(bench)) {
      Connection.Line line = meter.connection().orElseThrow().line();
      byLine.computeIfAbsent(line, key -> new ArrayList<>()).add(meter);
    }
    List<MeterLink> links = new ArrayList<>();
    byLine.forEach((line, meters) -> links.add(new MeterLink(line, meters, ports, clocks, news)));
    links.forEach(MeterLink::start);
    return new MeterLinks(links);
  }

  /** Returns the meters that can be asked. */
  static List<Meter> connected(Bench bench) {
    return bench.meters().stream().filter(meter -> meter.connection().isPresent()).toList();
  }

  /** Tells whether a thread of it still runs. */
  boolean isAlive() {
    return links.stream().anyMatch(MeterLink::isAlive);
  }

  @Override
  public void close() {
    links.forEach(MeterLink::close);
  }
}
