package loadwalk.view.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list to choose from: it goes round at both ends and scrolls to what is chosen. */
class MenuTest {

  @ParameterizedTest
  @CsvSource({
    "UP, 0, 3, 2", "UP, 2, 3, 1", "BACK_TAB, 0, 3, 2", "DOWN, 2, 3, 0", "DOWN, 0, 3, 1",
    "TAB, 1, 3, 2", "HOME, 2, 3, 0", "END, 0, 3, 2", "LEFT, 1, 3, 1", "UP, 0, 0, 0",
    "DOWN, 0, 0, 0", "END, 0, 0, 0", "DOWN, 0, 1, 0"
  })
  void key_choosesAnotherLine(Key.Kind key, int chosen, int count, int next) {
    assertEquals(next, Menu.moved(Key.of(key), chosen, count));
  }

  @Test
  void chosenLine_isAlwaysShown() {
    List<String> lines = List.of("one", "two", "three", "four is a long line");
    assertEquals(List.of("", " > one", "   two", ""), shown(lines, 0));
    assertEquals(List.of("", "   one", " > two", ""), shown(lines, 1));
    assertEquals(List.of("", "   two", " > three", ""), shown(lines, 2));
    assertEquals(List.of("", "   three", " > four is…", ""), shown(lines, 3));
    assertEquals(List.of("", " > one", "", ""), shown(List.of("one"), 0));
  }

  private static List<String> shown(List<String> lines, int chosen) {
    Canvas canvas = new Canvas(new Size(12, 4), new Look(false));
    Menu.paint(canvas, 1, 2, lines, chosen);
    return canvas.frame().lines();
  }

  @Test
  void escapeAndF10_goBack() {
    assertTrue(Menu.isBack(Key.of(Key.Kind.ESCAPE)));
    assertTrue(Menu.isBack(Key.of(Key.Kind.F10)));
    assertFalse(Menu.isBack(Key.of(Key.Kind.BACKSPACE)));
  }
}
