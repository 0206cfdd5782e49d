package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovery;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;

/** A walk's journal of version 1, frozen for ever: every fact in it must go on to mean the same. */
class FrozenWalkTest {
  private static final String KINDS =
      "Armed Attached Begun Briefed Cooled CriterionSet Done Doubted EndedEarly Entered HaltLifted"
          + " Noted Opened PairAdded Paused Resumed Skipped StoodBy StopExplained Stopped WarmAgain"
          + " Warmed";

  private static List<String> bodies() throws IOException {
    try (InputStream file = FrozenWalkTest.class.getResourceAsStream("/journals/walk-v1.jsonl")) {
      Recovered.Whole whole =
          assertInstanceOf(Recovered.Whole.class, Recovery.read(file.readAllBytes()));
      return whole.records().stream().map(JournalRecord::body).toList();
    }
  }

  @Test
  void everyRecord_isReadAndWouldBeWrittenTheSame() throws IOException {
    TreeSet<String> kinds = new TreeSet<>();
    for (String body : bodies()) {
      List<Stamped> facts = FactText.read(body);
      facts.forEach(f -> kinds.add(f.fact().getClass().getSimpleName()));
      assertEquals(body, FactText.body(facts));
    }
    assertEquals(45, bodies().size());
    assertEquals(KINDS, kinds.stream().collect(Collectors.joining(" ")));
  }

  @Test
  void walk_standsWhereItStood() throws IOException {
    WalkState walk = FactText.walk(bodies());
    assertEquals("Halvorsen & Pike HP 250", walk.opened().amplifier().name());
    assertEquals("full-walk", walk.opened().sequence().name());
    assertEquals(12, walk.plan().size());
    assertEquals("bridged-4", walk.currentId());
    assertEquals(Hold.RUNNING, walk.hold());
    assertEquals(List.of("a smell of resin"), walk.stops());
    assertEquals("the lead is warm", walk.notes().get(0).text());
    assertEquals("sessions/w.photos/bench.png", walk.attachments().get(0).path());
    assertEquals(180, walk.step("warm-up").warmSeconds());
    assertEquals(Status.SKIPPED, walk.step("stereo-2").status());
    assertEquals(Optional.of("the owner insists"), walk.step("bridged-4").liftReason());
    StepState four = walk.step("stereo-4");
    assertEquals(Criterion.CLIPPING_ONSET, four.criterion());
    assertEquals(4, four.armedOhms().orElseThrow());
    Entry doubted = four.latest(ReadingId.OUTPUT_VOLTS).orElseThrow();
    assertEquals("1.55 V", doubted.text());
    assertEquals(1.55, doubted.value());
    assertEquals(Optional.of("the probe divides by ten"), doubted.stoodBy());
    assertEquals(
        List.of(ReadingId.OUTPUT_VOLTS, ReadingId.OTHER_OUTPUT_VOLTS, ReadingId.SUPPLY_AMPS),
        walk.step("stereo-1").openDoubts());
  }
}
