package loadwalk.plan.wiring;

import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Wire;
import loadwalk.text.Sentence;

/**
 * The comparison of the volts measured as lost between supply and amplifier with the expected loss
 * of the leads.
 *
 * <p>R = (V at the supply − V at the terminals) / I by Ohm's law, against copper at working
 * temperature. Any further loss is in the joints: lugs, clamps, fuse holders.
 *
 * @param state the outcome
 * @param text one sentence with the numbers
 */
public record WireBackCheck(State state, String text) {
  /** The lowest current at which a drop is meaningful, amperes. Chosen by hand. */
  private static final double LEAST_AMPS = 1;

  /** Heat in the joints that is reported as a danger, watts. Common practice, no source. */
  private static final double MUCH_WATTS = 10;

  /** Ratio of measured to expected loss above which the joints are blamed. Chosen by hand. */
  private static final double FAR_ABOVE = 1.5;

  /**
   * Ratio of measured to expected loss below which the description of the leads is doubted. Chosen
   * by hand.
   */
  private static final double FAR_BELOW = 0.5;

  /** The possible outcomes of a comparison. */
  public enum State {
    /** The leads lose what is expected, or too little more to matter. */
    AGREES,
    /** A joint wastes tens of watts. */
    BAD_JOINT,
    /** The leads lose far less than computed, so they are not the leads entered. */
    LESS_THAN_ENTERED,
    /** The readings do not allow a comparison. */
    CANNOT_TELL
  }

  /**
   * Compares a pair of readings with the leads of a bench.
   *
   * @param bench the bench with its leads and meters
   * @param wire the copper of the leads
   * @param sourceVolts volts measured at the supply's terminals
   * @param terminalVolts volts measured at the amplifier's terminals at the same time
   * @param amps the supply current at that time, amperes
   */
  public static WireBackCheck of(
      Bench bench, Wire wire, double sourceVolts, double terminalVolts, double amps) {
    double drop = sourceVolts - terminalVolts;
    if (!Double.isFinite(drop) || !(amps >= LEAST_AMPS) || Double.isInfinite(amps)) {
      return cannotTell(
          Sentence.of(
              "At {} A the leads lose too little to measure. Compare under load.",
              Figures.three(amps)));
    }
    double doubtful = doubt(bench, sourceVolts) + doubt(bench, terminalVolts);
    if (drop < -doubtful) {
      return cannotTell(
          Sentence.of(
              "The terminals read {} V more than the supply. The readings are swapped, or were not"
                  + " taken at the same time.",
              Figures.three(-drop)));
    }
    double measured = Math.max(0, drop) / amps;
    OptionalDouble copper = wire.ohms(bench);
    if (copper.isEmpty()) {
      return cannotTell(
          Sentence.of(
              "The leads measure {}. The bench lists no leads to compare with.",
              milliohms(measured)));
    }
    double computed = copper.getAsDouble();
    return judged(measured, computed, drop - computed * amps, amps, doubtful);
  }

  private static WireBackCheck judged(
      double measured, double computed, double excessVolts, double amps, double doubtfulVolts) {
    double watts = excessVolts * amps;
    double ratio = measured / computed;
    boolean certain = Math.abs(excessVolts) > doubtfulVolts;
    String both =
        Sentence.of(
            "The leads measure {}; their copper alone is {}.",
            milliohms(measured),
            milliohms(computed));
    if (certain && ratio > FAR_ABOVE && watts >= MUCH_WATTS) {
      String text =
          Sentence.of(
              "{} A joint wastes {} W. With the output down, feel for it, then tighten or clean"
                  + " it.",
              both,
              Figures.three(watts));
      return new WireBackCheck(State.BAD_JOINT, text);
    }
    if (certain && ratio < FAR_BELOW) {
      String text =
          Sentence.of(
              "{} These are not the leads entered, or the volts were taken elsewhere.", both);
      return new WireBackCheck(State.LESS_THAN_ENTERED, text);
    }
    return new WireBackCheck(State.AGREES, Sentence.of("{} They lose what they should.", both));
  }

  private static double doubt(Bench bench, double volts) {
    return bench.meterFor(ReadingId.SUPPLY_VOLTS).map(m -> m.halfWidth(volts)).orElse(0.0);
  }

  private static String milliohms(double ohms) {
    return Sentence.of("{} mΩ", Figures.three(1000 * ohms));
  }

  private static WireBackCheck cannotTell(String text) {
    return new WireBackCheck(State.CANNOT_TELL, text);
  }
}
