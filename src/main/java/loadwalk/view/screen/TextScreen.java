package loadwalk.view.screen;

import java.util.ArrayList;
import java.util.List;
import loadwalk.chart.Chart;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Size;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;

/**
 * A text to be read: a sheet, the ledger, a plan, help.
 *
 * @param title what it is
 * @param lines its lines
 * @param charts its charts
 * @param top the first line shown
 * @param back where to return to
 */
public record TextScreen(String title, List<String> lines, List<Chart> charts, int top, Screen back)
    implements Screen {
  private static final int FOOT = 2;

  /** Copies the lists. */
  public TextScreen {
    lines = List.copyOf(lines);
    charts = List.copyOf(charts);
  }

  /** Shows a text without charts, from its first line. */
  public static TextScreen of(String title, List<String> lines, Screen back) {
    return new TextScreen(title, lines, List.of(), 0, back);
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, title, Style.HEADING);
    int room = canvas.rows() - 1 - FOOT;
    for (int i = 0; i < room && top + i < lines.size(); i++) {
      canvas.text(1, 1 + i, lines.get(top + i), Style.TEXT);
    }
    int last = Math.min(lines.size(), top + room);
    String place =
        Sentence.of("lines {} to {} of {}", lines.isEmpty() ? 0 : top + 1, last, lines.size());
    canvas.text(canvas.columns() - place.length() - 1, 0, place, Style.FAINT);
    String stop = program.walk().isPresent() ? "STOP" : "back";
    List<String> keys = new ArrayList<>(List.of("Up Down PageUp PageDown", "move"));
    keys.addAll(charts.isEmpty() ? List.of("Enter", "back") : List.of("F6", "charts"));
    keys.addAll(List.of("F10", "back", "Esc", stop));
    Keys.paint(canvas, keys.toArray(String[]::new));
  }

  @Override
  public List<String> text() {
    return lines;
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    int most = Math.max(0, lines.size() - 1);
    switch (key.kind()) {
      case UP:
        return Answer.stay(at(Math.max(0, top - 1)));
      case DOWN:
        return Answer.stay(at(Math.min(most, top + 1)));
      case PAGE_UP:
        return Answer.stay(at(Math.max(0, top - Size.LEAST.rows() + FOOT + 2)));
      case PAGE_DOWN:
        return Answer.stay(at(Math.min(most, top + Size.LEAST.rows() - FOOT - 2)));
      case HOME:
        return Answer.stay(at(0));
      case END:
        return Answer.stay(at(Math.max(0, lines.size() - Size.LEAST.rows() + FOOT + 1)));
      case F6:
        return charts.isEmpty()
            ? Answer.say(this, "There are no charts here.")
            : Answer.stay(new ChartScreen(title, charts, 0, this));
      case ENTER:
      case F10:
      case ESCAPE:
        return Answer.stay(back);
      default:
        return Answer.stay(this);
    }
  }

  private TextScreen at(int line) {
    return new TextScreen(title, lines, charts, line, back);
  }
}
