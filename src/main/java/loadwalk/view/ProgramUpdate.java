package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.TextField;
import loadwalk.view.screen.Answer;
import loadwalk.view.state.Alarm;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.view.state.SupplyWatch;
import loadwalk.view.walk.WalkScreen;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.WalkState;

/** Updates the program: keys go to the screen, intents and events to the walk. */
public final class ProgramUpdate {
  private static final int PASTE_MOST = TextField.MOST;

  private final Walker walker;

  /** Makes a loop that updates walks with the given walker. */
  public ProgramUpdate(Walker walker) {
    this.walker = walker;
  }

  /** Returns the new program and its effects. */
  public ProgramNext update(Program program, ProgramEvent event) {
    return event.reach(program, this);
  }

  /** Time makes a value stale even where its meter says nothing more. */
  static Program aged(Program program, Event event) {
    Optional<Event.Tick> tick = event.tick();
    if (tick.isEmpty() || program.state().meters().isEmpty()) {
      return program;
    }
    long monoMillis = TimeUnit.NANOSECONDS.toMillis(tick.get().monoNanos());
    long wallMillis = tick.get().wallMillis();
    return program.knowing(
        program.state().metering(program.state().meters().at(monoMillis, wallMillis)));
  }

  /**
   * Rings when supply current or terminal volts leave what the brief says, and if it gets other.
   */
  static ProgramNext metered(Program program, ConnectedMeters read) {
    Optional<Alarm> before = program.state().meters().alarm();
    Optional<Alarm> alarm = SupplyWatch.alarm(program.walk(), read.alarming(before));
    boolean other = !alarm.map(Alarm::kind).equals(before.map(Alarm::kind));
    boolean rings = other && alarm.filter(a -> a.kind().rings()).isPresent();
    List<Effect> effects = rings ? List.of(new Effect.Bell()) : List.of();
    return new ProgramNext(
        program.knowing(program.state().metering(read.alarming(alarm))), effects);
  }

  ProgramNext pressed(Program program, Key key) {
    if (key.is(Key.Kind.ESCAPE) && program.walk().isPresent()) {
      boolean asked = program.walk().get().isStopped() && program.screen().isWalk();
      Program walking = asked ? program : program.on(WalkScreen.fresh());
      return walked(walking.saying(Optional.empty()), List.of(new Intent.Stop()));
    }
    Program heard = program.with(program.walk().map(Model::silent));
    Answer answer = heard.screen().press(key, heard.state());
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
        now = now.on(now.screen().press(Key.of(c), now.state()).next());
      }
    }
    return ProgramNext.quiet(
        text.length() > most
            ? now.saying(
                Optional.of(Sentence.of("The pasted text was cut after {} characters.", most)))
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

  private static Program settled(Program program, Model next) {
    WalkState before = program.walk().orElseThrow().state();
    return program.with(Optional.of(next)).on(program.screen().afterWalk(before, next.state()));
  }
}
