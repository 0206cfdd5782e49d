package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import loadwalk.journal.Recovered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever looks at a walk while it is written finds records that count, and no damage. */
class WatchedWalkTest {
  private static final int RECORDS = 400;

  @TempDir Path folder;

  @Test
  void walkThatIsBeingWritten_isNeverCalledDamaged() throws Exception {
    JournalFolder store = new JournalFolder(new DataHome(folder));
    OpeningOutcome.Writing walk = Walks.writing(store.create(Walks.NAME, Walks.HEAD));
    AtomicBoolean over = new AtomicBoolean();
    ExecutorService watcher = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> looks = watcher.submit(() -> lookUntil(over));
      for (int i = 0; i < RECORDS; i++) {
        Walks.keep(walk, "{\"i\":" + i + "}");
      }
      over.set(true);
      int count = looks.get(30, TimeUnit.SECONDS);
      System.out.printf("looks at a walk while %d records were written: %d%n", RECORDS, count);
      assertTrue(count > 20, "looks: " + count);
      assertEquals(RECORDS + 1, read(store).records().size());
    } finally {
      over.set(true);
      watcher.shutdownNow();
      walk.walk().close();
    }
  }

  private int lookUntil(AtomicBoolean over) {
    JournalFolder store = new JournalFolder(new DataHome(folder));
    int looks = 0;
    for (; !over.get(); looks++) {
      Recovered read = read(store);
      assertFalse(read.isDamaged(), () -> read.told().orElseThrow());
      assertFalse(read.ending() == Recovered.Ending.WITNESS_SPOILED, "the witness is spoiled");
    }
    return looks;
  }

  private static Recovered read(JournalFolder store) {
    return store.watch(Walks.NAME, "").journal().orElseThrow();
  }
}
