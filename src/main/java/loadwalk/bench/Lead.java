package loadwalk.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * One conductor run between supply and amplifier; the runs of a bench are in series.
 *
 * @param label what the run is called, such as "plus"
 * @param gauge the conductor's size
 * @param metres the length of the conductor, metres
 * @param parallel how many equal conductors lie side by side
 */
public record Lead(String label, Gauge gauge, double metres, int parallel) implements Shaped<Lead> {
  /** Checks the numbers. */
  public Lead {
    Checks.text(label, "label");
    Objects.requireNonNull(gauge, "gauge");
    Checks.positive(metres, "metres");
    if (parallel < 1) {
      throw new IllegalArgumentException("parallel must be 1 or more, got " + parallel);
    }
  }

  static Lead blank() {
    return new Lead("lead", new Mm2(1), 1, 1);
  }

  @Override
  public Lead shape(Shape in) {
    return new Lead(
        in.textOr("label", label),
        in.oneOf("a lead", gauge, gauge.key(), Gauge.BLANKS),
        in.number("metres", metres, 0.001, 1000),
        in.wholeOr("parallel", parallel, 1, 1000));
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
