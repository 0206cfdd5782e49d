package loadwalk.view;

import java.util.Locale;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Step;
import loadwalk.walk.Targets;
import loadwalk.walk.WalkState;

/** Says in words what a step wants. */
final class Words {
  private static final Printer PRINTER = Printer.UTF8;

  private Words() {}

  static String ohms(double ohms) {
    return PRINTER.exact(ohms, Unit.OHM);
  }

  static String upper(Verdict verdict) {
    return verdict.word().toUpperCase(Locale.ROOT);
  }

  static Style style(Verdict verdict) {
    switch (verdict) {
      case CLEAR:
        return Style.GOOD;
      case HEED:
        return Style.HEED;
      default:
        return Style.HALT;
    }
  }

  /** Returns what to connect and do for a step. */
  static String instruction(WalkState state, PlannedStep planned) {
    Step step = planned.step();
    Optional<Target> target = Targets.of(state, planned);
    if (step instanceof Step.Note note) {
      return note.text();
    }
    if (step instanceof Step.Music music) {
      return "Play music for " + number(music.minutes()) + " min and listen.";
    }
    if (step instanceof Step.Idle) {
      return "No tone. Read the supply current at rest.";
    }
    if (target.isEmpty()) {
      return "Nothing has been measured that this step could take up again; skip it.";
    }
    String load = load(target.get());
    if (step instanceof Step.WarmUp warm) {
      return load
          + " Run at about "
          + number(warm.powerFraction() * 100)
          + " % of full power for "
          + number(warm.minutes())
          + " min.";
    }
    if (step instanceof Step.OpenLoad) {
      return "Set a level below the limit into "
          + ohms(target.get().ohms())
          + ", read the output, then take the load off, generator untouched, and read again.";
    }
    String again = Targets.recheckOf(state, planned).map(of -> "Once more " + of + ". ").orElse("");
    return again
        + load
        + " Raise "
        + PRINTER.exact(state.opened().sequence().toneHertz(), Unit.HERTZ)
        + " to "
        + PRINTER.exact(state.opened().sequence().limitThdPercent(), Unit.PERCENT)
        + " THD and read.";
  }

  private static String load(Target target) {
    return target.mode() == Mode.STEREO
        ? "Connect " + ohms(target.ohms()) + " to each channel."
        : "Connect one load of "
            + ohms(target.ohms())
            + " across the bridge; both terminals are live.";
  }

  static String number(double value) {
    return PRINTER.exact(value, Unit.ONE).strip();
  }
}
