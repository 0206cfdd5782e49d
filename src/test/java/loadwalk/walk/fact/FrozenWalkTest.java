package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovery;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;

/** Journals of a walk, frozen for ever: every fact in them must go on to mean the same. */
class FrozenWalkTest {
  private static final String KINDS =
      "Armed Attached Begun Briefed Cooled CriterionSet Done Doubted EndedEarly Entered HaltLifted"
          + " Noted Opened PairAdded Paused Resumed Skipped StoodBy StopExplained Stopped WarmAgain"
          + " Warmed";

  private static List<String> bodies(int version) throws IOException {
    try (InputStream file =
        FrozenWalkTest.class.getResourceAsStream("/journals/walk-v" + version + ".jsonl")) {
      Recovered.Whole whole =
          assertInstanceOf(Recovered.Whole.class, Recovery.read(file.readAllBytes()));
      return whole.bodies();
    }
  }

  @Test
  void everyRecord_isReadAndWouldBeWrittenTheSame() throws IOException {
    for (int version = 1; version <= 2; version++) {
      TreeSet<String> kinds = new TreeSet<>();
      List<String> bodies = bodies(version);
      for (int seq = 1; seq <= bodies.size(); seq++) {
        List<Stamped> facts = FactText.read(bodies.get(seq - 1));
        facts.forEach(f -> kinds.add(f.fact().getClass().getSimpleName()));
        // A new walk opens in the newest format; everything else is as it was.
        String written =
            seq == 1
                ? FactText.body(facts).replace("journal/2", "journal/" + version)
                : FactText.body(FactText.walk(bodies.subList(0, seq - 1)), facts, seq);
        assertEquals(bodies.get(seq - 1), written);
      }
      assertEquals(44 + version, bodies.size());
      assertEquals(KINDS, kinds.stream().collect(Collectors.joining(" ")));
    }
  }

  @Test
  void finishedWalk_saysHowManyRecordsItHas() throws IOException {
    List<String> bodies = bodies(2);
    assertTrue(bodies.get(45).contains("\"records\":46,"), bodies.get(45));
    WalkState finished = FactText.walk(bodies);
    assertTrue(finished.isFinished());
    assertTrue(FactText.isClosed(bodies, true));
    for (int left = 1; left < 46; left++) {
      List<String> cut = bodies.subList(0, left);
      assertFalse(FactText.isClosed(cut, FactText.walk(cut).isFinished()), "cut after " + left);
    }
    assertFalse(FactText.isClosed(bodies(1), FactText.walk(bodies(1)).isFinished()));
  }

  @Test
  void finishedWalkFromBeforeRecordsWereCounted_isTakenForAll() throws IOException {
    List<String> bodies = new ArrayList<>(bodies(1));
    bodies.add(bodies(2).get(45).replace("\"records\":46,", ""));
    assertTrue(FactText.isClosed(bodies, FactText.walk(bodies).isFinished()));
    bodies.set(0, bodies(2).get(0));
    assertFalse(FactText.isClosed(bodies, FactText.walk(bodies).isFinished()));
  }

  @Test
  void walk_standsWhereItStood() throws IOException {
    WalkState walk = FactText.walk(bodies(1));
    assertEquals("Halvorsen & Pike HP 250", walk.opened().amplifier().name());
    assertEquals("full-walk", walk.opened().sequence().name());
    assertEquals(12, walk.plan().size());
    assertEquals("bridged-4", walk.currentId());
    assertEquals(Hold.RUNNING, walk.hold());
    assertEquals(1, walk.stops().size());
    assertEquals(Optional.of("a smell of resin"), walk.stops().get(0).reason());
    assertEquals("the lead is warm", walk.notes().get(0).text());
    assertEquals("sessions/w.photos/bench.png", walk.attachments().get(0).path());
    assertEquals(180, walk.step("warm-up").warmSeconds());
    assertEquals(Status.SKIPPED, walk.step("stereo-2").status());
    assertEquals(Optional.of("the owner insists"), walk.step("bridged-4").liftReason());
    StepState four = walk.step("stereo-4");
    assertEquals(Optional.of(Criterion.CLIPPING_ONSET), four.said());
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
