package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

/** Whatever is typed or pasted is made fit for a journal before anything reads it. */
class IntentTest {
  private static final String HALF_A_CHARACTER = "\ud83d";

  @Test
  void halvesOfCharacters_becomeQuestionMarks() {
    assertEquals("1?3", new Intent.Note("1" + HALF_A_CHARACTER + "3").text());
    Map<ReadingId, String> typed = Map.of(ReadingId.OUTPUT_VOLTS, HALF_A_CHARACTER);
    assertEquals(
        Map.of(ReadingId.OUTPUT_VOLTS, "?"), new Intent.EnterAll("stereo-4", typed).texts());
    assertEquals("?", new Intent.ExplainStop(HALF_A_CHARACTER).reason());
  }

  @Test
  void longText_isCut_withAMark() {
    String most = "x".repeat(4000);
    assertEquals(most, new Intent.Note(most).text());
    assertEquals(most + "…", new Intent.Note(most + "y").text());
  }

  @Test
  void photo_isTypedAsItsPathThenItsCaption() {
    assertEquals(new Intent.Attach("a.png", "the bench"), Intent.Attach.typed(" a.png the bench"));
    assertEquals(new Intent.Attach("a b.png", "it"), Intent.Attach.typed("\"a b.png\" it"));
    assertEquals(new Intent.Attach("\"a", "b.png"), Intent.Attach.typed("\"a b.png"));
    assertEquals(new Intent.Attach("a.png", ""), Intent.Attach.typed("a.png"));
  }
}
