package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a record of outcomes shows of a change. */
class OutcomesTest {
  private static final String KNOWN = "passed, never seen";

  @Test
  void sameOutcomes_areNoChange() {
    Outcomes.Changes none = changes(run(0.05, "3", KNOWN), run(0.05, "3", KNOWN));
    assertEquals(0, none.decisions());
    assertEquals(List.of(), none.widths());
  }

  @Test
  void memberThatAppears_isWorse_oneThatGoes_isBetter() {
    Outcomes.Changes changes = changes(run(0.05, "3 7", KNOWN), run(0.05, "7 12", KNOWN));
    assertEquals(
        List.of("circuits, volts only, 12, peak-for-rms, stereo-4: passed, never seen"),
        changes.worse());
    assertEquals(
        List.of("circuits, volts only, 3, peak-for-rms, stereo-4: was passed, never seen"),
        changes.better());
    assertEquals(2, changes.decisions());
  }

  @Test
  void wrongInAnotherWay_isNeither() {
    Outcomes.Changes changes =
        changes(run(0.05, "3", KNOWN), run(0.05, "3", "taken for load-double of outputVolts"));
    assertEquals(1, changes.other().size());
    assertEquals(1, changes.decisions());
  }

  @Test
  void halfWidth_isSeenToChange_fromHalfAPercentOfItselfOn() {
    assertEquals(0, changes(run(0.05, "3", KNOWN), run(0.0502, "3", KNOWN)).widths().size());
    assertEquals(1, changes(run(0.05, "3", KNOWN), run(0.0503, "3", KNOWN)).widths().size());
    assertEquals(1, changes(run(0.05, "3", KNOWN), run(0.0497, "3", KNOWN)).widths().size());
  }

  private static Outcomes.Changes changes(Results before, Results after) {
    Outcomes earlier = Outcomes.of(Outcomes.text(List.of(before)));
    return Outcomes.of(Outcomes.text(List.of(after))).since(earlier);
  }

  private static Results run(double halfWidth, String members, String came) {
    Results run = new Results("forecast", "circuits", Arrangement.VOLTS);
    Results.in(run.halfWidths, "outputVolts stereo-4", halfWidth);
    for (String member : members.split(" ")) {
      run.misses.add(new Results.Miss(Integer.parseInt(member), "peak-for-rms, stereo-4", came));
    }
    return run;
  }
}
