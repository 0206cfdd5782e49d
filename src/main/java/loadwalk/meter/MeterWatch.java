package loadwalk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Meter;

/**
 * The recent replies of one connected meter, enough to show it, enter it and judge its scatter.
 *
 * <p>A meter on hold repeats its last digit. Identical replies with at least {@value #FINE_DIGITS}
 * significant digits count as held once there are {@value #HELD_REPLIES} in a row; a coarser
 * display may well stay the same (common practice, no source).
 *
 * @param meter the meter
 * @param identity the identity it reported, if any
 * @param last the newest reading
 * @param lastMillis its time of arrival, ms
 * @param recent the newest values, oldest first
 * @param repeats how many consecutive replies were the same as the newest
 */
public record MeterWatch(
    Meter meter,
    Optional<Identity> identity,
    MeterReading last,
    long lastMillis,
    List<Sample> recent,
    int repeats) {
  /** The age at which a value becomes stale, ms. */
  public static final long STALE_MILLIS = 5000;

  static final int HELD_REPLIES = 10;
  static final int FINE_DIGITS = 5;
  private static final int KEPT = 20;
  private static final long SCATTER_MILLIS = 5000;

  /** A value and its time of arrival, ms. */
  public record Sample(double value, long atMillis) {}

  /** Copies the list. */
  public MeterWatch {
    recent = List.copyOf(recent);
  }

  /** Returns the watch of a meter that has not replied yet. */
  public static MeterWatch begin(Meter meter, long nowMillis) {
    return new MeterWatch(
        meter, Optional.empty(), new MeterReading.Silent("no answer yet"), nowMillis, List.of(), 0);
  }

  /** Returns the watch after the meter reported its identity. */
  public MeterWatch identified(Identity by) {
    return new MeterWatch(meter, Optional.of(by), last, lastMillis, recent, repeats);
  }

  /** Returns the watch after a reading; a late one changes nothing. */
  public MeterWatch after(MeterReading reading, long atMillis) {
    if (reading.isLate()) {
      return this;
    }
    Optional<MeterReading.Value> fresh = reading.fresh();
    if (fresh.isEmpty()) {
      return new MeterWatch(meter, identity, reading, atMillis, List.of(), 0);
    }
    MeterReading.Value value = fresh.get();
    List<Sample> more = new ArrayList<>(recent);
    more.add(new Sample(value.value(), atMillis));
    more.removeIf(sample -> atMillis - sample.atMillis() > SCATTER_MILLIS);
    List<Sample> kept = more.subList(Math.max(0, more.size() - KEPT), more.size());
    boolean same = last.fresh().map(MeterReading.Value::raw).equals(Optional.of(value.raw()));
    return new MeterWatch(meter, identity, value, atMillis, kept, same ? repeats + 1 : 1);
  }

  /** Returns the reading as it counts now; a value may be stale or on hold. */
  public MeterReading at(long nowMillis) {
    return last.fresh().map(value -> aged(value, nowMillis)).orElse(last);
  }

  private MeterReading aged(MeterReading.Value value, long nowMillis) {
    long age = nowMillis - lastMillis;
    if (age > STALE_MILLIS + meter.connection().map(c -> c.answerMillis()).orElse(0)) {
      return new MeterReading.Stale(value, age);
    }
    boolean fine = significantDigits(value.raw()) >= FINE_DIGITS;
    return fine && repeats >= HELD_REPLIES ? new MeterReading.Held(value, repeats) : value;
  }

  /** Returns the scatter of the newest values, if there are at least two. */
  public Optional<Scatter> scatter() {
    return Scatter.of(recent.stream().map(Sample::value).toList());
  }

  /** Counts significant digits, without leading or trailing zeros. */
  static int significantDigits(String raw) {
    String mantissa = raw.split("[eE]", 2)[0].replaceAll("[^0-9]", "");
    return mantissa.replaceFirst("^0+", "").replaceFirst("0+$", "").length();
  }
}
