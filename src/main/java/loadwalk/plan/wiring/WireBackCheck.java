package loadwalk.plan.wiring;

import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Wire;

/**
 * Compares the volts really lost between supply and amplifier with what the leads should lose.
 *
 * <p>R = (V at the supply − V at the terminals) / I by Ohm's law, against copper at working
 * temperature. What is lost beyond that is lost in joints: lugs, clamps, fuse holders.
 *
 * @param state what came out
 * @param text one sentence with the numbers
 */
public record WireBackCheck(State state, String text) {
  /** The least current at which a drop tells anything, amperes. Chosen by hand. */
  private static final double LEAST_AMPS = 1;

  /** Heat in the joints from which it is told as a danger, watts. Common practice, no source. */
  private static final double MUCH_WATTS = 10;

  /** Volts lost over those the leads should lose from which joints are named. Chosen by hand. */
  private static final double FAR_ABOVE = 1.5;

  /** The same below which the leads as described are doubted. Chosen by hand. */
  private static final double FAR_BELOW = 0.5;

  /** What a comparison comes to. */
  public enum State {
    /** The leads lose what they should, or too little more to matter. */
    AGREES,
    /** A joint wastes tens of watts. */
    BAD_JOINT,
    /** They lose far less than computed: the leads are not the ones entered. */
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
          "At "
              + Figures.three(amps)
              + " A the loss in the leads is too small to be measured; compare under load.");
    }
    double doubtful = doubt(bench, sourceVolts) + doubt(bench, terminalVolts);
    if (drop < -doubtful) {
      return cannotTell(
          "The terminals read "
              + Figures.three(-drop)
              + " V more than the supply: the two readings were not taken at the same time, or"
              + " are swapped.");
    }
    double measured = Math.max(0, drop) / amps;
    OptionalDouble copper = wire.ohms(bench);
    if (copper.isEmpty()) {
      return cannotTell(
          "The run has " + milliohms(measured) + "; no leads are entered to hold that against.");
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
        "The run has " + milliohms(measured) + " where its copper has " + milliohms(computed);
    State state = State.AGREES;
    String text = both + ": the leads lose what they should.";
    if (certain && ratio > FAR_ABOVE && watts >= MUCH_WATTS) {
      state = State.BAD_JOINT;
      text =
          both
              + ": a joint wastes "
              + Figures.three(watts)
              + " W; feel for it with the output"
              + " down, and tighten or clean it.";
    } else if (certain && ratio < FAR_BELOW) {
      state = State.LESS_THAN_ENTERED;
      text = both + ": these are not the leads entered, or the volts were taken elsewhere.";
    }
    return new WireBackCheck(state, text);
  }

  private static double doubt(Bench bench, double volts) {
    return bench.meterFor(ReadingId.SUPPLY_VOLTS).map(m -> m.halfWidth(volts)).orElse(0.0);
  }

  private static String milliohms(double ohms) {
    return Figures.three(1000 * ohms) + " mΩ";
  }

  private static WireBackCheck cannotTell(String text) {
    return new WireBackCheck(State.CANNOT_TELL, text);
  }
}
