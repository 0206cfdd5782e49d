package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class UnbrokenUnitsTest {
  @Test
  void held_numbersHoldOnToTheirUnits_wordsDoNot() {
    String text = "stereo 4 Ω makes 64.13 ± 0.77 W (k = 2), 5 steps, 3 Whales; 1 %.";
    assertEquals(
        "stereo 4_Ω makes 64.13_±_0.77_W (k = 2), 5 steps, 3 Whales; 1_%.",
        UnbrokenUnits.held(text).replace(UnbrokenUnits.SPACE, '_'));
    assertEquals(text, UnbrokenUnits.released(UnbrokenUnits.held(text)));
  }

  @Test
  void held_everyUnitThatIsPrinted_staysWithItsNumber() {
    for (Unit unit : Unit.values()) {
      for (double size : new double[] {2e-5, 2e-2, 2, 2e4, 2e7}) {
        String printed = Printer.UTF8.value(size, unit, 2);
        assertEquals(
            printed.replace(' ', '_'),
            UnbrokenUnits.held(printed).replace(UnbrokenUnits.SPACE, '_'));
      }
    }
  }

  @Test
  void held_edges_areLeft() {
    for (String text : new String[] {"", " ", "4 ", " W", "± ", "4 ±", "a W"}) {
      assertEquals(text, UnbrokenUnits.released(UnbrokenUnits.held(text)));
    }
  }
}
