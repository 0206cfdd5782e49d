package loadwalk.practice;

import java.util.Objects;
import loadwalk.bench.Amplifier;

/**
 * A simulated amplifier: what its maker printed, and what is really inside.
 *
 * @param printed what is on the case and in the leaflet, optimistic or modest
 * @param rails the converter that makes the rails
 * @param stage the output stage of one channel
 * @param sink the heatsink
 */
public record PracticeAmplifier(Amplifier printed, Rails rails, Stage stage, Sink sink) {
  /** Checks that nothing is missing. */
  public PracticeAmplifier {
    Objects.requireNonNull(printed, "printed");
    Objects.requireNonNull(rails, "rails");
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(sink, "sink");
  }

  /** Returns the practice amplifier of a seed: 1 is friendly, later ones are less so. */
  public static PracticeAmplifier ofSeed(long seed) {
    return PracticeCatalogue.amplifier(seed);
  }

  /**
   * The converter between supply and rails.
   *
   * @param ratio one rail's volts over the supply's without load; for a regulated converter the
   *     most it can step up
   * @param regulatedVolts one rail's volts that a regulated converter holds; 0 where unregulated
   * @param ohms the rail's fall per ampere of rail current
   * @param watts the most the converter delivers to the rails
   * @param efficiency what reaches the rails of what is drawn, above 0 up to 1
   * @param idleAmps the supply current without a tone
   */
  public record Rails(
      double ratio,
      double regulatedVolts,
      double ohms,
      double watts,
      double efficiency,
      double idleAmps) {
    /** Checks the numbers. */
    public Rails {
      positive(ratio, "ratio");
      zeroOrMore(regulatedVolts, "regulatedVolts");
      zeroOrMore(ohms, "ohms");
      positive(watts, "watts");
      fraction(efficiency, "efficiency");
      zeroOrMore(idleAmps, "idleAmps");
    }

    /** Tells whether the rails are regulated. */
    boolean regulated() {
      return regulatedVolts > 0;
    }
  }

  /**
   * The output stage.
   *
   * @param outputClass its class
   * @param saturationVolts what it leaves of the rail at the peak, volts
   * @param ohms the source resistance of one channel at 25 °C
   * @param ohmsPerKelvin the fraction by which that rises per kelvin
   * @param peakAmps the current limit of one channel, peak
   * @param efficiency what a class D stage passes on of what it draws; 1 for push-pull
   * @param otherChannel the other channel's volts over this one's
   * @param clipper how it bends at the rail
   */
  public record Stage(
      OutputClass outputClass,
      double saturationVolts,
      double ohms,
      double ohmsPerKelvin,
      double peakAmps,
      double efficiency,
      double otherChannel,
      Clipper clipper) {
    /** Checks the numbers. */
    public Stage {
      Objects.requireNonNull(outputClass, "outputClass");
      Objects.requireNonNull(clipper, "clipper");
      zeroOrMore(saturationVolts, "saturationVolts");
      zeroOrMore(ohms, "ohms");
      zeroOrMore(ohmsPerKelvin, "ohmsPerKelvin");
      positive(peakAmps, "peakAmps");
      fraction(efficiency, "efficiency");
      positive(otherChannel, "otherChannel");
    }

    /** Returns the source resistance at a heatsink temperature. */
    double ohmsAt(double celsius) {
      return ohms * Math.max(0.5, 1 + ohmsPerKelvin * (celsius - 25));
    }
  }

  /**
   * The heatsink, of first order.
   *
   * @param kelvinPerWatt its rise per watt of heat in the end
   * @param timeConstantSeconds how long 63 % of a rise takes
   */
  public record Sink(double kelvinPerWatt, double timeConstantSeconds) {
    /** Checks the numbers. */
    public Sink {
      positive(kelvinPerWatt, "kelvinPerWatt");
      positive(timeConstantSeconds, "timeConstantSeconds");
    }
  }

  static void positive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
  }

  static void zeroOrMore(double value, String name) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number from 0 up, got " + value);
    }
  }

  private static void fraction(double value, String name) {
    if (!(value > 0 && value <= 1)) {
      throw new IllegalArgumentException(name + " must lie above 0 and up to 1, got " + value);
    }
  }
}
