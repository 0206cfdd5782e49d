package loadwalk.bench;

import java.util.Objects;

/**
 * One conductor run between supply and amplifier; the runs of a bench are in series.
 *
 * @param label what the run is called, such as "plus"
 * @param gauge the conductor's size
 * @param metres the length of the conductor, metres
 * @param parallel how many equal conductors lie side by side
 */
public record Lead(String label, Gauge gauge, double metres, int parallel) {
  /** Checks the numbers. */
  public Lead {
    Checks.text(label, "label");
    Objects.requireNonNull(gauge, "gauge");
    Checks.positive(metres, "metres");
    if (parallel < 1) {
      throw new IllegalArgumentException("parallel must be 1 or more, got " + parallel);
    }
  }

  /**
   * The size of a conductor, in one of the two systems the trade uses.
   *
   * <p>Sizes are keys of the wire tables, so both write out the equality a record would link at its
   * first use: that costs more than reading the tables.
   */
  public sealed interface Gauge {
    /** Returns the size as printed: "AWG 4", "AWG 1/0", "25 mm²". */
    String text();
  }

  /**
   * An American wire gauge number.
   *
   * @param number the gauge number; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3
   */
  public record Awg(int number) implements Gauge {
    /** Checks the range from 4/0 to 40. */
    public Awg {
      if (number < -3 || number > 40) {
        throw new IllegalArgumentException("awg must lie between 4/0 and 40, got " + number);
      }
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Awg awg && number == awg.number;
    }

    @Override
    public int hashCode() {
      return number;
    }

    @Override
    public String text() {
      return number > 0 ? "AWG " + number : "AWG " + (1 - number) + "/0";
    }
  }

  /**
   * A metric cross-section.
   *
   * @param area the nominal cross-section, mm²
   */
  public record Mm2(double area) implements Gauge {
    /** Checks the number. */
    public Mm2 {
      Checks.positive(area, "mm2");
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Mm2 mm2 && Double.compare(area, mm2.area) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(area);
    }

    @Override
    public String text() {
      return (area == Math.rint(area) ? String.valueOf((long) area) : String.valueOf(area))
          + " mm²";
    }
  }
}
