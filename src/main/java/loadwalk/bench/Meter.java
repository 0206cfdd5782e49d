package loadwalk.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * A meter's accuracy specification: ±(percent of reading + digits of its resolution).
 *
 * @param label what it is called
 * @param reads the reading it takes
 * @param percent percent of reading, half-width
 * @param digits least significant digits, half-width
 * @param resolution the value of one digit, in the reading's unit
 * @param band the AC band the specification covers, where stated
 * @param connection how to query it, where it can be queried
 */
public record Meter(
    String label,
    ReadingId reads,
    double percent,
    double digits,
    double resolution,
    Optional<Band> band,
    Optional<Connection> connection)
    implements Shaped<Meter> {
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

  static Meter blank() {
    return new Meter("meter", ReadingId.OUTPUT_VOLTS, 0, 0, 0, Optional.empty());
  }

  @Override
  public Meter shape(Shape in) {
    Optional<String> itsLabel =
        in.has("label", true) ? Optional.of(in.text("label", label)) : Optional.empty();
    ReadingId itsReading = in.word("reads", reads, BenchFiles.READINGS);
    double itsPercent = in.numberOr("percent", percent, 0, 100);
    double itsDigits = in.numberOr("digits", digits, 0, 100_000);
    double itsResolution = in.numberOr("resolution", resolution, 0, 1e6);
    if (!in.has("percent", true) && !in.has("digits", true)) {
      in.refuse("a meter needs «percent», or «digits» with «resolution», or both");
    }
    if (itsDigits > 0 && !(itsResolution > 0)) {
      in.refuse("digits", "«digits» needs a «resolution» above 0");
    }
    return new Meter(
        itsLabel.orElse(Sentence.of("{} meter", itsReading.label())),
        itsReading,
        itsPercent,
        itsDigits,
        itsResolution,
        Band.shape(in, band),
        in.part("connection", connection, Connection.blank(itsReading)));
  }

  /** Returns this meter with the given connection. */
  public Meter connectedBy(Connection by) {
    return new Meter(label, reads, percent, digits, resolution, band, Optional.of(by));
  }

  /** Returns the half-width of the accuracy at a reading, in the reading's unit. */
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

    private static Optional<Band> shape(Shape in, Optional<Band> band) {
      if (!in.has("hertz", band.isPresent())) {
        return band;
      }
      Band ends = band.orElse(new Band(0, 1));
      List<Double> hertz = in.numbers("hertz", List.of(ends.lowHertz, ends.highHertz), 0, 1e9);
      if (hertz.size() != 2 || hertz.get(0) > hertz.get(1)) {
        in.refuse("hertz", "«hertz» must be [low, high]");
        return band;
      }
      return Optional.of(new Band(hertz.get(0), hertz.get(1)));
    }

    /** Tells whether a frequency lies inside, ends included. */
    public boolean holds(double hertz) {
      return hertz >= lowHertz && hertz <= highHertz;
    }
  }
}
