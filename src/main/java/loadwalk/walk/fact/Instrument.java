package loadwalk.walk.fact;

import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * The instrument that a reading came from, kept with it in the journal.
 *
 * @param meter the meter's label on the bench
 * @param identity its reply to {@code *IDN?}, empty if it gave none
 * @param raw its raw reply, made fit to show
 * @param wallMillis when the reply came, ms since 1970
 * @param count how many readings its scatter rests on, 1 if there was only one
 * @param scatter the standard deviation of those readings, in the reading's unit; type A (JCGM
 *     100:2008, 4.2.2), degrees of freedom count − 1
 */
public record Instrument(
    String meter, String identity, String raw, long wallMillis, int count, double scatter)
    implements Shaped<Instrument> {
  /** Checks the numbers. */
  public Instrument {
    if (count < 1) {
      throw new IllegalArgumentException("count must be 1 or more, got " + count);
    }
    if (!(scatter >= 0) || Double.isInfinite(scatter)) {
      throw new IllegalArgumentException("scatter must be a number from 0 up, got " + scatter);
    }
  }

  static Instrument blank() {
    return new Instrument("", "", "", 0, 1, 0);
  }

  @Override
  public Instrument shape(Shape in) {
    return new Instrument(
        in.text("meter", meter),
        in.text("identity", identity),
        in.text("raw", raw),
        in.moment("at", wallMillis),
        in.whole("count", count),
        in.number("scatter", scatter));
  }
}
