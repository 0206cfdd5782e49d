package loadwalk.practice;

import java.util.Objects;
import loadwalk.bench.Amplifier;

/**
 * A simulated amplifier: what its maker claims, and what is really inside.
 *
 * @param printed the data on the case and in the leaflet, optimistic or modest
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

  /** Returns the practice amplifier for a seed: 1 is friendly, later ones are less so. */
  public static PracticeAmplifier ofSeed(long seed) {
    return PracticeCatalogue.amplifier(seed);
  }

  /**
   * The converter between supply and rails.
   *
   * @param ratio the ratio of one rail's volts to the supply's without load; for a regulated
   *     converter its highest step-up
   * @param regulatedVolts one rail's volts that a regulated converter holds; 0 where unregulated
   * @param ohms the drop of the rail per ampere of rail current
   * @param watts the most power the converter delivers to the rails
   * @param efficiency the part of the power drawn that reaches the rails, above 0 up to 1
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
   * @param saturationVolts the rail volts it cannot use at the peak
   * @param ohms the source resistance of one channel at 25 °C
   * @param ohmsPerKelvin the fraction by which the resistance rises per kelvin
   * @param peakAmps the current limit of one channel, peak
   * @param efficiency the part of the power drawn that a class D stage passes on; 1 for push-pull
   * @param otherChannel the ratio of the other channel's volts to this one's
   * @param clipper how it bends the wave at the rail
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
   * The heatsink, a first-order system.
   *
   * @param kelvinPerWatt its final rise per watt of heat
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
