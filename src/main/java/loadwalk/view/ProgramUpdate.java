package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.StepState.Status;
import loadwalk.walk.WalkState;
import loadwalk.walk.Walker;

/** Updates the program: keys go to the screen, intents and events to the walk. */
public final class ProgramUpdate {
  private static final int PASTE_MOST = TextField.MOST;

  private final Walker walker;

  /** Makes a loop that updates walks with the given walker. */
  public ProgramUpdate(Walker walker) {
    this.walker = walker;
  }

  /** Returns the new program and what is asked of the outside world. */
  public ProgramNext update(Program program, ProgramEvent event) {
    return event.reach(program, this);
  }

  /** Time makes a value stale even where its meter says nothing more. */
  static Program aged(Program program, Event event) {
    Optional<Event.Tick> tick = event.tick();
    return tick.isPresent() && !program.meters().isEmpty()
        ? program.metering(
            program
                .meters()
                .at(TimeUnit.NANOSECONDS.toMillis(tick.get().monoNanos()), tick.get().wallMillis()))
        : program;
  }

  /**
   * Rings when supply current or terminal volts leave what the brief says, and if it gets other.
   */
  static ProgramNext metered(Program program, Meters read) {
    Optional<Alarm> before = program.meters().alarm();
    Optional<Alarm> alarm = SupplyWatch.alarm(program.walk(), read.alarming(before));
    boolean other = !alarm.map(Alarm::kind).equals(before.map(Alarm::kind));
    boolean rings = other && alarm.filter(a -> a.kind().rings()).isPresent();
    List<Effect> effects = rings ? List.of(new Effect.Bell()) : List.of();
    return new ProgramNext(program.metering(read.alarming(alarm)), effects);
  }

  ProgramNext pressed(Program program, Key key) {
    if (key.is(Key.Kind.ESCAPE) && program.walk().isPresent()) {
      boolean asked = program.walk().get().isStopped() && program.screen().ofWalk().isPresent();
      Program walking = asked ? program : program.on(WalkScreen.fresh());
      return walked(walking.saying(Optional.empty()), List.of(new Intent.Stop()));
    }
    Program heard = program.with(program.walk().map(Model::silent));
    Answer answer = heard.screen().press(key, heard);
    Program next = heard.on(answer.next()).saying(answer.notice());
    ProgramNext done = walked(next, answer.intents());
    if (isRefused(answer, done)) {
      return ProgramNext.quiet(done.program().on(program.screen()));
    }
    List<Effect> effects = new ArrayList<>(done.effects());
    effects.addAll(answer.effects());
    return new ProgramNext(done.program(), effects);
  }

  /** A refused intent leaves the screen as it was, so that what was typed is not lost. */
  private static boolean isRefused(Answer answer, ProgramNext done) {
    return !answer.intents().isEmpty()
        && done.effects().isEmpty()
        && done.program().walk().flatMap(Model::message).isPresent();
  }

  static ProgramNext pasted(Program program, String text) {
    Program now = program;
    int most = Math.min(text.length(), PASTE_MOST);
    for (char c : text.substring(0, most).toCharArray()) {
      if (!Character.isISOControl(c)) {
        now = now.on(now.screen().press(Key.of(c), now).next());
      }
    }
    return ProgramNext.quiet(
        text.length() > most
            ? now.saying(Optional.of("The pasted text was cut at " + most + " characters."))
            : now);
  }

  ProgramNext walked(Program program, List<? extends Event> events) {
    Program now = program;
    List<Effect> effects = new ArrayList<>();
    for (Event event : events) {
      if (now.walk().isPresent()) {
        Next next = walker.update(now.walk().get(), event);
        effects.addAll(next.effects());
        now = settled(now, next.model());
      }
    }
    return new ProgramNext(now, effects);
  }

  /**
   * What was being typed for one step must not reach the next, or the same one in another state.
   */
  private static Program settled(Program program, Model next) {
    Program now = program.with(Optional.of(next));
    WalkState before = program.walk().orElseThrow().state();
    String step = next.state().currentId();
    boolean sameStep = before.currentId().equals(step);
    boolean same =
        sameStep
            && before.hold() == next.state().hold()
            && before.step(step).status() == next.state().step(step).status()
            && isToBeArmed(before) == isToBeArmed(next.state());
    Optional<WalkScreen> screen = program.screen().ofWalk();
    if (same || screen.isEmpty()) {
      return now;
    }
    boolean started = sameStep && next.state().step(step).status() == Status.RUNNING;
    boolean begun = started && before.step(step).status() == Status.BRIEFED;
    int row = begun ? RunKeys.firstRow(next.state()) : started ? screen.get().focus() : 0;
    return now.on(screen.get().at(row));
  }

  private static boolean isToBeArmed(WalkState state) {
    return state.current().filter(planned -> Gate.needsArming(state, planned)).isPresent();
  }
}
