package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
  void held_edges_areLeft() {
    for (String text : new String[] {"", " ", "4 ", " W", "± ", "4 ±", "a W"}) {
      assertEquals(text, UnbrokenUnits.released(UnbrokenUnits.held(text)));
    }
  }
}
