package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WorkInTurnTest {
  private static final List<Integer> ITEMS = IntStream.range(0, 500).boxed().toList();

  @Test
  void results_comeInTheOrderOfTheItems() {
    List<Integer> squares = new ArrayList<>();
    try (WorkInTurn<Integer, Integer> crew = new WorkInTurn<>(ITEMS, i -> i * i)) {
      while (crew.hasNext()) {
        squares.add(crew.next());
      }
    }
    assertEquals(ITEMS.stream().map(i -> i * i).toList(), squares);
  }

  /** Each item waits for the other, so one thread alone would never be done. */
  @Test
  void items_areWorkedOnAtOnce_whereThereAreProcessors() {
    int at = Math.min(2, Runtime.getRuntime().availableProcessors());
    CountDownLatch both = new CountDownLatch(at);
    List<Integer> items = ITEMS.subList(0, at);
    try (WorkInTurn<Integer, Boolean> crew = new WorkInTurn<>(items, i -> met(both))) {
      while (crew.hasNext()) {
        assertTrue(crew.next());
      }
    }
  }

  private static boolean met(CountDownLatch all) {
    all.countDown();
    try {
      all.await();
      return true;
    } catch (InterruptedException stop) {
      return false;
    }
  }

  @Test
  void onlyAFewItems_areBegunAheadOfTheOneTaken() {
    AtomicInteger begun = new AtomicInteger();
    try (WorkInTurn<Integer, Integer> crew =
        new WorkInTurn<>(ITEMS, i -> begun.incrementAndGet())) {
      crew.next();
      assertTrue(begun.get() <= 4 * Runtime.getRuntime().availableProcessors(), begun.toString());
    }
  }

  @Test
  void fault_reachesTheOneWhoTakes_inItsTurn() {
    List<String> items = List.of("1", "x");
    try (WorkInTurn<String, Integer> crew = new WorkInTurn<>(items, Integer::valueOf)) {
      assertEquals(1, crew.next());
      CompletionException fault = assertThrows(CompletionException.class, crew::next);
      assertTrue(fault.getCause() instanceof NumberFormatException, fault.toString());
      assertFalse(crew.hasNext());
    }
  }
}
