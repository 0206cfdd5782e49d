package loadwalk.view.home;

import java.util.List;
import loadwalk.sequence.Sequence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Style;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;

/**
 * Chooses the practice amplifier, the sequence and how fast time goes.
 *
 * @param row the row in focus: seed, sequence, speed, start
 * @param seed the seed of the amplifier
 * @param sequence the index of the sequence
 * @param speed the index of the speed
 */
record PracticeScreen(int row, long seed, int sequence, int speed) implements Screen {
  static final List<Integer> SPEEDS = List.of(1, 5, 20, 60);
  private static final int ROWS = 4;
  private static final int START = 3;

  static PracticeScreen fresh() {
    return new PracticeScreen(START, 1, 0, START);
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "Practice", Style.HEADING);
    canvas.paragraph(
        1,
        2,
        canvas.columns() - 2,
        4,
        "A simulated amplifier on a simulated bench. Read its meters and type what they show, or"
            + " press F8 to fill them in. Each seed is a different amplifier; seed 1 is an easy"
            + " one.",
        Style.TEXT);
    List<Sequence> all = program.library().sequences();
    String name = all.isEmpty() ? "loading" : all.get(sequence % all.size()).name();
    List<String> lines =
        List.of(
            "amplifier  < seed " + seed + " >",
            "sequence   < " + name + " >",
            "time       < " + SPEEDS.get(speed) + "× >",
            "start");
    Menu.paint(canvas, 7, ROWS, lines, row);
    Keys.paintMessage(canvas, program.notice().orElse(program.library().notOffered()), Style.HEED);
    Keys.paint(canvas, "Up Down", "move", "Left Right", "change", "Enter", "start", "F10", "back");
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    if (Menu.isBack(key)) {
      return Answer.stay(new HomeScreen(0));
    }
    int turn = key.is(Key.Kind.RIGHT) ? 1 : key.is(Key.Kind.LEFT) ? -1 : 0;
    if (turn != 0) {
      return Answer.stay(turned(turn, program.library().sequences()));
    }
    if (key.is(Key.Kind.ENTER)) {
      List<Sequence> all = program.library().sequences();
      return all.isEmpty()
          ? Answer.say(this, "The sequences are still loading.")
          : Answer.ask(
              this,
              new Effect.OpenPractice(
                  all.get(sequence % all.size()).name(), seed, SPEEDS.get(speed)));
    }
    return Answer.stay(new PracticeScreen(Menu.moved(key, row, ROWS), seed, sequence, speed));
  }

  private PracticeScreen turned(int turn, List<Sequence> all) {
    int count = Math.max(1, all.size());
    switch (row) {
      case 0:
        return new PracticeScreen(row, Math.max(1, seed + turn), sequence, speed);
      case 1:
        return new PracticeScreen(row, seed, (sequence + turn + count) % count, speed);
      default:
        return new PracticeScreen(
            row, seed, sequence, (speed + turn + SPEEDS.size()) % SPEEDS.size());
    }
  }
}
