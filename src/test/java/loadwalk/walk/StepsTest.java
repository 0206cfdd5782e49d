package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;

/** Steps that end otherwise than by readings, and facts that reach the disk one by one. */
class StepsTest {
  private static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"kinds","title":"Kinds","tone":{"hertz":40},
       "limit":{"thdPercent":1.0},"supplyVolts":13.8,
       "steps":[{"do":"warm-up","minutes":1,"powerFraction":0.5,"steadyCelsiusPerMinute":0.5},
        {"do":"note","text":"Look at the fuses."},
        {"do":"measure","mode":"stereo","ohms":4,"optional":true},
        {"do":"warm-up","minutes":2,"powerFraction":0.5,"steadyCelsiusPerMinute":0.5},
        {"do":"measure","mode":"stereo","ohms":2}]}
      """;

  private final Floor floor = new Floor(SEQUENCE);

  @Test
  void note_isConfirmedWithoutAStart_andAMeasurementIsNot() {
    floor.at("note").hear(new Intent.Finish());
    assertEquals(Status.DONE, floor.step("note").status());
    floor.hear(new Intent.Finish());
    assertEquals("stereo-4 is not running.", floor.said());
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
  }

  @Test
  void optionalStep_isSkippedWithoutAReason_andAnotherIsNot() {
    floor.at("stereo-4").hear(new Intent.Skip(" "));
    assertEquals(Optional.of("optional"), floor.step("stereo-4").reason());
    floor.at("stereo-2").hear(new Intent.Skip(" "));
    assertEquals("Give a reason in words to skip this step.", floor.said());
    assertEquals(Status.BRIEFED, floor.step("stereo-2").status());
  }

  @Test
  void warmingAgain_isTheWarmUpLastBefore() {
    floor.at("stereo-2").hear(new Intent.WarmAgain());
    assertEquals(new Fact.WarmAgain("warm-up#2"), floor.last(Fact.WarmAgain.class));
    Floor first = new Floor(SEQUENCE);
    first.at("stereo-4").hear(new Intent.WarmAgain());
    assertEquals(new Fact.WarmAgain("warm-up"), first.last(Fact.WarmAgain.class));
  }

  @Test
  void measurement_withOtherReadingsButNoVolts_doesNotEnd() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.SUPPLY_AMPS, "16 A"));
    floor.hear(new Intent.Finish());
    assertEquals("Enter the output volts first, or skip the step with a reason.", floor.said());
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
  }

  /** What the disk took is done; what it did not take is sent again, and nothing goes on. */
  @Test
  void factsKeptInPart_areSentOn() {
    floor.disk = false;
    floor.at("warm-up").hear(new Intent.Begin());
    floor.hear(new Intent.Stop());
    List<Stamped> waiting = floor.model.waiting();
    int count = waiting.size();
    assertTrue(count > 1, waiting.toString());
    floor.effects.clear();
    floor.hear(new Event.Kept(waiting.subList(0, 1)));
    assertEquals(
        List.of(new Effect.AppendJournal(waiting.subList(1, count))), floor.effects.subList(0, 1));
    assertEquals(waiting.subList(1, count), floor.model.waiting());
  }

  /** A fact of a doubt on a reading that was never entered changes nothing. */
  @Test
  void doubtOnNothing_changesNothing() {
    StepState step = floor.step("stereo-4");
    assertEquals(step, step.doubted(ReadingId.OUTPUT_VOLTS, List.of()));
    assertFalse(step.latest(ReadingId.OUTPUT_VOLTS).isPresent());
  }
}
