package loadwalk.bench;

import java.util.Objects;
import java.util.Optional;

/**
 * A meter's accuracy specification: ±(percent of reading + digits of its resolution).
 *
 * @param label what it is called
 * @param reads the reading it takes
 * @param percent percent of reading, half-width
 * @param digits least significant digits, half-width
 * @param resolution the value of one digit, in the reading's unit
 * @param band the AC band for which the specification holds, where stated
 * @param connection how it is asked for its reading, where it can be
 */
public record Meter(
    String label,
    ReadingId reads,
    double percent,
    double digits,
    double resolution,
    Optional<Band> band,
    Optional<Connection> connection) {
  /** Checks the numbers. */
  public Meter {
    Checks.text(label, "label");
    Objects.requireNonNull(reads, "reads");
    Checks.zeroOrMore(percent, "percent");
    Checks.zeroOrMore(digits, "digits");
    Checks.zeroOrMore(resolution, "resolution");
    Objects.requireNonNull(connection, "connection");
  }

  /** Makes a meter that is read by eye. */
  public Meter(
      String label,
      ReadingId reads,
      double percent,
      double digits,
      double resolution,
      Optional<Band> band) {
    this(label, reads, percent, digits, resolution, band, Optional.empty());
  }

  /** Returns this meter with a connection. */
  public Meter connectedBy(Connection by) {
    return new Meter(label, reads, percent, digits, resolution, band, Optional.of(by));
  }

  /** Returns the half-width of the specification at a reading, in the reading's unit. */
  public double halfWidth(double reading) {
    return Math.abs(reading) * percent / 100 + digits * resolution;
  }

  /**
   * A frequency band, both ends in hertz.
   *
   * @param lowHertz the lower end
   * @param highHertz the upper end, not below the lower
   */
  public record Band(double lowHertz, double highHertz) {
    /** Checks the order. */
    public Band {
      Checks.zeroOrMore(lowHertz, "hertz");
      if (!(highHertz >= lowHertz)) {
        throw new IllegalArgumentException("hertz must be [low, high], got " + highHertz);
      }
    }

    /** Tells whether a frequency lies inside, ends included. */
    public boolean holds(double hertz) {
      return hertz >= lowHertz && hertz <= highHertz;
    }
  }
}
