package loadwalk.view;

import java.util.List;
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
 * @param alarm what must be told at once of supply current or terminal volts
 */
public record Meters(
    List<MeterWatch> watches, long nowMillis, long wallMillis, Optional<Alarm> alarm) {
  /** Copies the list. */
  public Meters {
    watches = List.copyOf(watches);
  }

  /** Returns a bench on which nothing is connected. */
  public static Meters none() {
    return new Meters(List.of(), 0, 0, Optional.empty());
  }

  boolean isEmpty() {
    return watches.isEmpty();
  }

  /** Finds the meter that takes just this reading. */
  Optional<MeterWatch> of(ReadingId id) {
    return watches.stream().filter(w -> w.meter().reads() == id).findFirst();
  }

  /** Finds the meter for a reading, as {@link ReadingId#meteredAs} has it. */
  Optional<MeterWatch> nearest(ReadingId id) {
    return of(id).or(() -> of(id.meteredAs()));
  }

  /** Returns what a meter must be taken to say at this moment. */
  MeterReading reading(MeterWatch watch) {
    return watch.at(nowMillis);
  }

  /** Returns that in a few words. */
  String words(MeterWatch watch) {
    return reading(watch).words(watch.meter().resolution());
  }

  Meters at(long monoMillis, long wall) {
    return new Meters(watches, Math.max(nowMillis, monoMillis), wall, alarm);
  }

  Meters alarming(Optional<Alarm> next) {
    return new Meters(watches, nowMillis, wallMillis, next);
  }
}
