package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import loadwalk.walk.fact.Fact;

/**
 * The outcome of an update.
 *
 * @param model the new model
 * @param effects the effects to perform, in order
 */
public record Next(Model model, List<Effect> effects) {
  /** Copies the effects. */
  public Next {
    effects = List.copyOf(effects);
  }

  static Next quiet(Model model) {
    return new Next(model, List.of());
  }

  /** Returns the model with the reason why an intent is refused; nothing else changes. */
  static Next refused(Model model, String why) {
    return quiet(model.saying(why));
  }

  /** Sends facts to the journal; they queue behind facts already on their way. */
  static Next keeping(Model model, List<Fact> facts) {
    if (facts.isEmpty()) {
      return quiet(model);
    }
    boolean idle = !model.isWriting();
    Model waiting = model.waitingFor(facts);
    return idle
        ? new Next(waiting, List.of(new Effect.AppendJournal(waiting.waiting())))
        : quiet(waiting);
  }

  Next and(Effect effect) {
    List<Effect> more = new ArrayList<>(effects);
    more.add(effect);
    return new Next(model, more);
  }
}
