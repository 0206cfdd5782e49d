package loadwalk.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.json.Words;
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
 * @param thdKind what its figure of distortion counts, where it reads distortion and that is known
 * @param bandwidthHertz the upper end of the band in which it reads distortion, where known, hertz
 */
public record Meter(
    String label,
    ReadingId reads,
    double percent,
    double digits,
    double resolution,
    Optional<Band> band,
    Optional<Connection> connection,
    Optional<ThdKind> thdKind,
    OptionalDouble bandwidthHertz)
    implements Shaped<Meter> {
  private static final Words<ThdKind> KINDS = Words.of(List.of(ThdKind.values()), ThdKind::word);
  private static final double MOST_HERTZ = 1e9;

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
    this(
        label,
        reads,
        percent,
        digits,
        resolution,
        band,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty());
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
        in.part("connection", connection, Connection.blank(itsReading)),
        kind(in, itsReading),
        bandwidth(in, itsReading));
  }

  private Optional<ThdKind> kind(Shape in, ReadingId itsReading) {
    if (!in.has("thdKind", thdKind.isPresent())) {
      return thdKind;
    }
    ThdKind its = in.word("thdKind", thdKind.orElse(ThdKind.THD_N), KINDS);
    requireDistortion(in, "thdKind", itsReading);
    return Optional.ofNullable(its);
  }

  private OptionalDouble bandwidth(Shape in, ReadingId itsReading) {
    OptionalDouble its = in.number("bandwidthHertz", bandwidthHertz, 1, MOST_HERTZ);
    if (its.isPresent()) {
      requireDistortion(in, "bandwidthHertz", itsReading);
    }
    return its;
  }

  private static void requireDistortion(Shape in, String key, ReadingId itsReading) {
    if (itsReading != ReadingId.THD_PERCENT) {
      in.refuse(key, Sentence.of("«{}» belongs to a meter that reads «thdPercent»", key));
    }
  }

  /** Returns this meter with the given connection. */
  public Meter connectedBy(Connection by) {
    return new Meter(
        label, reads, percent, digits, resolution, band, Optional.of(by), thdKind, bandwidthHertz);
  }

  /** Returns this meter of distortion with what its figure counts and up to which frequency. */
  public Meter counting(Optional<ThdKind> kind, OptionalDouble hertz) {
    return new Meter(label, reads, percent, digits, resolution, band, connection, kind, hertz);
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
      List<Double> hertz =
          in.numbers("hertz", List.of(ends.lowHertz, ends.highHertz), 0, MOST_HERTZ);
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
