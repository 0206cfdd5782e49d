package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import loadwalk.walk.fact.Fact;

/**
 * The outcome of an update.
 *
 * @param model the new model
 * @param effects what the outside world is asked to do, in order
 */
public record Next(Model model, List<Effect> effects) {
  /** Copies the effects. */
  public Next {
    effects = List.copyOf(effects);
  }

  static Next quiet(Model model) {
    return new Next(model, List.of());
  }

  /** Tells the operator why an intent is refused; nothing else changes. */
  static Next refused(Model model, String why) {
    return quiet(model.saying(why));
  }

  /** Sends facts to the journal; behind facts already on their way they wait their turn. */
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
