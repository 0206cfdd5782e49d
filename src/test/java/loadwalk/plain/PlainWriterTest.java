package loadwalk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loadwalk.quantity.Printer;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

class PlainWriterTest {
  private final PlainWriter writer = new PlainWriter(Printer.UTF8);

  @Test
  void briefOfAWalkThatIsHeld_saysWhatLetsItGoOn() {
    Walks walk = Walks.practicing(1, "stereo-only");
    assertEquals("  Type begin.", last(walk.state()));
    walk.hear(new Intent.Stop());
    assertEquals("  The walk was stopped. Type because REASON, or quit.", last(walk.state()));
    walk.hear(new Intent.ExplainStop("smoke"));
    assertEquals("  The walk is paused. Type go-on, or quit.", last(walk.state()));
  }

  @Test
  void briefOfAStepThatRuns_asksForItsReadings_notToStartIt() {
    Walks walk = Walks.practicing(1, "stereo-only");
    walk.begin();
    assertEquals("  warm-up is running. Readings: sinkCelsius; then done.", last(walk.state()));
  }

  private String last(WalkState state) {
    List<String> brief = writer.brief(state, state.current().orElseThrow());
    return brief.get(brief.size() - 1);
  }
}
