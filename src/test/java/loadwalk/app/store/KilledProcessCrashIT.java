package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.app.store.Walks.bodies;
import static loadwalk.app.store.Walks.writing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a real process at random moments while it adds records to a walk on the real disk. */
class KilledProcessCrashIT {
  private static final long SEED = 600_613;
  private static final int KILLS_A_WALK = 25;
  private static final Pattern NUMBER = Pattern.compile("\\{\"n\":(\\d+),.*");

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private final List<Long> there = new ArrayList<>();
  private int acknowledged;
  private int torn;
  private int inFlight;

  @Test
  void fifteenKills_loseNoKeptRecordAndRepeatNone() throws Exception {
    kill(15);
  }

  @Test
  @Tag("long")
  void fiveHundredKills_loseNoKeptRecordAndRepeatNone() throws Exception {
    kill(500);
  }

  private void kill(int kills) throws Exception {
    for (int i = 0; i < kills; i++) {
      if (i % KILLS_A_WALK == 0) {
        there.clear();
      }
      WalkName name = new WalkName("walk-" + i / KILLS_A_WALK);
      long first = 1_000_000L * (i + 1);
      check(name, first, keptBeforeTheKill(name, first), "kill " + i + ", seed " + SEED);
    }
    System.out.printf(
        "real kills: %d, seed %d, %d records called kept, all there once; %d torn lines, %d kept"
            + " but not yet called so%n",
        kills, SEED, acknowledged, torn, inFlight);
    assertTrue(acknowledged >= kills, "records: " + acknowledged);
  }

  /** Runs a child until it is killed; returns the numbers it called kept. */
  private List<Long> keptBeforeTheKill(WalkName name, long first) throws Exception {
    Process child = AppendingChild.start(folder, name, first);
    try (InputStream from = child.getInputStream()) {
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      int lines = 1 + random.nextInt(20);
      for (int b = 0; b >= 0 && lines > 0; lines -= b == '\n' ? 1 : 0) {
        b = from.read();
        said.write(b);
      }
      LockSupport.parkNanos(random.nextInt(4_000_000));
      // By its handle: the process itself would also close the stream that is still to be read.
      assertTrue(child.toHandle().destroyForcibly(), "the child could not be killed");
      from.transferTo(said);
      child.waitFor();
      return numbers(said.toString(UTF_8));
    }
  }

  private static List<Long> numbers(String said) {
    List<Long> numbers = new ArrayList<>();
    for (String line : said.substring(0, said.lastIndexOf('\n') + 1).split("\n")) {
      assertTrue(line.startsWith("kept "), "the child said: " + line);
      numbers.add(Long.parseLong(line.substring(5)));
    }
    return numbers;
  }

  private void check(WalkName name, long first, List<Long> kept, String where) throws IOException {
    JournalFolder store = new JournalFolder(new DataHome(folder));
    OpeningOutcome.Writing opened = writing(store.open(name));
    opened.walk().close();
    List<Long> found = new ArrayList<>();
    for (String body : bodies(opened.read()).subList(1, opened.read().records().size())) {
      Matcher number = NUMBER.matcher(body);
      assertTrue(number.matches(), where + ": " + body);
      found.add(Long.parseLong(number.group(1)));
    }
    there.addAll(kept);
    if (found.size() == there.size() + 1) {
      inFlight++;
      there.add(kept.isEmpty() ? first : kept.get(kept.size() - 1) + 1);
    }
    assertEquals(there, found, where);
    Set<Long> once = new HashSet<>(found);
    assertEquals(once.size(), found.size(), where);
    acknowledged += kept.size();
    torn += opened.aside().isPresent() ? 1 : 0;
  }
}
