package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** Photos: what is asked of the outside world and what is kept of its answer. */
class AttachTest {
  private static final Event.PhotoKept KEPT =
      new Event.PhotoKept("sessions/walk.photos/a.png", "the bench", "ab".repeat(32), "image/png");

  private final Floor floor = new Floor();

  @Test
  void attach_asksForThePhoto_andKeepsItWhenItIsOnDisk() {
    floor.hear(new Intent.Attach("a.png", "the bench"));
    assertEquals(
        new Effect.KeepPhoto("walk", "a.png", "the bench"),
        floor.effects.get(floor.effects.size() - 1));
    assertFalse(floor.holds(Fact.Attached.class));
    floor.hear(KEPT);
    assertEquals(
        new WalkState.Attachment(
            "warm-up", KEPT.path(), "the bench", KEPT.sha256(), "image/png", 1_000_000),
        floor.model.state().attachments().get(0));
    assertEquals("The photo is kept as sessions/walk.photos/a.png.", floor.said());
  }

  @Test
  void attach_withoutPathOrCaption_isRefusedWithASentence() {
    int asked = floor.effects.size();
    floor.hear(new Intent.Attach("", ""));
    assertEquals("Type the path of a PNG or JPEG, then what it shows.", floor.said());
    floor.hear(new Intent.Attach("a.png", " . "));
    assertEquals("After the path, say in words what the photo shows.", floor.said());
    assertEquals(asked, floor.effects.size());
  }

  @Test
  void attach_isTakenWhilePausedAndWhileStopped() {
    floor.hear(new Intent.Pause()).hear(new Intent.Attach("a.png", "paused")).hear(KEPT);
    floor.hear(new Intent.Stop()).hear(new Intent.Attach("a.png", "stopped")).hear(KEPT);
    assertEquals(2, floor.model.state().attachments().size());
    assertEquals(WalkState.Hold.STOPPED, floor.model.state().hold());
  }

  @Test
  void refusedPhoto_isTold_andNothingIsKept() {
    floor.hear(new Event.PhotoRefused("There is no file at that path."));
    assertEquals("There is no file at that path.", floor.said());
    assertFalse(floor.holds(Fact.Attached.class));
  }

  @Test
  void typedLine_isAPathAndACaption() {
    assertEquals(new Intent.Attach("a.png", "the bench"), Intent.Attach.typed("a.png  the bench"));
    assertEquals(
        new Intent.Attach("C:\\my photos\\a b.jpg", "both \"loads\""),
        Intent.Attach.typed(" \"C:\\my photos\\a b.jpg\" both \"loads\" "));
    assertEquals(new Intent.Attach("\"a", "b.png c"), Intent.Attach.typed("\"a b.png c"));
    assertEquals(new Intent.Attach("", ""), Intent.Attach.typed("  "));
  }
}
