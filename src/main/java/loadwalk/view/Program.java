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
import loadwalk.walk.Model;

/**
 * All that is on the screen and behind it.
 *
 * @param screen where the operator is
 * @param state what the screens show
 */
public record Program(Screen screen, ProgramState state) {

  /** Returns the program at start: the home screen, nothing read yet. */
  public static Program atHome(String home, Rules rules) {
    return new Program(new HomeScreen(0), ProgramState.atStart(home, rules));
  }

  /** Returns the program with a walk just opened or read back. */
  Program opened(Model model) {
    return new Program(WalkScreen.fresh(), state.opened(model));
  }

  /** Returns the program without its walk, at home. */
  Program closed() {
    return new Program(new HomeScreen(0), state.closed());
  }

  Program on(Screen next) {
    return new Program(next, state);
  }

  Program knowing(ProgramState next) {
    return new Program(screen, next);
  }

  Program with(Optional<Model> model) {
    return new Program(screen, state.with(model));
  }

  Program saying(Optional<String> sentence) {
    return new Program(screen, state.saying(sentence));
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

  /** Paints the program for a terminal. */
  public Frame paint(Size size, Look look) {
    Canvas canvas = new Canvas(size, look);
    if (size.isEnough()) {
      screen.paint(canvas, state);
      Optional<String> notKept = walk().flatMap(Model::keepProblem);
      paintAlarm(canvas, notKept.isPresent() ? 1 : 0);
      notKept.ifPresent(why -> paintNotKept(canvas, why));
    } else {
      TooSmall.paint(canvas, walk());
    }
    return canvas.frame();
  }

  /**
   * An alarm shows at the top of every screen that does not show it itself, on one line so that it
   * covers no more than the heading; its remedy goes where there is no room for both.
   */
  private void paintAlarm(Canvas canvas, int row) {
    if (!screen.tellsAlarm() && state.meters().alarm().isPresent()) {
      Alarm alarm = state.meters().alarm().get();
      int room = canvas.columns() - 2;
      String line = alarm.sentence().length() <= room ? alarm.sentence() : alarm.what();
      canvas.fill(row, Style.HALT);
      canvas.text(1, row, canvas.shortened(line, room), Style.HALT);
    }
  }

  /** A full disk shows on every screen; the walk shows it at its own foot. */
  private void paintNotKept(Canvas canvas, String why) {
    if (!screen.tellsNotKept(state)) {
      canvas.fill(0, Style.HALT);
      String text = Sentence.of("NOT ON DISK: {} The walk is held. Trying again.", why);
      canvas.text(1, 0, canvas.shortened(text, canvas.columns() - 2), Style.HALT);
    }
  }
}
