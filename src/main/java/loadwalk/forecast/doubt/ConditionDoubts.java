package loadwalk.forecast.doubt;

import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Words the doubts of a tone, a distortion or a wave that contradicts what was asked or said. */
public final class ConditionDoubts {
  private ConditionDoubts() {}

  /** Where a distortion lies from the limit. */
  public enum Side {
    ABOVE,
    BELOW,
    AT
  }

  /** Returns the doubt of a tone that differs from the one asked for, both in hertz. */
  static Doubt tone(double hertz, double asked, Slip slip, Target target) {
    String text = Sentence.of("{}: this walk asks for {}.", hertz(hertz), hertz(asked));
    return DoubtWords.ruled(ReadingId.FREQUENCY_HERTZ, slip, text, target);
  }

  /** Returns the doubt of a distortion that contradicts the point said or asked for, percent. */
  public static Doubt thd(double percent, double limit, Side side, Target target) {
    return DoubtWords.ruled(
        ReadingId.THD_PERCENT, Slip.THD_OFF_LIMIT, sentence(percent, limit, side), target);
  }

  /** Returns the sentence that says where a distortion lies from the limit, both in percent. */
  public static String sentence(double percent, double limit, Side side) {
    String read = percent(percent);
    return switch (side) {
      case ABOVE ->
          Sentence.of(
              "{} THD is above the limit of {}: turn the tone down and read again, or say that this"
                  + " is read above the limit.",
              read,
              percent(limit));
      case BELOW ->
          Sentence.of(
              "{} THD is below the limit of {}: raise the tone and read again, or say that this is"
                  + " read below the limit.",
              read,
              percent(limit));
      case AT ->
          Sentence.of(
              "{} THD is at the limit of {}: say that this is read at the limit, or read again.",
              read,
              percent(limit));
    };
  }

  /** Returns the doubt of an output taken from a wave that the recorder cut. */
  public static Doubt recorder(Target target) {
    return DoubtWords.ruled(
        ReadingId.OUTPUT_VOLTS,
        Slip.RECORDER_CLIPPED,
        "The input of the recorder clipped: volts and THD are its own, not the amplifier's.",
        target);
  }

  private static String hertz(double value) {
    return Printer.UTF8.exact(value, Unit.HERTZ);
  }

  private static String percent(double value) {
    return Printer.UTF8.exact(value, Unit.PERCENT);
  }
}
