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
    if (event instanceof ProgramEvent.Pressed pressed) {
      return pressed(program, pressed.key());
    }
    if (event instanceof ProgramEvent.Pasted pasted) {
      return pasted(program, pasted.text());
    }
    if (event instanceof ProgramEvent.OfWalk walk) {
      return walked(aged(program, walk.event()), List.of(walk.event()), List.of());
    }
    if (event instanceof ProgramEvent.MetersRead read) {
      return metered(program, read.meters());
    }
    return quiet(told(program, event));
  }

  /** Time makes a value stale even where its meter says nothing more. */
  private static Program aged(Program program, Event event) {
    return event instanceof Event.Tick tick && !program.meters().isEmpty()
        ? program.metering(
            program.meters().at(TimeUnit.NANOSECONDS.toMillis(tick.monoNanos()), tick.wallMillis()))
        : program;
  }

  /**
   * Rings when supply current or terminal volts leave what the brief says, and if it gets other.
   */
  private static ProgramNext metered(Program program, Meters read) {
    Optional<Alarm> before = program.meters().alarm();
    Optional<Alarm> alarm = SupplyWatch.alarm(program.walk(), read.alarming(before));
    boolean other = !alarm.map(Alarm::kind).equals(before.map(Alarm::kind));
    boolean rings = other && alarm.filter(a -> a.kind().rings()).isPresent();
    List<Effect> effects = rings ? List.of(new Effect.Bell()) : List.of();
    return new ProgramNext(program.metering(read.alarming(alarm)), effects, List.of());
  }

  private static Program told(Program program, ProgramEvent event) {
    if (event instanceof ProgramEvent.WalkReady ready) {
      return opened(program, ready.model());
    }
    if (event instanceof ProgramEvent.WalkClosed) {
      return closed(program);
    }
    if (event instanceof ProgramEvent.LibraryRead read) {
      return program.with(read.library());
    }
    if (event instanceof ProgramEvent.CautionRead) {
      return program.capturing(program.waves().confirmed());
    }
    if (event instanceof ProgramEvent.CaptureRead read) {
      return captured(program, read);
    }
    if (event instanceof ProgramEvent.LiveHeard heard) {
      return program.hearing(heard.live());
    }
    if (event instanceof ProgramEvent.InputKnown known) {
      return program.capturing(program.waves().calibrated(known.setup()));
    }
    if (event instanceof ProgramEvent.HeldKept kept) {
      return heldKept(program, kept);
    }
    if (event instanceof ProgramEvent.PracticeRead read) {
      return program.practising(read.practice());
    }
    if (event instanceof ProgramEvent.TextReady text) {
      return program.on(
          new TextScreen(text.title(), text.lines(), text.charts(), 0, program.screen()));
    }
    if (event instanceof ProgramEvent.LedgerReady ledger) {
      return listed(program, ledger);
    }
    if (event instanceof ProgramEvent.FormsWanted wanted) {
      NewWalk draft = NewWalk.empty().on(wanted.sequence());
      return program.on(new NewWalkScreen(NewWalkScreen.Stage.AMPLIFIER, 0, draft));
    }
    return program.saying(Optional.of(((ProgramEvent.Told) event).sentence()));
  }

  private static Program opened(Program program, Model model) {
    return program
        .with(Optional.of(model))
        .capturing(Waves.of(model.state()))
        .hearing(Live.OFF)
        .on(WalkScreen.fresh());
  }

  private static Program closed(Program program) {
    return program
        .with(Optional.<Model>empty())
        .practising(Optional.empty())
        .metering(Meters.none())
        .capturing(Waves.none())
        .hearing(Live.OFF)
        .on(new HomeScreen(0));
  }

  /** A ledger that was long in coming takes nobody away from another screen. */
  private static Program listed(Program program, ProgramEvent.LedgerReady ledger) {
    if (program.screen() instanceof LedgerScreen before) {
      return program.on(LedgerScreen.of(ledger, before.marked())).saying(Optional.empty());
    }
    return program.screen() instanceof HomeScreen
        ? program.on(LedgerScreen.of(ledger, List.of())).saying(Optional.empty())
        : program;
  }

  private static Program captured(Program program, ProgramEvent.CaptureRead read) {
    Program heard = program.capturing(program.waves().after(read.found())).saying(Optional.empty());
    return program.screen() instanceof WaveScreen screen
        ? heard.on(screen.after(read.asked(), read.found()))
        : heard;
  }

  /** The wave is offered where it was held; anywhere else it is only told where it lies. */
  private static Program heldKept(Program program, ProgramEvent.HeldKept kept) {
    boolean there =
        program.walk().filter(m -> m.state().currentId().equals(kept.step())).isPresent();
    return there && program.screen() instanceof WalkScreen screen
        ? program
            .on(WaveScreen.of(kept.step(), program.waves(), screen).holding(kept.file()))
            .saying(Optional.empty())
        : program.saying(Optional.of("The held wave is kept in " + kept.file() + "."));
  }

  private ProgramNext pressed(Program program, Key key) {
    if (key.is(Key.Kind.ESCAPE) && program.walk().isPresent()) {
      boolean asked = program.walk().get().isStopped() && program.screen() instanceof WalkScreen;
      Program walking = asked ? program : program.on(WalkScreen.fresh());
      return walked(walking.saying(Optional.empty()), List.of(new Intent.Stop()), List.of());
    }
    Program heard = program.with(program.walk().map(Model::silent));
    Answer answer = heard.screen().press(key, heard);
    Program next = heard.on(answer.next()).saying(answer.notice());
    ProgramNext done = walked(next, answer.intents(), answer.wishes());
    return isRefused(answer, done)
        ? new ProgramNext(done.program().on(program.screen()), List.of(), List.of())
        : done;
  }

  /** A refused intent leaves the screen as it was, so that what was typed is not lost. */
  private static boolean isRefused(Answer answer, ProgramNext done) {
    return !answer.intents().isEmpty()
        && done.effects().isEmpty()
        && done.program().walk().flatMap(Model::message).isPresent();
  }

  private ProgramNext pasted(Program program, String text) {
    Program now = program;
    int most = Math.min(text.length(), PASTE_MOST);
    for (char c : text.substring(0, most).toCharArray()) {
      if (!Character.isISOControl(c)) {
        now = now.on(now.screen().press(Key.of(c), now).next());
      }
    }
    return quiet(
        text.length() > most
            ? now.saying(Optional.of("The pasted text was cut at " + most + " characters."))
            : now);
  }

  private ProgramNext walked(Program program, List<? extends Event> events, List<Wish> wishes) {
    Program now = program;
    List<Effect> effects = new ArrayList<>();
    for (Event event : events) {
      if (now.walk().isPresent()) {
        Next next = walker.update(now.walk().get(), event);
        effects.addAll(next.effects());
        now = settled(now, next.model());
      }
    }
    return new ProgramNext(now, effects, wishes);
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
    if (same || !(program.screen() instanceof WalkScreen screen)) {
      return now;
    }
    boolean started = sameStep && next.state().step(step).status() == Status.RUNNING;
    boolean begun = started && before.step(step).status() == Status.BRIEFED;
    int row = begun ? RunKeys.firstRow(next.state()) : started ? screen.focus() : 0;
    return now.on(screen.at(row));
  }

  private static boolean isToBeArmed(WalkState state) {
    return state.current().filter(planned -> Gate.needsArming(state, planned)).isPresent();
  }

  private static ProgramNext quiet(Program program) {
    return new ProgramNext(program, List.of(), List.of());
  }
}
