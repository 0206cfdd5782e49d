package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.journal.JournalRecord;
import loadwalk.shipped.Shipped;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the program at random moments of a walk typed as lines, and takes the walk up again. */
class KilledWalkCrashIT {
  private static final long SEED = 20_26;
  private static final int KILLS_A_WALK = 10;
  private static final int LINES = 400;
  private static final Pattern KEPT = Pattern.compile("kept idle sinkCelsius ([0-9.]+) .*");

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private final List<String> there = new ArrayList<>();
  private int next;
  private int called;
  private int inFlight;

  @Test
  void eightKills_loseNoReadingCalledKept_andRepeatNone() throws Exception {
    kill(8);
  }

  @Test
  @Tag("long")
  void fiveHundredKills_loseNoReadingCalledKept_andRepeatNone() throws Exception {
    kill(500);
  }

  private void kill(int kills) throws Exception {
    for (int i = 0; i < kills; i++) {
      boolean first = i % KILLS_A_WALK == 0;
      if (first) {
        there.clear();
      }
      Path home = folder.resolve("home-" + i / KILLS_A_WALK);
      Files.createDirectories(home);
      String where = "kill " + i + ", seed " + SEED;
      List<String> kept = keptBeforeTheKill(home, first, where);
      check(home, kept, where);
    }
    System.out.printf(
        "walks killed: %d, seed %d, %d readings called kept, all there once; %d more were on disk"
            + " and not yet called so%n",
        kills, SEED, called, inFlight);
    assertTrue(called >= kills, "readings: " + called);
  }

  /** Types readings until a random moment, kills, and returns those the program called kept. */
  private List<String> keptBeforeTheKill(Path home, boolean first, String where)
      throws IOException, InterruptedException {
    Process child =
        first
            ? Shipped.start("C", home, "walk", "stereo-only", "--practice", "--plain")
            : Shipped.start("C", home, "resume", "--plain");
    List<String> kept = new ArrayList<>();
    try (OutputStream in = child.getOutputStream();
        BufferedReader out =
            new BufferedReader(new InputStreamReader(child.getInputStream(), UTF_8))) {
      in.write(lines(first).getBytes(UTF_8));
      in.flush();
      int wanted = 1 + random.nextInt(60);
      while (kept.size() < wanted) {
        String line = out.readLine();
        assertTrue(line != null, where + ": the program ended by itself");
        hear(line, kept);
      }
      LockSupport.parkNanos(random.nextInt(3_000_000));
      assertTrue(child.toHandle().destroyForcibly(), "the program could not be killed");
      child.waitFor();
      rest(out, kept);
    }
    called += kept.size();
    return kept;
  }

  /** What stood in the pipe when the program was killed; a line cut short was not said. */
  private static void rest(BufferedReader out, List<String> kept) throws IOException {
    StringBuilder rest = new StringBuilder();
    for (int c = out.read(); c >= 0; c = out.read()) {
      rest.append((char) c);
    }
    String whole = rest.substring(0, rest.lastIndexOf("\n") + 1);
    whole.lines().forEach(line -> hear(line, kept));
  }

  private static void hear(String line, List<String> kept) {
    Matcher matcher = KEPT.matcher(line + " ");
    if (matcher.matches()) {
      kept.add(matcher.group(1));
    }
  }

  private String lines(boolean first) {
    StringBuilder lines = new StringBuilder(first ? "skip it is a test\nbegin\n" : "begin\n");
    for (int i = 0; i < LINES; i++) {
      next++;
      lines.append(String.format(Locale.ROOT, "sinkCelsius %.3f%n", 20 + next / 1000.0));
    }
    return lines.toString();
  }

  private void check(Path home, List<String> kept, String where) throws IOException {
    JournalFolder store = new JournalFolder(new DataHome(home));
    OpeningOutcome.Writing opened = Walks.writing(store.open(store.list().walks().get(0).name()));
    opened.walk().close();
    List<String> found = new ArrayList<>();
    for (JournalRecord record : opened.read().records()) {
      FactText.read(record.body()).stream()
          .map(s -> s.fact())
          .filter(Fact.Entered.class::isInstance)
          .forEach(f -> found.add(((Fact.Entered) f).text()));
    }
    there.addAll(kept);
    assertTrue(found.size() >= there.size(), where + ": readings are missing");
    assertEquals(there, found.subList(0, there.size()), where);
    int more = found.size() - there.size();
    assertTrue(more <= 1, where + ": " + more + " readings were kept and never called so");
    assertEquals(found.size(), new HashSet<>(found).size(), where + ": a reading is there twice");
    inFlight += more;
    there.addAll(found.subList(there.size(), found.size()));
  }
}
