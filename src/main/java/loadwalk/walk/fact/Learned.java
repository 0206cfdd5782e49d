package loadwalk.walk.fact;

import java.math.BigDecimal;
import java.math.MathContext;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.result.Repeatability;

/**
 * How well the output of a bench is set to the limit by hand, learned from the walks kept of it
 * when a walk began. It stands in the journal, so that a sheet rests on its journal alone.
 *
 * @param percent the standard deviation of the output volts, percent of them
 * @param pairs how many pairs of runs it was learned from, 1 or more
 */
public record Learned(double percent, int pairs) implements Shaped<Learned> {
  private static final MathContext DIGITS = new MathContext(4);

  /** Checks the numbers. */
  public Learned {
    if (!(percent >= 0) || Double.isInfinite(percent) || pairs < 1) {
      throw new IllegalArgumentException(
          "learned needs percent and pairs, got " + percent + " and " + pairs);
    }
  }

  /** Returns what was learned, to four digits; the pairs must not be 0. */
  public static Learned of(Repeatability learned) {
    BigDecimal percent = BigDecimal.valueOf(100 * learned.relativeVolts()).round(DIGITS);
    return new Learned(percent.doubleValue(), learned.pairs());
  }

  static Learned blank() {
    return new Learned(0, 1);
  }

  /** Returns it as results take it. */
  public Repeatability repeatability() {
    return new Repeatability(percent / 100, pairs);
  }

  @Override
  public Learned shape(Shape in) {
    return new Learned(
        in.number("percent", percent, 0, 100), in.whole("pairs", pairs, 1, Integer.MAX_VALUE));
  }
}
