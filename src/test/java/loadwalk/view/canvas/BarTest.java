package loadwalk.view.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.forecast.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of numbers: where a reading lies in its forecast, and a wave. */
class BarTest {

  private static Frame bar(double low, double high, OptionalDouble reading) {
    Canvas canvas = new Canvas(new Size(20, 1), new Look(true));
    Bar.paint(canvas, 0, 0, 20, new Band(low, (low + high) / 2, high), reading);
    return canvas.frame();
  }

  /** The forecast is 10 to 20; the bar ends at 2.5 and 27.5. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.4 |<.....========......|HEED",
        "2.6 |O.....========......|HEED",
        "9.9 |.....O========......|HEED",
        "10.1|......O=======......|STRONG",
        "15.1|......====O===......|STRONG",
        "19.9|......=======O......|STRONG",
        "20.1|......========O.....|HEED",
        "27.5|......========.....O|HEED",
        "27.6|......========.....>|HEED"
      })
  void reading_standsWhereItLies_andOutsideItIsAWarning(double at, String shown, Style style) {
    Frame frame = bar(10, 20, OptionalDouble.of(at));
    assertEquals(shown, frame.lines().get(0));
    int mark = shown.replaceAll("[<>]", "O").indexOf('O');
    assertEquals(style, frame.style(mark, 0));
  }

  @Test
  void bar_withoutAReading_showsTheForecastAlone() {
    String alone = "......========......";
    assertEquals(alone, bar(10, 20, OptionalDouble.empty()).lines().get(0));
    assertEquals(alone, bar(10, 20, OptionalDouble.of(Double.NaN)).lines().get(0));
    assertEquals(Style.GOOD, bar(10, 20, OptionalDouble.empty()).style(6, 0));
    assertEquals(Style.FAINT, bar(10, 20, OptionalDouble.empty()).style(5, 0));
  }

  @Test
  void forecastOfOneNumber_stillHasABar() {
    assertEquals(".........O..........", bar(10, 10, OptionalDouble.of(9.9999)).lines().get(0));
    assertEquals("<...................", bar(10, 10, OptionalDouble.of(9.9)).lines().get(0));
  }

  private static List<String> scope(List<Double> samples, Area area) {
    Canvas canvas = new Canvas(new Size(6, 4), new Look(false));
    Scope.paint(canvas, samples, area);
    return canvas.frame().lines();
  }

  @Test
  void wave_isDrawnFromEndToEnd_zeroInTheMiddle() {
    Area area = new Area(1, 1, 4, 2);
    assertEquals(List.of("", " ⢠⠒⢄", " ⠁ ⠈⢆", ""), scope(List.of(0.0, 1.0, 0.0, -1.0), area));
    assertEquals(List.of("", " ⠑⢄", "   ⠑⢄", ""), scope(List.of(1.0, -1.0), area));
    assertEquals(List.of("", "", " ⠉⠉⠉⠉", ""), scope(List.of(0.0, 0.0), area));
  }

  @Test
  void wave_withoutSamplesOrRoom_drawsNothing() {
    List<String> blank = List.of("", "", "", "");
    assertEquals(blank, scope(List.of(), new Area(0, 0, 6, 4)));
    assertEquals(blank, scope(List.of(1.0), new Area(0, 0, 6, 0)));
    assertEquals(blank, scope(List.of(1.0), new Area(0, 0, 0, 4)));
    assertEquals(blank, scope(List.of(1.0), new Area(0, 0, 6, -1)));
  }
}
