package loadwalk.view.screen;

import java.util.List;
import loadwalk.chart.Chart;
import loadwalk.chart.TextChart;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;

/**
 * Charts one at a time, each as large as the screen.
 *
 * @param title what they belong to
 * @param charts the charts, at least one
 * @param index the one shown
 * @param back where to return to
 */
record ChartScreen(String title, List<Chart> charts, int index, Screen back) implements Screen {
  private static final int ABOVE = 2;
  private static final int BELOW = 1;

  ChartScreen {
    charts = List.copyOf(charts);
    if (index < 0 || index >= charts.size()) {
      throw new IllegalArgumentException("there is no chart " + index + " of " + charts.size());
    }
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    Chart chart = charts.get(index);
    String place = Sentence.of("chart {} of {}", index + 1, charts.size());
    canvas.text(
        1, 0, canvas.shortened(title, canvas.columns() - place.length() - 4), Style.HEADING);
    canvas.text(canvas.columns() - place.length() - 1, 0, place, Style.FAINT);
    canvas.text(1, 1, chart.title(), Style.STRONG);
    List<String> lines = lines(canvas, chart);
    for (int i = 0; i < lines.size(); i++) {
      canvas.text(1, ABOVE + i, lines.get(i), Style.TEXT);
    }
    String stop = program.walk().isPresent() ? "STOP" : "back";
    Keys.paint(canvas, "Left Right", "next chart", "F10", "back", "Esc", stop);
  }

  /** The plot takes what axis and legend leave of the screen. */
  private static List<String> lines(Canvas canvas, Chart chart) {
    int columns = canvas.columns() - 2;
    int room = canvas.rows() - ABOVE - BELOW;
    boolean ascii = canvas.look().ascii();
    int around = TextChart.lines(chart, columns, 0, ascii).size() - TextChart.LEAST_ROWS;
    return TextChart.lines(chart, columns, room - around, ascii);
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    switch (key.kind()) {
      case RIGHT:
      case DOWN:
      case PAGE_DOWN:
      case TAB:
        return at(index + 1);
      case LEFT:
      case UP:
      case PAGE_UP:
      case BACK_TAB:
        return at(index + charts.size() - 1);
      case HOME:
        return at(0);
      case END:
        return at(charts.size() - 1);
      case ENTER:
      case F10:
      case ESCAPE:
        return Answer.stay(back);
      default:
        return Answer.stay(this);
    }
  }

  private Answer at(int next) {
    return Answer.stay(new ChartScreen(title, charts, next % charts.size(), back));
  }
}
