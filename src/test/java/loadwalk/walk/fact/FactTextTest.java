package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What another program, or a later version, may have written into a journal: each one sentence. */
class FactTextTest {
  private static final String DOUBTED =
      "{\"fact\":\"doubted\",\"step\":\"idle\",\"reading\":\"%s\",\"doubts\":[{\"reading\":"
          + "\"supplyAmps\",\"slip\":\"%s\",\"text\":\"t\",\"lookAt\":\"l\"}]}";

  private static String refused(String fact) {
    String body = "{\"at\":\"2026-01-31T09:30:00Z\",\"facts\":[" + fact + "]}";
    return assertThrows(UnreadableFact.class, () -> FactText.read(body)).getMessage();
  }

  @Test
  void bodyThatIsNoJson_isRefused() {
    UnreadableFact refused = assertThrows(UnreadableFact.class, () -> FactText.read("{"));
    assertTrue(refused.getMessage().contains("the text ends"), refused.getMessage());
  }

  @Test
  void timeThatIsNone_isRefused() {
    String body = "{\"at\":\"yesterday\",\"facts\":[]}";
    UnreadableFact refused = assertThrows(UnreadableFact.class, () -> FactText.read(body));
    assertEquals("«at» is not a time", refused.getMessage());
  }

  @Test
  void wordsOfALaterVersion_areNamed() {
    assertEquals(
        "«telepathy» is a word this version does not know",
        refused(DOUBTED.formatted("supplyAmps", "telepathy")));
    assertEquals("«aura» is not a reading", refused(DOUBTED.formatted("aura", "digits-swapped")));
    assertEquals(
        "«feeling» is a word this version does not know",
        refused("{\"fact\":\"criterion-set\",\"step\":\"idle\",\"criterion\":\"feeling\"}"));
  }

  @Test
  void membersMissing_orOfAnotherKind_areNamed() {
    assertEquals("«step» is missing", refused("{\"fact\":\"begun\"}"));
    assertEquals("«step» must be a text", refused("{\"fact\":\"begun\",\"step\":4}"));
    assertEquals(
        "«seconds» must be a number",
        refused("{\"fact\":\"warmed\",\"step\":\"warm-up\",\"seconds\":\"ten\"}"));
    assertEquals(
        "«codes» must be a list",
        refused("{\"fact\":\"halt-lifted\",\"step\":\"idle\",\"codes\":1,\"reason\":\"r\"}"));
    assertEquals(
        "a list of texts is expected",
        refused("{\"fact\":\"halt-lifted\",\"step\":\"idle\",\"codes\":[1],\"reason\":\"r\"}"));
    assertTrue(refused("7").startsWith("an object is expected"));
  }

  @Test
  void journalThatOpensNoWalk_isRefused() {
    assertThrows(UnreadableFact.class, () -> FactText.walk(List.of()));
    String body =
        "{\"at\":\"2026-01-31T09:30:00Z\",\"facts\":[{\"fact\":\"begun\",\"step\":\"idle\"}]}";
    assertThrows(UnreadableFact.class, () -> FactText.walk(List.of(body)));
  }
}
