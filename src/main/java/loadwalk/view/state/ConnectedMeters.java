package loadwalk.view.state;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;

/**
 * The connected meters of the bench at one moment.
 *
 * @param watches what each has said so far
 * @param nowMillis the moment, ms of the clock that only goes forward
 * @param wallMillis the same moment, ms since 1970
 * @param alarm the alarm on supply current or terminal volts
 */
public record ConnectedMeters(
    List<MeterWatch> watches, long nowMillis, long wallMillis, Optional<Alarm> alarm) {
  /** Copies the list. */
  public ConnectedMeters {
    watches = List.copyOf(watches);
  }

  /** Returns a bench on which nothing is connected. */
  static ConnectedMeters none() {
    return new ConnectedMeters(List.of(), 0, 0, Optional.empty());
  }

  /** Tells whether no meter is connected. */
  public boolean isEmpty() {
    return watches.isEmpty();
  }

  /** Finds the meter that takes just this reading. */
  public Optional<MeterWatch> of(ReadingId id) {
    return watches.stream().filter(w -> w.meter().reads() == id).findFirst();
  }

  /** Finds the meter for a reading, as {@link ReadingId#meteredAs} has it. */
  public Optional<MeterWatch> nearest(ReadingId id) {
    return of(id).or(() -> of(id.meteredAs()));
  }

  /** Returns what a meter must be taken to say at this moment. */
  MeterReading reading(MeterWatch watch) {
    return watch.at(nowMillis);
  }

  /** Returns that in a few words. */
  public String words(MeterWatch watch) {
    return reading(watch).words(watch.meter().resolution());
  }

  /** Returns what each meter shows that is fresh, in its reading's unit. */
  public Map<ReadingId, Double> fresh() {
    Map<ReadingId, Double> now = new EnumMap<>(ReadingId.class);
    for (MeterWatch watch : watches) {
      reading(watch).fresh().ifPresent(value -> now.put(watch.meter().reads(), value.value()));
    }
    return now;
  }

  /** Returns the same meters at a later moment. */
  public ConnectedMeters at(long monoMillis, long wall) {
    return new ConnectedMeters(watches, Math.max(nowMillis, monoMillis), wall, alarm);
  }

  /** Returns the same meters with this alarm. */
  public ConnectedMeters alarming(Optional<Alarm> next) {
    return new ConnectedMeters(watches, nowMillis, wallMillis, next);
  }
}
