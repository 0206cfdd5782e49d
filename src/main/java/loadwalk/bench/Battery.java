package loadwalk.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * A lead-acid battery that stands for a supply.
 *
 * @param openVolts its volts at rest, volts
 * @param resistance what is known of its resistance
 * @param ampereHours what it holds at the rate of twenty hours, Ah, where it says
 */
public record Battery(double openVolts, Resistance resistance, OptionalDouble ampereHours)
    implements Shaped<Battery> {
  /** Volts of six charged cells at rest (lead-acid; from memory, very sure). */
  private static final double SIX_CELLS_VOLTS = 12.6;

  /** Volts at rest below which a battery has three cells, not six. Chosen by hand. */
  private static final double LEAST_OF_SIX_CELLS = 9;

  /** Volts at which a cell counts as empty: 10.5 V of six cells (from memory, very sure). */
  private static final double EMPTY_CELL_VOLTS = 1.75;

  /** Volts of a cell at its cold-cranking amperes: 7.2 V of six (SAE J537, from memory, sure). */
  private static final double CRANKING_CELL_VOLTS = 1.2;

  /**
   * Resistance at room temperature over that at the −18 °C of the cranking test: about half (common
   * practice, no source).
   */
  private static final double WARM = 0.5;

  /** Peukert's exponent of a starter battery (from memory, moderately sure). */
  private static final double PEUKERT = 1.2;

  /** Hours at which the ampere-hours of a battery are told. */
  private static final double RATED_HOURS = 20;

  private static final double SECONDS_PER_HOUR = 3600;

  /** Checks the numbers. */
  public Battery {
    Checks.positive(openVolts, "openVolts");
    double empty = EMPTY_CELL_VOLTS * cells(openVolts);
    if (!(openVolts > empty)) {
      throw new IllegalArgumentException(
          Sentence.of(
              "openVolts must lie above the {} V of an empty battery, got {}",
              Figures.three(empty),
              Figures.three(openVolts)));
    }
    ampereHours.ifPresent(hours -> Checks.positive(hours, "ampereHours"));
  }

  static Battery blank() {
    return new Battery(12.7, new Milliohms(5), OptionalDouble.empty());
  }

  @Override
  public Battery shape(Shape in) {
    return new Battery(
        in.number("openVolts", openVolts, 1, 1000),
        in.oneOf("a battery", resistance, resistance.key(), Resistance.BLANKS),
        in.number("ampereHours", ampereHours, 0.1, 100_000));
  }

  private static double cells(double openVolts) {
    return openVolts < LEAST_OF_SIX_CELLS
        ? 3
        : 6 * Math.max(1, Math.rint(openVolts / SIX_CELLS_VOLTS));
  }

  /** Returns its resistance at room temperature, ohms. */
  public double ohms() {
    return resistance.ohms(openVolts - CRANKING_CELL_VOLTS * cells(openVolts));
  }

  /** Returns the volts at its posts at a current, amperes; never below 0 (Ohm). */
  public double volts(double amps) {
    return Math.max(0, openVolts - amps * ohms());
  }

  /** Returns the volts at which it counts as empty. */
  public double emptyVolts() {
    return EMPTY_CELL_VOLTS * cells(openVolts);
  }

  /** Returns the current at which its posts fall to the volts of an empty battery, amperes. */
  public double mostAmps() {
    return (openVolts - emptyVolts()) / ohms();
  }

  /**
   * Returns how long it lasts from full at a current, amperes, in seconds; empty where its
   * ampere-hours are not known. Peukert's law: t = H (C / (I H))^k.
   */
  public OptionalDouble lastsSeconds(double amps) {
    if (ampereHours.isEmpty() || !(amps > 0)) {
      return OptionalDouble.empty();
    }
    double rate = ampereHours.getAsDouble() / RATED_HOURS;
    return OptionalDouble.of(RATED_HOURS * SECONDS_PER_HOUR * Math.pow(rate / amps, PEUKERT));
  }

  /** What is known of a battery's resistance. */
  public sealed interface Resistance extends Shaped<Resistance> {
    /** A blank of each kind by its key, in the order messages list them. */
    Map<String, Resistance> BLANKS = blanks();

    private static Map<String, Resistance> blanks() {
      Map<String, Resistance> blanks = new LinkedHashMap<>();
      blanks.put("milliohms", new Milliohms(1));
      blanks.put("coldCrankingAmps", new ColdCranking(1));
      return blanks;
    }

    /** Returns its key in a file. */
    String key();

    /** Returns the number in a file. */
    double number();

    /** Returns the unit as typed. */
    String unit();

    /**
     * Returns the resistance at room temperature, ohms.
     *
     * @param crankingVolts the volts lost in the cold-cranking test
     */
    double ohms(double crankingVolts);
  }

  /**
   * A resistance that was measured.
   *
   * @param number the resistance, mΩ
   */
  public record Milliohms(double number) implements Resistance {
    /** Checks the number. */
    public Milliohms {
      Checks.positive(number, "milliohms");
    }

    @Override
    public String key() {
      return "milliohms";
    }

    @Override
    public String unit() {
      return "mohm";
    }

    @Override
    public double ohms(double crankingVolts) {
      return number / 1000;
    }

    @Override
    public Resistance shape(Shape in) {
      return new Milliohms(in.number("milliohms", number, 0.01, 10_000));
    }
  }

  /**
   * The current of the cold-cranking test on the label.
   *
   * @param number the current, amperes
   */
  public record ColdCranking(double number) implements Resistance {
    /** Checks the number. */
    public ColdCranking {
      Checks.positive(number, "coldCrankingAmps");
    }

    @Override
    public String key() {
      return "coldCrankingAmps";
    }

    @Override
    public String unit() {
      return "CCA";
    }

    @Override
    public double ohms(double crankingVolts) {
      return WARM * crankingVolts / number;
    }

    @Override
    public Resistance shape(Shape in) {
      return new ColdCranking(in.number("coldCrankingAmps", number, 1, 10_000));
    }
  }
}
