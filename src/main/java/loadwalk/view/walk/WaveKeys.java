package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.view.canvas.Key;
import loadwalk.view.screen.Answer;
import loadwalk.view.state.Live;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/** Keys that bring a captured wave, or the sound input, to the step that runs. */
final class WaveKeys {
  private WaveKeys() {}

  static boolean areUseful(WalkState state) {
    return state
        .current()
        .filter(p -> state.step(p.id()).status() == Status.RUNNING)
        .filter(p -> RunKeys.readings(state, p).contains(ReadingId.OUTPUT_VOLTS))
        .isPresent();
  }

  static Answer press(WalkScreen screen, Key key, ProgramState program, WalkState state) {
    if (!areUseful(state)) {
      return Answer.say(
          screen, "A wave can be taken only while a step that reads output volts runs.");
    }
    WalkScreen back = screen.at(screen.focus());
    Live live = program.live();
    boolean held = live.state() == Live.State.HELD;
    if (key.is(Key.Kind.HOLD)) {
      return live.reading().isPresent() && live.isOn()
          ? Answer.ask(screen, new Effect.Hold(!held))
          : Answer.say(screen, "There is no sound to hold; Ctrl-L listens.");
    }
    if (key.is(Key.Kind.LISTEN)) {
      return live.isOn() || program.waves().cautioned()
          ? Answer.ask(screen, new Effect.Listen(!live.isOn()))
          : Answer.stay(WaveScreen.beforeListening(state.currentId(), program.waves(), back));
    }
    return held
        ? Answer.ask(back, new Effect.KeepHeld(state.currentId()))
        : Answer.stay(WaveScreen.of(state.currentId(), program.waves(), back));
  }

  /**
   * Returns the keys that do something now, a sentence each.
   *
   * @param canFinish whether the step can be finished
   */
  static String words(Live live, WalkState state, boolean canFinish) {
    List<String> words = new ArrayList<>();
    if (areUseful(state)) {
      words.add(waveWords(live));
    }
    if (canFinish) {
      words.add("F9 finishes the step.");
    }
    return String.join(" ", words);
  }

  private static String waveWords(Live live) {
    if (live.state() == Live.State.HELD) {
      return "Ctrl-W takes the held wave. Ctrl-T resumes. Ctrl-L ends.";
    }
    return live.isOn()
        ? "Ctrl-T holds. Ctrl-L ends."
        : "Ctrl-W takes a captured wave. Ctrl-L listens live.";
  }
}
