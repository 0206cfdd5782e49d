package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import loadwalk.walk.fact.Fact;

/** Handles the intents that set a paused or stopped walk going again. */
public final class PausedWalk {
  /** The message that says what can be done with a paused walk. */
  public static final String TOLD =
      "Everything entered is on disk. You can leave the walk now and resume it another day. Never"
          + " leave a powered amplifier alone.";

  static final String NOTHING_HELD = "Nothing is paused or stopped.";

  private PausedWalk() {}

  /** Resumes the walk; if the amplifier cooled meanwhile, that is recorded first. */
  static Next resume(Model model) {
    List<Fact> facts = new ArrayList<>();
    WarmClock.cooledBetween(model.state(), model.clock().wallMillis()).ifPresent(facts::add);
    facts.add(new Fact.Resumed());
    return Next.keeping(model, facts);
  }

  /** Takes the reason for a stop; the walk is then paused. */
  static Next explain(Model model, String reason) {
    return reason.isBlank()
        ? Next.refused(model, "Say in a few words why it was stopped.")
        : Next.keeping(model, List.of(new Fact.StopExplained(reason.strip())));
  }
}
