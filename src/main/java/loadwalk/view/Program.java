package loadwalk.view;

import java.util.List;
import java.util.Optional;
import loadwalk.plan.Rules;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.canvas.Style;
import loadwalk.view.home.HomeScreen;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.Alarm;
import loadwalk.view.state.ProgramState;
import loadwalk.view.walk.WalkScreen;
import loadwalk.walk.Gate;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * All that is on the screen and behind it.
 *
 * @param screen where the operator is
 * @param state what the screens show
 * @param ofKeys what is to be said of keys that did not do what they seem to, until the next one
 */
public record Program(Screen screen, ProgramState state, Optional<String> ofKeys) {

  /** Returns the program at start: the home screen, nothing read yet. */
  public static Program atHome(String home, Rules rules) {
    return new Program(new HomeScreen(0), ProgramState.atStart(home, rules), Optional.empty());
  }

  /** Returns the program with a walk just opened or read back. */
  Program opened(Model model) {
    return new Program(WalkScreen.fresh(), state.opened(model), Optional.empty());
  }

  /** Returns the program without its walk, at home, where the last words on the walk show. */
  Program closed() {
    List<String> words = LastWords.of(this);
    Program home = new Program(new HomeScreen(0), state.closed(), Optional.empty());
    return words.isEmpty() ? home : home.saying(Optional.of(String.join(" ", words)));
  }

  Program on(Screen next) {
    return new Program(next, state, ofKeys);
  }

  Program knowing(ProgramState next) {
    return new Program(screen, next, ofKeys);
  }

  Program with(Optional<Model> model) {
    return new Program(screen, state.with(model), ofKeys);
  }

  Program saying(Optional<String> sentence) {
    return new Program(screen, state.saying(sentence), ofKeys);
  }

  /** Returns the program that says something of keys, or nothing more of them. */
  Program sayingOfKeys(Optional<String> sentence) {
    return new Program(screen, state, sentence);
  }

  /** Returns the open walk. */
  public Optional<Model> walk() {
    return state.walk();
  }

  /** Returns the lines of the text on the screen; empty where another screen shows. */
  public List<String> text() {
    return screen.text();
  }

  /** Returns the program with its notice taken down. */
  public Program silent() {
    return saying(Optional.empty());
  }

  /**
   * Tells whether keys that were typed for a program before would answer something else here: the
   * walk is at another step or in another state, or another screen came up that no key asked for.
   *
   * @param byHand whether a key made the difference: the screens that keys bring up are known ahead
   */
  public boolean turnsFrom(Program before, boolean byHand) {
    return !Standing.of(walk()).equals(Standing.of(before.walk()))
        || !byHand && screen != before.screen;
  }

  /** Where a walk stands, as far as it gives keys their meaning. */
  private record Standing(
      String step, Status status, WalkState.Hold hold, boolean stopped, boolean armed) {
    static Optional<Standing> of(Optional<Model> walk) {
      return walk.map(
          model -> {
            WalkState state = model.state();
            String step = state.currentId();
            boolean armed =
                state.current().filter(planned -> Gate.needsArming(state, planned)).isEmpty();
            Status status = state.step(step).status();
            return new Standing(step, status, state.hold(), model.isStopped(), armed);
          });
    }
  }

  /** Paints the program for a terminal. */
  public Frame paint(Size size, Look look) {
    Canvas canvas = new Canvas(size, look);
    if (size.isEnough()) {
      screen.paint(canvas, state);
      paintTop(canvas);
    } else {
      TooSmall.paint(canvas, walk(), ofKeys);
    }
    return canvas.frame();
  }

  /**
   * What a screen does not show itself shows at its top, one line each so that it covers no more
   * than the heading: that nothing is on the disk, an alarm, what became of keys.
   */
  private void paintTop(Canvas canvas) {
    int row = 0;
    Optional<String> notKept = walk().flatMap(Model::keepProblem);
    if (notKept.isPresent() && !screen.tellsNotKept(state)) {
      String line = Sentence.of("NOT ON DISK: {} The walk is held. Trying again.", notKept.get());
      paintLine(canvas, row++, line, Style.HALT);
    }
    if (state.meters().alarm().isPresent() && !screen.tellsAlarm()) {
      Alarm alarm = state.meters().alarm().get();
      boolean fits = alarm.sentence().length() <= room(canvas);
      paintLine(canvas, row++, fits ? alarm.sentence() : alarm.what(), Style.HALT);
    }
    if (ofKeys.isPresent()) {
      paintLine(canvas, row, ofKeys.get(), Style.HEED);
    }
  }

  private static void paintLine(Canvas canvas, int row, String line, Style style) {
    canvas.fill(row, style);
    canvas.text(1, row, canvas.shortened(line, room(canvas)), style);
  }

  private static int room(Canvas canvas) {
    return canvas.columns() - 2;
  }
}
