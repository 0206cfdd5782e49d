package loadwalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class GlueTest {
  @Test
  void glued_numbersHoldOnToTheirUnits_wordsDoNot() {
    String text = "stereo 4 Ω makes 64.13 ± 0.77 W (k = 2), 5 steps, 3 Whales; 1 %.";
    assertEquals(
        "stereo 4_Ω makes 64.13_±_0.77_W (k = 2), 5 steps, 3 Whales; 1_%.",
        Glue.glued(text).replace(Glue.SPACE, '_'));
    assertEquals(text, Glue.loosened(Glue.glued(text)));
  }

  @Test
  void glued_edges_areLeft() {
    for (String text : new String[] {"", " ", "4 ", " W", "± ", "4 ±", "a W"}) {
      assertEquals(text, Glue.loosened(Glue.glued(text)));
    }
  }
}
