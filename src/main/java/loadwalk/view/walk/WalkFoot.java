package loadwalk.view.walk;

import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.Alarm;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * What the walk's screen says above its keys: an alarm first and always whole, then the message.
 *
 * <p>It grows upwards where both need more than the two lines that are always there.
 *
 * @param alarm the alarm
 * @param message what else there is to say; may be empty
 * @param style how the message looks
 */
record WalkFoot(Optional<String> alarm, String message, Style style) {
  private static final int LINES_LEAST = 2;
  private static final int MESSAGE_LINES_MOST = 2;
  private static final int RULE_AND_KEYS = 2;

  static WalkFoot of(ProgramState program, WalkScreen screen) {
    Model model = program.walk().orElseThrow();
    if (screen.prompt().isPresent()) {
      return new WalkFoot(Optional.empty(), "", Style.TEXT);
    }
    return model
        .keepProblem()
        .map(why -> new WalkFoot(alarm(program, model), notOnDisk(why), Style.HALT))
        .orElseGet(
            () ->
                new WalkFoot(
                    alarm(program, model),
                    model.message().or(program::notice).orElse(""),
                    Style.HEED));
  }

  private static String notOnDisk(String why) {
    return Sentence.of(
        "NOT ON DISK: {} The walk is held; nothing on the screen is lost. Trying again.", why);
  }

  private static Optional<String> alarm(ProgramState program, Model model) {
    WalkState state = model.state();
    boolean running = state.step(state.currentId()).status() == Status.RUNNING;
    return program.meters().alarm().map(Alarm::sentence).filter(told -> running);
  }

  /** Returns how many rows it takes, the rule above and the keys below among them. */
  int rows(Canvas canvas) {
    int lines = alarmLines(canvas) + Math.min(MESSAGE_LINES_MOST, lines(canvas, message));
    return RULE_AND_KEYS + Math.max(LINES_LEAST, lines);
  }

  private int alarmLines(Canvas canvas) {
    return alarm.map(text -> lines(canvas, text)).orElse(0);
  }

  private static int lines(Canvas canvas, String text) {
    return text.isEmpty() ? 0 : canvas.fold(text, width(canvas)).size();
  }

  private static int width(Canvas canvas) {
    return canvas.columns() - 2;
  }

  /** Paints all but the keys, over whatever stood there. */
  void paint(Canvas canvas) {
    int top = canvas.rows() - rows(canvas);
    canvas.clear(new Area(0, top, canvas.columns(), canvas.rows() - 1 - top));
    canvas.rule(top);
    int row =
        canvas.paragraph(
            1, top + 1, width(canvas), alarmLines(canvas), alarm.orElse(""), Style.HALT);
    canvas.paragraph(1, row, width(canvas), MESSAGE_LINES_MOST, message, style);
  }
}
