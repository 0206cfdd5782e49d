package loadwalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.Recovery;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Walks;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.rehearse.Replay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A walk replayed by the rules that it was walked by: nothing differs. */
class ReplayedWalksTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 50);
  }

  @ParameterizedTest(name = "practice seed {0}")
  @MethodSource("seeds")
  void practiceWalk_replayed_differsInNothing(long seed) {
    String sequence = seed % 2 == 0 ? "stereo-only" : "full-walk";
    Walks walk = Walks.practicing(seed, sequence).toTheEnd();
    assertEquals(List.of(), Replay.of(StockRules.RULES, walk.records()), "seed " + seed);
  }

  @Test
  void eventfulWalk_replayed_differsInNothing() {
    assertEquals(List.of(), Replay.of(StockRules.RULES, Walks.eventful().records()));
  }

  @Test
  void walksKeptInTheRepository_replayed_differInNothing() throws IOException {
    List<Path> kept;
    try (Stream<Path> files = Files.list(Path.of("sessions"))) {
      kept = files.filter(f -> f.toString().endsWith(".jsonl")).sorted().toList();
    }
    assertFalse(kept.isEmpty());
    for (Path journal : kept) {
      List<List<Stamped>> records =
          Recovery.read(Files.readAllBytes(journal)).records().stream()
              .map(JournalRecord::body)
              .map(FactText::read)
              .toList();
      assertEquals(List.of(), Replay.of(StockRules.RULES, records), journal.toString());
    }
  }
}
