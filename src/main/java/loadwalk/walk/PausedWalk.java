package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import loadwalk.walk.WalkState.Hold;

/** Takes intents while the walk is paused or stopped. */
final class PausedWalk {
  private PausedWalk() {}

  static Next intended(Model model, Intent intent) {
    if (intent instanceof Intent.Note note) {
      return Steps.note(model, note);
    }
    if (intent instanceof Intent.Attach attach) {
      return Steps.attach(model, attach);
    }
    if (model.state().hold() == Hold.STOPPED) {
      return stopped(model, intent);
    }
    if (intent instanceof Intent.Resume) {
      List<Fact> facts = new ArrayList<>();
      WarmClock.cooledBetween(model.state(), model.clock().wallMillis()).ifPresent(facts::add);
      facts.add(new Fact.Resumed());
      return Next.keeping(model, facts);
    }
    return Next.refused(model, "The walk is paused: go on first.");
  }

  private static Next stopped(Model model, Intent intent) {
    if (!(intent instanceof Intent.ExplainStop explained)) {
      return Next.refused(model, "The walk was stopped: say why first.");
    }
    return explained.reason().isBlank()
        ? Next.refused(model, "Say in a few words why it was stopped.")
        : Next.keeping(model, List.of(new Fact.StopExplained(explained.reason().strip())));
  }
}
