package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.plan.StockRules;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.LedgerRows;
import loadwalk.walk.Effect;
import loadwalk.walk.Walker;
import org.junit.jupiter.api.Test;

class ChartScreenTest {
  private static final Size LARGE = new Size(120, 40);

  private final ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
  private Program program = Program.atHome("home", StockRules.RULES);

  private static Chart chart(String title, int series) {
    List<Series> all =
        IntStream.range(0, series)
            .mapToObj(
                i ->
                    new Series(
                        "series number " + i,
                        Series.Kind.JOINED,
                        i,
                        List.of(Point.within(1, 10 + i, 2), Point.within(4, 40 + i, 2))))
            .toList();
    return Chart.of(title, Axis.fromZero("load, Ω"), Axis.fromZero("power, W"), all);
  }

  private void hear(ProgramEvent event) {
    program = loop.update(program, event).program();
  }

  private void press(Key.Kind kind) {
    hear(new ProgramEvent.Pressed(Key.of(kind)));
  }

  private List<String> shown(Size size, boolean ascii) {
    return program.paint(size, new Look(ascii)).lines();
  }

  @Test
  void f6_showsTheChartsOfATextOneByOne_asLargeAsTheScreen() {
    List<Chart> charts = List.of(chart("First", 1), chart("Second", 6));
    hear(new ProgramEvent.TextReady("Sheet of x", List.of("a line"), charts));
    assertTrue(String.join("\n", shown(Size.LEAST, false)).contains("F6 charts"));
    press(Key.Kind.F6);
    for (String title : List.of("First", "Second")) {
      for (Size size : List.of(Size.LEAST, LARGE)) {
        for (boolean ascii : new boolean[] {false, true}) {
          List<String> lines = shown(size, ascii);
          assertTrue(lines.get(1).contains(title), lines.get(1));
          assertTrue(lines.get(2).contains("power, W"), lines.get(2));
          String last = lines.get(size.rows() - 2);
          assertTrue(last.contains("series number"), "legend fills the screen: " + last);
        }
      }
      press(Key.Kind.RIGHT);
    }
    assertTrue(shown(Size.LEAST, false).get(1).contains("First"), "it goes round");
    press(Key.Kind.F10);
    assertTrue(String.join("\n", shown(Size.LEAST, false)).contains("a line"));
  }

  @Test
  void f6_withoutCharts_saysSo() {
    hear(new ProgramEvent.TextReady("Plan", List.of("a line")));
    press(Key.Kind.F6);
    assertEquals("There are no charts here.", program.state().notice().orElseThrow());
  }

  @Test
  void ledgerReadInTheBackground_doesNotPushAnotherScreenAside() {
    ProgramEvent ready =
        new ProgramEvent.LedgerReady(new LedgerRows(List.of(), "newest", 0, "", List.of()));
    hear(new ProgramEvent.TextReady("Help", List.of("reading help")));
    hear(ready);
    assertTrue(String.join("\n", shown(Size.LEAST, false)).contains("reading help"));
    press(Key.Kind.F10);
    hear(ready);
    assertTrue(shown(Size.LEAST, false).get(0).contains("Ledger"));
  }

  @Test
  void escapeAtHome_stopsWhatIsReadInTheBackground() {
    ProgramNext next = loop.update(program, new ProgramEvent.Pressed(Key.of(Key.Kind.ESCAPE)));
    assertEquals(List.of(new Effect.StopWork()), next.effects());
  }
}
