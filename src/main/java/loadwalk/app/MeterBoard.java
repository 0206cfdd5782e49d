package loadwalk.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.meter.Act;
import loadwalk.meter.MeterWatch;
import loadwalk.view.Meters;

/** What the meters of a bench have said so far; written by their threads, read by the loop's. */
final class MeterBoard {
  private final Clocks clocks;
  private final Runnable nudge;
  private final Map<Meter, MeterWatch> watches = new LinkedHashMap<>();
  private boolean changed;

  /**
   * Makes a board on which no meter has spoken yet.
   *
   * @param nudge what is run, on a meter's thread, after something was written
   */
  MeterBoard(Bench bench, Clocks clocks, Runnable nudge) {
    this.clocks = clocks;
    this.nudge = nudge;
    MeterBank.connected(bench).forEach(m -> watches.put(m, MeterWatch.begin(m, monoMillis())));
    this.changed = !watches.isEmpty();
  }

  private long monoMillis() {
    return TimeUnit.NANOSECONDS.toMillis(clocks.monoNanos());
  }

  /** Writes what a meter said. */
  void heard(Meter meter, Act act) {
    synchronized (this) {
      MeterWatch watch = watches.get(meter);
      if (act instanceof Act.Identified known) {
        watches.put(meter, watch.identified(known.identity()));
      } else if (act instanceof Act.Heard heard) {
        watches.put(meter, watch.after(heard.reading(), monoMillis()));
      }
      changed = true;
    }
    nudge.run();
  }

  /** Returns what is on the board, once for every change. */
  synchronized Optional<Meters> news() {
    if (!changed) {
      return Optional.empty();
    }
    changed = false;
    List<MeterWatch> all = new ArrayList<>(watches.values());
    return Optional.of(new Meters(all, monoMillis(), clocks.wallMillis(), Optional.empty()));
  }
}
