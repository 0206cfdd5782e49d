package loadwalk.journal;

import static loadwalk.journal.Journals.HEAD;
import static loadwalk.journal.Journals.bodiesOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loadwalk.journal.KeepResult.Kept;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Writable;
import loadwalk.journal.SimulatedDisk.Meets;
import loadwalk.journal.SimulatedDisk.PowerCut;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Cuts the power of a disk that loses, tears and reorders what was not forced, over and over. */
class JournalCrashTest {
  private static final int LIVES = 6;

  /** What one journal went through. */
  private static final class Story {
    private final long seed;
    private final Random random;
    private final SimulatedDisk disk;
    private final List<String> kept = new ArrayList<>();
    private final List<String> attempted = new ArrayList<>();
    private int torn;
    private int failures;
    private int crashes;

    Story(long seed) {
      this.seed = seed;
      random = new Random(seed);
      disk = new SimulatedDisk(seed + 1);
    }

    void live() {
      for (int life = 1; life <= LIVES; life++) {
        int lastBreath = 1 + random.nextInt(30);
        double faulty = random.nextBoolean() ? 0 : 0.25;
        disk.meets(n -> n >= lastBreath ? Meets.POWER_CUT : fate(faulty));
        try {
          write();
        } catch (PowerCut off) {
          crashes++;
        }
        disk.crash();
        check();
      }
    }

    private Meets fate(double faulty) {
      Meets[] faults = {Meets.DISK_FULL, Meets.IO_ERROR, Meets.READ_ONLY};
      return random.nextDouble() < faulty ? faults[random.nextInt(3)] : Meets.NOTHING;
    }

    private void write() {
      JournalWriter writer = open();
      while (true) {
        String body = kept.isEmpty() ? HEAD : body();
        attempted.add(body);
        if (writer.append(body) instanceof Kept) {
          kept.add(body);
          attempted.clear();
        } else {
          failed();
        }
      }
    }

    private void failed() {
      assertTrue(++failures < 1000, "the journal never recovers, seed " + seed);
    }

    private String body() {
      return "{\"n\":" + random.nextLong() + ",\"x\":\"" + "y".repeat(random.nextInt(600)) + "\"}";
    }

    private JournalWriter open() {
      while (true) {
        try {
          Writable read = (Writable) Recovery.read(disk.readAll());
          JournalWriter writer = JournalWriter.after(disk, WitnessFile.NOWHERE, read);
          writer.settle();
          return writer;
        } catch (IOException e) {
          failed();
        }
      }
    }

    /**
     * Every record called kept is there, in order, once; at most one that was refused or in flight
     * follows.
     */
    private void check() {
      Recovered read = Recovery.read(disk.platter());
      assertTrue(read instanceof Writable, "seed " + seed + ": " + read);
      torn += read instanceof TornTail ? 1 : 0;
      List<String> bodies = bodiesOf(read);
      int known = Math.min(kept.size(), bodies.size());
      assertEquals(kept, bodies.subList(0, known), "seed " + seed);
      List<String> more = bodies.subList(known, bodies.size());
      assertTrue(more.size() <= 1 && attempted.containsAll(more), "seed " + seed + ": " + more);
      kept.addAll(more);
      attempted.clear();
    }
  }

  private static void tell(int stories) {
    int kept = 0;
    int torn = 0;
    int failures = 0;
    int crashes = 0;
    for (long seed = 1; seed <= stories; seed++) {
      Story story = new Story(seed);
      story.live();
      kept += story.kept.size();
      torn += story.torn;
      failures += story.failures;
      crashes += story.crashes;
    }
    System.out.printf(
        "simulated disk: seeds 1 to %d, %d power cuts, %d torn tails, %d faults, %d records kept%n",
        stories, crashes, torn, failures, kept);
    assertEquals(stories * LIVES, crashes);
    assertTrue(torn > stories / 2 && failures > stories, torn + " torn, " + failures + " faults");
  }

  @Test
  void powerCuts_onAFaultyDisk_loseNoKeptRecordAndRepeatNone() {
    tell(500);
  }

  @Test
  @Tag("long")
  void powerCuts_onAFaultyDiskForLong_loseNoKeptRecordAndRepeatNone() {
    tell(20_000);
  }
}
