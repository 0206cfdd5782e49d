package loadwalk.view.walk;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.PlannedStep;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.TextField;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.screen.TextScreen;
import loadwalk.view.state.MeterFill;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * The walk: the current step, what it waits for, and how far the walk has come.
 *
 * @param focus the row in focus of the step's panel
 * @param field what is being typed
 * @param prompt the question that is open
 */
public record WalkScreen(int focus, TextField field, Optional<Prompt> prompt) implements Screen {

  /** Returns the screen of a walk, its first row in focus. */
  public static WalkScreen fresh() {
    return new WalkScreen(0, TextField.EMPTY, Optional.empty());
  }

  WalkScreen typing(TextField next) {
    return new WalkScreen(focus, next, prompt);
  }

  WalkScreen at(int row) {
    return new WalkScreen(row, TextField.EMPTY, Optional.empty());
  }

  WalkScreen asking(Prompt question) {
    return new WalkScreen(focus, TextField.EMPTY, Optional.of(question));
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    WalkPainter.paint(canvas, program, this);
  }

  /** Tells whether it differs from a screen by what is typed into a reading, and nothing else. */
  public boolean isTypedOnFrom(WalkScreen before, ProgramState program) {
    return focus == before.focus
        && prompt.isEmpty()
        && before.prompt.isEmpty()
        && RunPanel.takesTyping(program, this);
  }

  /** Paints the reading in focus alone, on the row it stands in; false where it has no room. */
  public boolean paintTyped(Canvas canvas, ProgramState program, int row) {
    Area panel = WalkPainter.panel(canvas, WalkFoot.of(program, this), row);
    if (panel.rows() < 1) {
      return false;
    }
    Area line = new Area(panel.column(), row, panel.columns(), 1);
    RunPanel.paintFocus(canvas, program, this, line);
    return true;
  }

  @Override
  public boolean isWalk() {
    return true;
  }

  @Override
  public boolean tellsAlarm() {
    return prompt.isEmpty();
  }

  @Override
  public boolean tellsNotKept(ProgramState program) {
    return prompt.isEmpty() || program.walk().orElseThrow().isStopped();
  }

  /**
   * What was being typed for one step must not reach the next, or the same one in another state.
   */
  @Override
  public Screen afterWalk(WalkState before, WalkState now) {
    String step = now.currentId();
    if (isAskingWhere() && before != now) {
      return at(focus);
    }
    boolean sameStep = before.currentId().equals(step);
    boolean same =
        sameStep
            && before.hold() == now.hold()
            && before.step(step).status() == now.step(step).status()
            && isToBeArmed(before) == isToBeArmed(now);
    if (same) {
      return this;
    }
    boolean started = sameStep && now.step(step).status() == Status.RUNNING;
    boolean begun = started && before.step(step).status() == Status.BRIEFED;
    return at(begun ? RunKeys.firstRow(now) : started ? focus : 0);
  }

  /** Tells whether the question is open to which place the whole walk is to be written. */
  boolean isAskingWhere() {
    return prompt.filter(asked -> asked.kind() == Prompt.Kind.ANEW).isPresent();
  }

  private static boolean isToBeArmed(WalkState state) {
    return state.current().filter(planned -> Gate.needsArming(state, planned)).isPresent();
  }

  @Override
  public Optional<Screen> withHeld(String step, String file, ProgramState program) {
    Model model = program.walk().orElseThrow();
    boolean free = prompt.isEmpty() && !model.isStopped() && WaveKeys.areUseful(model.state());
    return free && program.isAt(step)
        ? Optional.of(WaveScreen.of(step, program.waves(), this).holding(file))
        : Optional.empty();
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    Model model = program.walk().orElseThrow();
    if (key.is(Key.Kind.F9) && model.keepProblem().isPresent()) {
      return Answer.stay(asking(Prompt.of(Prompt.Kind.ANEW, model.state().currentId())));
    }
    if (model.isStopped() && !isAskingWhere()) {
      return stopped(key);
    }
    if (prompt.isPresent()) {
      return prompted(key, prompt.get());
    }
    Optional<Answer> command = command(key, program, model);
    if (command.isPresent()) {
      return command.get();
    }
    if (model.state().hold() == WalkState.Hold.PAUSED) {
      return key.is(Key.Kind.ENTER) ? Answer.want(at(0), new Intent.Resume()) : typed(key);
    }
    return model.state().current().map(p -> stepKey(key, model, p)).orElseGet(() -> typed(key));
  }

  private Answer typed(Key key) {
    return Answer.stay(typing(field.after(key)));
  }

  private Answer stopped(Key key) {
    return key.is(Key.Kind.ENTER)
        ? Answer.want(at(0), new Intent.ExplainStop(field.text()))
        : typed(key);
  }

  private Answer prompted(Key key, Prompt question) {
    if (key.is(Key.Kind.F10)) {
      return Answer.stay(at(focus));
    }
    Optional<Prompt> next = question.behind();
    if (key.is(question.key()) && next.isPresent()) {
      return Answer.stay(asking(next.get()));
    }
    if (!key.is(Key.Kind.ENTER)) {
      return typed(key);
    }
    Optional<String> refusal = question.refusal(field.text());
    if (refusal.isPresent()) {
      return Answer.say(this, refusal.get());
    }
    return switch (question.kind()) {
      case LEAVE -> left();
      // It closes once the walk is written; until then what was typed stays to be mended.
      case ANEW -> Answer.want(this, question.answered(field.text()));
      default -> Answer.want(at(focus), question.answered(field.text()));
    };
  }

  /** Leaves without the entry that is not on disk, where that was typed. */
  private Answer left() {
    return field.text().strip().equalsIgnoreCase(Prompt.LEAVE_WORD)
        ? Answer.ask(at(focus), new Effect.CloseWalk())
        : Answer.stay(at(focus));
  }

  /** The keys that work at every step. */
  private Optional<Answer> command(Key key, ProgramState program, Model model) {
    WalkState state = model.state();
    String step = state.currentId();
    switch (key.kind()) {
      case F1:
        return Optional.of(Answer.stay(TextScreen.of("Help", StepHelp.lines(state), this)));
      case F2:
        return Optional.of(Answer.stay(asking(Prompt.of(Prompt.Kind.NOTE, step))));
      case F3:
        return Optional.of(
            state.isFinished()
                ? Answer.say(this, "Every step is done; there is nothing to skip.")
                : Answer.stay(asking(Prompt.of(ending(state), step))));
      case F4:
        return Optional.of(Answer.stay(ReadingsScreen.of(state)));
      case F5:
        boolean paused = state.hold() == WalkState.Hold.PAUSED;
        return Optional.of(Answer.want(at(0), paused ? new Intent.Resume() : new Intent.Pause()));
      case F6:
        return Optional.of(Answer.ask(this, new Effect.ShowSheet(state.opened().walk())));
      case F7:
        return Optional.of(reason(model));
      case F8:
        return Optional.of(
            program.practice().isPresent()
                ? Answer.ask(at(focus), new Effect.FillStep())
                : filled(MeterFill.all(program)));
      case F11:
        return Optional.of(inFocus(program, model));
      case F9:
        return Optional.of(Answer.want(at(0), new Intent.Finish()));
      case F10:
        return Optional.of(
            model.isWriting()
                ? Answer.stay(asking(Prompt.of(Prompt.Kind.LEAVE, step)))
                : Answer.ask(this, new Effect.CloseWalk()));
      case WAVE:
      case LISTEN:
      case HOLD:
        return Optional.of(WaveKeys.press(this, key, program, state));
      case F12:
        return Optional.of(Answer.ask(this, new Effect.ShowPlanSoFar()));
      default:
        return Optional.empty();
    }
  }

  /** Returns the question that ends the current step without its readings. */
  private static Prompt.Kind ending(WalkState state) {
    return isDriving(state) ? Prompt.Kind.ENDED : Prompt.Kind.SKIP;
  }

  /** Tells whether the current step drives a load now. */
  static boolean isDriving(WalkState state) {
    return state
        .current()
        .filter(planned -> state.step(planned.id()).status() == Status.RUNNING)
        .flatMap(planned -> Targets.of(state, planned))
        .filter(target -> target.kind().drives())
        .isPresent();
  }

  private Answer filled(MeterFill fill) {
    List<Intent> intents = fill.intent().map(List::of).orElse(List.of());
    return new Answer(
        intents.isEmpty() ? this : at(focus), intents, List.of(), Optional.of(fill.told()));
  }

  /** Reads the meter of the row in focus. */
  private Answer inFocus(ProgramState program, Model model) {
    WalkState state = model.state();
    return state
        .current()
        .flatMap(planned -> readingInFocus(state, planned))
        .map(id -> filled(MeterFill.one(program, id)))
        .orElseGet(() -> Answer.say(this, "No reading is in focus."));
  }

  private Optional<ReadingId> readingInFocus(WalkState state, PlannedStep planned) {
    if (state.step(planned.id()).status() == Status.BRIEFED) {
      return BriefKeys.onColdLoad(this, state, planned)
          ? Optional.of(BriefKeys.coldLoad(state, planned))
          : Optional.empty();
    }
    List<ReadingId> rows = RunKeys.readings(state, planned);
    return focus < rows.size() ? Optional.of(rows.get(focus)) : Optional.empty();
  }

  /** Tells whether the row in focus is a reading that a connected meter can fill. */
  boolean hasMeterInFocus(ProgramState program) {
    WalkState state = program.walk().orElseThrow().state();
    boolean running = state.step(state.currentId()).status() == Status.RUNNING;
    List<ReadingId> rows =
        state.current().map(planned -> RunKeys.readings(state, planned)).orElse(List.of());
    return running && focus < rows.size() && program.meters().nearest(rows.get(focus)).isPresent();
  }

  /** What the reason key means now: lift a halt, stand by a reading, end early, warm again. */
  private Answer reason(Model model) {
    WalkState state = model.state();
    String id = state.currentId();
    StepState step = state.step(id);
    List<ReadingId> open = step.openDoubts();
    if (!open.isEmpty()) {
      return Answer.stay(asking(Prompt.of(Prompt.Kind.STAND_BY, id, open.get(0))));
    }
    if (step.status() == Status.BRIEFED && isHalted(step)) {
      return Answer.stay(asking(Prompt.of(Prompt.Kind.LIFT, id)));
    }
    boolean warming =
        state.current().filter(p -> p.step().warmUp().isPresent()).isPresent()
            && step.status() == Status.RUNNING;
    if (warming) {
      return Answer.stay(asking(Prompt.of(Prompt.Kind.EARLY, id)));
    }
    return state.cooled().isPresent()
        ? Answer.want(at(0), new Intent.WarmAgain())
        : Answer.say(this, "Nothing here needs a reason: no halt, no doubt, no warm-up running.");
  }

  static boolean isHalted(StepState step) {
    return step.brief().filter(b -> b.verdict() == Verdict.HALT).isPresent()
        && step.liftReason().isEmpty();
  }

  private Answer stepKey(Key key, Model model, PlannedStep planned) {
    StepState step = model.state().step(planned.id());
    if (step.status() == Status.BRIEFED) {
      return BriefKeys.press(this, key, model.state(), planned);
    }
    return step.status() == Status.RUNNING
        ? RunKeys.press(this, key, model.state(), planned)
        : typed(key);
  }
}
