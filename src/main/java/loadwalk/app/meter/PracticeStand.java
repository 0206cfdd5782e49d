package loadwalk.app.meter;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.practice.PracticeRig;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * The practice amplifier on its bench while its meters are asked from outside: what is connected is
 * set by hand, and the heatsink follows in real time.
 */
final class PracticeStand {
  /** What {@link #set} understands. */
  static final String WORDS =
      "stereo OHMS, bridged OHMS, open (load taken off), idle, overload (every meter)";

  private static final Pattern LOAD =
      Pattern.compile("(stereo|bridged)\\s+(\\d{1,3}(?:\\.\\d{1,3})?)");
  private static final double LEAST_OHMS = 0.25;
  private static final double WARM_SECONDS = 600;
  private static final double OVERLOAD = 9.9e37;

  private final Clocks clocks;
  private PracticeRig rig;
  private long since;
  private Setting setting = new Setting(Mode.STEREO, 4, Target.Kind.LOADED, false);

  /** What stands on the bench. */
  private record Setting(Mode mode, double ohms, Target.Kind kind, boolean overloaded) {
    double powerFraction() {
      return kind == Target.Kind.LOADED ? 1 : 0;
    }

    Setting as(Target.Kind next) {
      return new Setting(mode, ohms, next, false);
    }

    String told() {
      if (overloaded) {
        return "On the bench: every meter shows overload.";
      }
      String load = Printer.ASCII.value(ohms, Unit.OHM, 3);
      return switch (kind) {
        case LOADED -> Sentence.of("On the bench: {} {}, at the limit.", mode.word(), load);
        case OPEN_LOAD -> Sentence.of("On the bench: {} {}, load taken off.", mode.word(), load);
        case IDLE, WARM_UP -> "On the bench: idle, no tone.";
      };
    }
  }

  /** Puts a warm amplifier at its limit into 4 ohms on both channels. */
  PracticeStand(long seed, Clocks clocks) {
    this.clocks = clocks;
    this.rig = PracticeRig.ofSeed(seed).warm(WARM_SECONDS, 0.5);
    this.since = clocks.monoNanos();
  }

  PracticeRig rig() {
    return rig;
  }

  /** Sets what is connected, as typed; returns in words what stands there now. */
  synchronized String set(String typed) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    Matcher load = LOAD.matcher(text);
    Setting next = setting;
    if (load.matches() && Double.parseDouble(load.group(2)) >= LEAST_OHMS) {
      Mode mode = load.group(1).equals("stereo") ? Mode.STEREO : Mode.BRIDGED;
      next = new Setting(mode, Double.parseDouble(load.group(2)), Target.Kind.LOADED, false);
    } else if (text.equals("open")) {
      next = setting.as(Target.Kind.OPEN_LOAD);
    } else if (text.equals("idle")) {
      next = setting.as(Target.Kind.IDLE);
    } else if (text.equals("overload")) {
      next = new Setting(setting.mode, setting.ohms, setting.kind, true);
    } else {
      return Sentence.of("Type one of: {}.", WORDS);
    }
    rig = now();
    since = clocks.monoNanos();
    setting = next;
    return setting.told();
  }

  private PracticeRig now() {
    double seconds = TimeUnit.NANOSECONDS.toSeconds(clocks.monoNanos() - since);
    return rig.run(seconds, setting.mode, setting.ohms, setting.powerFraction());
  }

  /** Returns what the meter for a reading shows; not a number where it has nothing to measure. */
  synchronized OptionalDouble read(ReadingId id) {
    if (setting.overloaded) {
      return OptionalDouble.of(OVERLOAD);
    }
    // The air of the room is as warm whatever is driven.
    Target.Kind kind = id == ReadingId.AMBIENT_CELSIUS ? Target.Kind.IDLE : setting.kind;
    Map<ReadingId, Double> all = now().read(setting.mode, setting.ohms, kind);
    boolean open = setting.kind == Target.Kind.OPEN_LOAD;
    Double value = all.get(open && id == ReadingId.OUTPUT_VOLTS ? ReadingId.OPEN_VOLTS : id);
    if (value != null) {
      return OptionalDouble.of(value);
    }
    return OptionalDouble.of(id == ReadingId.OUTPUT_VOLTS ? 0 : Double.NaN);
  }
}
