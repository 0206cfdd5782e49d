package loadwalk.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * One conductor run between supply and amplifier; the runs of a bench are in series.
 *
 * @param label what the run is called, such as "plus"
 * @param gauge the conductor's size
 * @param length how long the conductor is
 * @param parallel how many equal conductors lie side by side
 * @param metal what it is made of
 * @param insulationCelsius the temperature its insulation is rated for, °C, where it says
 */
public record Lead(
    String label,
    Gauge gauge,
    Length length,
    int parallel,
    Metal metal,
    OptionalDouble insulationCelsius)
    implements Shaped<Lead> {
  /** The coolest rating of insulation, °C; the tables are for a room of 30 °C. */
  private static final double COOLEST = 50;

  /** The hottest rating of insulation, °C. */
  private static final double HOTTEST = 300;

  /** Checks the numbers. */
  public Lead {
    Checks.text(label, "label");
    Objects.requireNonNull(gauge, "gauge");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(metal, "metal");
    if (parallel < 1) {
      throw new IllegalArgumentException("parallel must be 1 or more, got " + parallel);
    }
    insulationCelsius.ifPresent(Lead::checkInsulation);
  }

  /** A copper lead of a length in metres whose insulation does not say what it bears. */
  public Lead(String label, Gauge gauge, double metres, int parallel) {
    this(label, gauge, new Length.Metres(metres), parallel, Metal.COPPER, OptionalDouble.empty());
  }

  private static void checkInsulation(double celsius) {
    if (!(celsius >= COOLEST && celsius <= HOTTEST)) {
      throw new IllegalArgumentException(
          Sentence.of(
              "insulationCelsius must lie between {} and {}, got {}",
              Figures.three(COOLEST),
              Figures.three(HOTTEST),
              Figures.three(celsius)));
    }
  }

  static Lead blank() {
    return new Lead("lead", new Mm2(1), 1, 1);
  }

  /** Returns its length, metres. */
  public double metres() {
    return length.metres();
  }

  /** Returns the same lead in insulation rated for a temperature, °C. */
  public Lead insulatedFor(double celsius) {
    return new Lead(label, gauge, length, parallel, metal, OptionalDouble.of(celsius));
  }

  /** Returns the same lead made of a metal. */
  public Lead of(Metal other) {
    return new Lead(label, gauge, length, parallel, other, insulationCelsius);
  }

  @Override
  public Lead shape(Shape in) {
    return new Lead(
        in.textOr("label", label),
        in.oneOf("a lead", gauge, gauge.key(), Gauge.BLANKS),
        in.oneOf("a lead", length, length.key(), Length.BLANKS),
        in.wholeOr("parallel", parallel, 1, 1000),
        in.has("metal", metal != Metal.COPPER) ? in.word("metal", metal, Metal.WORDS) : metal,
        in.number("insulationCelsius", insulationCelsius, COOLEST, HOTTEST));
  }

  /** How long a conductor is, in the unit it was measured in. */
  public sealed interface Length extends Shaped<Length> {
    /** A blank of each unit by its key, in the order messages list them. */
    Map<String, Length> BLANKS = blanks();

    private static Map<String, Length> blanks() {
      Map<String, Length> blanks = new LinkedHashMap<>();
      List.of(new Metres(1), new Feet(1)).forEach(length -> blanks.put(length.key(), length));
      return blanks;
    }

    /** Returns the key of the unit in a file. */
    String key();

    /** Returns the length, metres. */
    double metres();

    /** Returns the number in its own unit. */
    double number();

    /** Returns the unit as printed. */
    String unit();

    /**
     * A length in metres.
     *
     * @param number the length, metres
     */
    record Metres(double number) implements Length {
      /** Checks the number. */
      public Metres {
        Checks.positive(number, "metres");
      }

      @Override
      public String key() {
        return "metres";
      }

      @Override
      public double metres() {
        return number;
      }

      @Override
      public String unit() {
        return "m";
      }

      @Override
      public Length shape(Shape in) {
        return new Metres(in.number("metres", number, 0.001, 1000));
      }
    }

    /**
     * A length in feet.
     *
     * @param number the length, feet
     */
    record Feet(double number) implements Length {
      private static final double METRES_PER_FOOT = 0.3048;

      /** Checks the number. */
      public Feet {
        Checks.positive(number, "feet");
      }

      @Override
      public String key() {
        return "feet";
      }

      @Override
      public double metres() {
        return METRES_PER_FOOT * number;
      }

      @Override
      public String unit() {
        return "ft";
      }

      @Override
      public Length shape(Shape in) {
        return new Feet(in.number("feet", number, 0.001, 3000));
      }
    }
  }

  /**
   * The size of a conductor, in one of the two systems the trade uses.
   *
   * <p>Sizes are keys of the wire tables. Both kinds write out {@code equals} and {@code hashCode}:
   * those a record generates are linked at first use, which takes longer than reading the tables.
   */
  public sealed interface Gauge extends Shaped<Gauge> {
    /** A blank of each system by its key, in the order messages list them. */
    Map<String, Gauge> BLANKS = blanks();

    private static Map<String, Gauge> blanks() {
      Map<String, Gauge> blanks = new LinkedHashMap<>();
      List.of(new Awg(1), new Mm2(1)).forEach(gauge -> blanks.put(gauge.key(), gauge));
      return blanks;
    }

    /** Returns the key of the system in a file. */
    String key();

    /** Returns the size as printed: "AWG 4", "AWG 1/0", "25 mm²". */
    String text();

    /** Returns the copper cross-section, mm². */
    double areaMm2();

    /** Tells whether it is metric, so that the mm² tables apply. */
    boolean isMetric();
  }

  /**
   * An American wire gauge number.
   *
   * @param number the gauge number; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3
   */
  public record Awg(int number) implements Gauge {
    static final int LEAST = -3;
    static final int MOST = 40;

    /** Checks the range from 4/0 to 40. */
    public Awg {
      if (number < LEAST || number > MOST) {
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
      return Sentence.of("AWG {}", size());
    }

    /**
     * Returns a size as people write it: "4", "1/0", "0", "00", "2/0".
     *
     * @throws IllegalArgumentException where it is none
     */
    public static Awg of(String written) {
      Integer number = BenchFiles.GAUGES.all().get(written);
      if (number == null) {
        throw new IllegalArgumentException(
            Sentence.of("awg must lie between 4/0 and 40, got «{}»", written));
      }
      return new Awg(number);
    }

    /** Returns the size in every way that people write it, as printed first. */
    static List<String> spellings(int number) {
      String printed = new Awg(number).size();
      return number > 0 ? List.of(printed) : List.of(printed, "0".repeat(1 - number));
    }

    /** Returns the diameter of a solid wire of the size, mm (ASTM B258). */
    double diameterMm() {
      return 0.127 * Math.pow(92, (36 - number) / 39.0);
    }

    @Override
    public double areaMm2() {
      return Math.PI / 4 * diameterMm() * diameterMm();
    }

    @Override
    public boolean isMetric() {
      return false;
    }

    /** Returns the number as people write it: "4", "1/0". */
    String size() {
      return number > 0 ? String.valueOf(number) : 1 - number + "/0";
    }

    @Override
    public String key() {
      return "awg";
    }

    @Override
    public Gauge shape(Shape in) {
      return in.isText("awg", number <= 0)
          ? new Awg(in.word("awg", number, BenchFiles.GAUGES))
          : new Awg(in.whole("awg", number, LEAST, MOST));
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
    public double areaMm2() {
      return area;
    }

    @Override
    public boolean isMetric() {
      return true;
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
      return Sentence.of(
          "{} mm²", area == Math.rint(area) ? String.valueOf((long) area) : String.valueOf(area));
    }

    @Override
    public String key() {
      return "mm2";
    }

    @Override
    public Gauge shape(Shape in) {
      return new Mm2(in.number("mm2", area, 0.01, 10_000));
    }
  }
}
