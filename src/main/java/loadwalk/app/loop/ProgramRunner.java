package loadwalk.app.loop;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramNext;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Key;
import loadwalk.walk.Effect;

/** Runs the program: one event in, all that follows from it done, on the caller's thread alone. */
public final class ProgramRunner {
  private final ProgramUpdate updates;
  private final EffectRunner effects;
  private volatile Program program;
  private volatile int turns;

  /** Makes the runner of a program that waits for its first event. */
  public ProgramRunner(ProgramUpdate updates, EffectRunner effects, Program program) {
    this.updates = updates;
    this.effects = effects;
    this.program = program;
  }

  /** Returns the program as it stands; any thread may ask. */
  public Program program() {
    return program;
  }

  /** Takes the notice down and returns it, so that it is told once. */
  Optional<String> takeNotice() {
    Optional<String> notice = program.state().notice();
    program = program.silent();
    return notice;
  }

  /** Tells whether the program is to be left. */
  public boolean isLeaving() {
    return effects.isLeaving();
  }

  /**
   * Returns how often what keys answer has become something else without the hand that types
   * knowing: a key typed before the last of these times does not answer what is there now.
   */
  int turns() {
    return turns;
  }

  /**
   * Returns the program as a key would leave it, were it not for the outside; any thread may ask.
   */
  Program after(Key key) {
    return updates.update(program, new ProgramEvent.Pressed(key)).program();
  }

  /** Does an effect that comes from no update. */
  public void perform(Effect effect) {
    effects.perform(effect, program).forEach(this::accept);
  }

  /** Takes one event and does everything that follows from it. */
  public void accept(ProgramEvent event) {
    settle(new ArrayDeque<>(List.of(event)));
  }

  /** Takes what has become known outside without an event, such as what a meter said. */
  public void look() {
    settle(new ArrayDeque<>(effects.after(program)));
  }

  private void settle(Deque<ProgramEvent> waiting) {
    while (!waiting.isEmpty()) {
      ProgramEvent event = waiting.poll();
      Program before = program;
      ProgramNext next = updates.update(before, event);
      program = next.program();
      if (next.program().turnsFrom(before, event.isByHand())) {
        turns++;
      }
      next.effects().forEach(effect -> waiting.addAll(effects.perform(effect, program)));
      if (waiting.isEmpty()) {
        waiting.addAll(effects.after(program));
      }
    }
  }
}
