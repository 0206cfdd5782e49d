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

/** Updates the desk: keys go to the screen, intents and events to the walk. */
public final class DeskLoop {
  private static final int PASTE_MOST = TextField.MOST;

  private final Walker walker;

  /** Makes a loop that updates walks with the given walker. */
  public DeskLoop(Walker walker) {
    this.walker = walker;
  }

  /** Returns the new desk and what is asked of the outside world. */
  public DeskNext update(Desk desk, DeskEvent event) {
    if (event instanceof DeskEvent.Pressed pressed) {
      return pressed(desk, pressed.key());
    }
    if (event instanceof DeskEvent.Pasted pasted) {
      return pasted(desk, pasted.text());
    }
    if (event instanceof DeskEvent.OfWalk walk) {
      return walked(aged(desk, walk.event()), List.of(walk.event()), List.of());
    }
    if (event instanceof DeskEvent.MetersRead read) {
      return metered(desk, read.meters());
    }
    return quiet(told(desk, event));
  }

  /** Time makes a value stale even where its meter says nothing more. */
  private static Desk aged(Desk desk, Event event) {
    return event instanceof Event.Tick tick && !desk.meters().isEmpty()
        ? desk.metering(
            desk.meters().at(TimeUnit.NANOSECONDS.toMillis(tick.monoNanos()), tick.wallMillis()))
        : desk;
  }

  /**
   * Rings when supply current or terminal volts leave what the brief says, and if it gets other.
   */
  private static DeskNext metered(Desk desk, Meters read) {
    Optional<Alarm> before = desk.meters().alarm();
    Optional<Alarm> alarm = SupplyWatch.alarm(desk.walk(), read.alarming(before));
    boolean other = !alarm.map(Alarm::kind).equals(before.map(Alarm::kind));
    boolean rings = other && alarm.filter(a -> a.kind().rings()).isPresent();
    List<Effect> effects = rings ? List.of(new Effect.Bell()) : List.of();
    return new DeskNext(desk.metering(read.alarming(alarm)), effects, List.of());
  }

  private static Desk told(Desk desk, DeskEvent event) {
    if (event instanceof DeskEvent.WalkReady ready) {
      return opened(desk, ready.model());
    }
    if (event instanceof DeskEvent.WalkClosed) {
      return closed(desk);
    }
    if (event instanceof DeskEvent.LibraryRead read) {
      return desk.with(read.library());
    }
    if (event instanceof DeskEvent.CautionRead) {
      return desk.capturing(desk.waves().confirmed());
    }
    if (event instanceof DeskEvent.CaptureRead read) {
      return captured(desk, read);
    }
    if (event instanceof DeskEvent.LiveHeard heard) {
      return desk.hearing(heard.live());
    }
    if (event instanceof DeskEvent.InputKnown known) {
      return desk.capturing(desk.waves().calibrated(known.setup()));
    }
    if (event instanceof DeskEvent.HeldKept kept) {
      return heldKept(desk, kept);
    }
    if (event instanceof DeskEvent.PracticeRead read) {
      return desk.practising(read.practice());
    }
    if (event instanceof DeskEvent.TextReady text) {
      return desk.on(new TextScreen(text.title(), text.lines(), text.charts(), 0, desk.screen()));
    }
    if (event instanceof DeskEvent.LedgerReady ledger) {
      return listed(desk, ledger);
    }
    if (event instanceof DeskEvent.FormsWanted wanted) {
      NewWalk draft = NewWalk.empty().on(wanted.sequence());
      return desk.on(new NewWalkScreen(NewWalkScreen.Stage.AMPLIFIER, 0, draft));
    }
    return desk.saying(Optional.of(((DeskEvent.Told) event).sentence()));
  }

  private static Desk opened(Desk desk, Model model) {
    return desk.with(Optional.of(model))
        .capturing(Waves.of(model.state()))
        .hearing(Live.OFF)
        .on(WalkScreen.fresh());
  }

  private static Desk closed(Desk desk) {
    return desk.with(Optional.<Model>empty())
        .practising(Optional.empty())
        .metering(Meters.none())
        .capturing(Waves.none())
        .hearing(Live.OFF)
        .on(new HomeScreen(0));
  }

  /** A ledger that was long in coming takes nobody away from another screen. */
  private static Desk listed(Desk desk, DeskEvent.LedgerReady ledger) {
    if (desk.screen() instanceof LedgerScreen before) {
      return desk.on(LedgerScreen.of(ledger, before.marked())).saying(Optional.empty());
    }
    return desk.screen() instanceof HomeScreen
        ? desk.on(LedgerScreen.of(ledger, List.of())).saying(Optional.empty())
        : desk;
  }

  private static Desk captured(Desk desk, DeskEvent.CaptureRead read) {
    Desk heard = desk.capturing(desk.waves().after(read.found())).saying(Optional.empty());
    return desk.screen() instanceof WaveScreen screen
        ? heard.on(screen.after(read.asked(), read.found()))
        : heard;
  }

  /** The wave is offered where it was held; anywhere else it is only told where it lies. */
  private static Desk heldKept(Desk desk, DeskEvent.HeldKept kept) {
    boolean there = desk.walk().filter(m -> m.state().currentId().equals(kept.step())).isPresent();
    return there && desk.screen() instanceof WalkScreen screen
        ? desk.on(WaveScreen.of(kept.step(), desk.waves(), screen).holding(kept.file()))
            .saying(Optional.empty())
        : desk.saying(Optional.of("The held wave is kept in " + kept.file() + "."));
  }

  private DeskNext pressed(Desk desk, Key key) {
    if (key.is(Key.Kind.ESCAPE) && desk.walk().isPresent()) {
      boolean asked = desk.walk().get().isStopped() && desk.screen() instanceof WalkScreen;
      Desk walking = asked ? desk : desk.on(WalkScreen.fresh());
      return walked(walking.saying(Optional.empty()), List.of(new Intent.Stop()), List.of());
    }
    Desk heard = desk.with(desk.walk().map(Model::silent));
    Answer answer = heard.screen().press(key, heard);
    Desk next = heard.on(answer.next()).saying(answer.notice());
    DeskNext done = walked(next, answer.intents(), answer.wishes());
    return isRefused(answer, done)
        ? new DeskNext(done.desk().on(desk.screen()), List.of(), List.of())
        : done;
  }

  /** A refused intent leaves the screen as it was, so that what was typed is not lost. */
  private static boolean isRefused(Answer answer, DeskNext done) {
    return !answer.intents().isEmpty()
        && done.effects().isEmpty()
        && done.desk().walk().flatMap(Model::message).isPresent();
  }

  private DeskNext pasted(Desk desk, String text) {
    Desk now = desk;
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

  private DeskNext walked(Desk desk, List<? extends Event> events, List<Wish> wishes) {
    Desk now = desk;
    List<Effect> effects = new ArrayList<>();
    for (Event event : events) {
      if (now.walk().isPresent()) {
        Next next = walker.update(now.walk().get(), event);
        effects.addAll(next.effects());
        now = settled(now, next.model());
      }
    }
    return new DeskNext(now, effects, wishes);
  }

  /**
   * What was being typed for one step must not reach the next, or the same one in another state.
   */
  private static Desk settled(Desk desk, Model next) {
    Desk now = desk.with(Optional.of(next));
    WalkState before = desk.walk().orElseThrow().state();
    String step = next.state().currentId();
    boolean sameStep = before.currentId().equals(step);
    boolean same =
        sameStep
            && before.hold() == next.state().hold()
            && before.step(step).status() == next.state().step(step).status()
            && isToBeArmed(before) == isToBeArmed(next.state());
    if (same || !(desk.screen() instanceof WalkScreen screen)) {
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

  private static DeskNext quiet(Desk desk) {
    return new DeskNext(desk, List.of(), List.of());
  }
}
