package loadwalk.app.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.meter.Act;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.view.state.ConnectedMeters;

/** What the meters of a bench have said so far; written by their threads, read by the loop's. */
final class MeterReplies {
  private final Clocks clocks;
  private final Runnable nudge;
  private final Map<Meter, MeterWatch> watches = new LinkedHashMap<>();
  private boolean changed;

  /**
   * Begins with meters that have not spoken yet.
   *
   * @param nudge what is run, on a meter's thread, after something was written
   */
  MeterReplies(Bench bench, Clocks clocks, Runnable nudge) {
    this.clocks = clocks;
    this.nudge = nudge;
    MeterLinks.connected(bench).forEach(m -> watches.put(m, MeterWatch.begin(m, monoMillis())));
    this.changed = !watches.isEmpty();
  }

  private long monoMillis() {
    return TimeUnit.NANOSECONDS.toMillis(clocks.monoNanos());
  }

  /** Writes what a meter said. */
  void heard(Meter meter, Act.News news) {
    synchronized (this) {
      news.to(new Row(meter));
      changed = true;
    }
    nudge.run();
  }

  /** Takes down what one meter says. */
  private final class Row implements Act.Listener {
    private final Meter meter;

    private Row(Meter meter) {
      this.meter = meter;
    }

    @Override
    public void heard(MeterReading reading) {
      watches.computeIfPresent(meter, (m, watch) -> watch.after(reading, monoMillis()));
    }

    @Override
    public void identified(Identity identity) {
      watches.computeIfPresent(meter, (m, watch) -> watch.identified(identity));
    }
  }

  /** Returns what the meters have said, once for every change. */
  synchronized Optional<ConnectedMeters> news() {
    if (!changed) {
      return Optional.empty();
    }
    changed = false;
    List<MeterWatch> all = new ArrayList<>(watches.values());
    return Optional.of(
        new ConnectedMeters(all, monoMillis(), clocks.wallMillis(), Optional.empty()));
  }
}
