package loadwalk.sequence;

import java.util.Comparator;
import loadwalk.bench.Mode;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A load to connect for a step.
 *
 * @param mode how it is connected
 * @param ohms the resistance of one load, ohms
 */
public record Load(Mode mode, double ohms) {
  /**
   * Sorts the heaviest load first: the fewest ohms per channel, with a bridged load before an equal
   * stereo load.
   */
  static final Comparator<Load> HEAVIEST_FIRST =
      Comparator.comparingDouble((Load load) -> load.mode.channelOhms(load.ohms))
          .thenComparing(load -> load.mode == Mode.STEREO);

  /** Returns the id of a step with this load: {@code stereo-4}, {@code bridged-0.5}. */
  public String id() {
    String number =
        ohms == Math.rint(ohms) && ohms < 1e9 ? String.valueOf((long) ohms) : String.valueOf(ohms);
    return mode.word() + "-" + number;
  }

  /** Returns the instruction to connect this load. */
  String connect() {
    String printed = Printer.UTF8.exact(ohms, Unit.OHM);
    return switch (mode) {
      case STEREO -> Sentence.of("Connect {} to each channel.", printed);
      case BRIDGED ->
          Sentence.of("Connect one {} load across the bridge; both terminals are live.", printed);
    };
  }

  /** Returns where the tips of the meter and of the ohmmeter go, and why. */
  String tips() {
    return switch (mode) {
      case STEREO ->
          "Read volts and, amplifier off, ohms at its terminals: 20 mΩ of lead is 2 % at 1 Ω.";
      case BRIDGED ->
          "Read volts and, amplifier off, ohms at its terminals, no grounded clip: 20 mΩ of lead is"
              + " 2 % at 1 Ω.";
    };
  }
}
