package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** SIGKILL as soon as each record of a walk is in its journal, and up to two milliseconds later. */
final class Kills {
  private static final int TIMES = 4;

  private Kills() {}

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (int time = 0; time < TIMES; time++) {
      for (int record = 1; record <= learned.records(); record++) {
        int count = record;
        long later = time == 0 ? 0 : random.nextInt(2_000_000);
        String name = "SIGKILL " + later / 1000 + " µs after record " + count;
        all.add(new Fault(name, folder -> kill(learned, TinyWalk.home(folder), count, later)));
      }
    }
    return all;
  }

  private static void kill(Learned learned, Path home, int record, long laterNanos)
      throws Exception {
    Program.Running running = learned.program().start(TinyWalk.begin(home));
    running.type(TinyWalk.lines());
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (Journal.in(home).isEmpty() || Journal.count(Journal.in(home).get(0)) < record) {
      assertTrue(running.isAlive() && System.nanoTime() < end, running::said);
    }
    LockSupport.parkNanos(laterNanos);
    running.kill();
    Ran killed = running.end();
    Journal.only(home).holdsWhatWasCalledKept(killed.out());
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }
}
