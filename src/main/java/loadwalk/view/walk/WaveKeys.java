package loadwalk.view.walk;

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
      return Answer.say(screen, "A wave is taken while a step runs that asks for output volts.");
    }
    WalkScreen back = screen.at(screen.focus());
    Live live = program.live();
    boolean held = live.state() == Live.State.HELD;
    if (key.is(Key.Kind.HOLD)) {
      return live.reading().isPresent() && live.isOn()
          ? Answer.ask(screen, new Effect.Hold(!held))
          : Answer.say(screen, "Nothing is heard that could be held; Ctrl-L listens.");
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

  /** Returns the keys that mean something now, a sentence each. */
  static String words(Live live, WalkState state) {
    if (!areUseful(state)) {
      return "";
    }
    if (live.state() == Live.State.HELD) {
      return "Ctrl-W takes what is held. Ctrl-T goes on. Ctrl-L ends. ";
    }
    return live.isOn()
        ? "Ctrl-T holds. Ctrl-L ends. "
        : "Ctrl-W takes a captured wave. Ctrl-L listens live. ";
  }
}
