package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import loadwalk.Needs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Cuts the power at every call of real, recorded runs, on a disk where only what was forced is
 * sure, and takes the walk up from what that leaves. A disk that says forced and is not, is not
 * held to anything here.
 */
class PowerCutCrashTest {
  private static final long SEED = 20_261_130;

  @TempDir Path folder;

  private Tracer tracer;
  private Disks disks;
  private final Random random = new Random(SEED);
  private final Tally tally = new Tally();

  @BeforeEach
  void needTracer() throws IOException {
    Needs.tool("strace");
    tracer = new Tracer(Files.createDirectories(folder.toRealPath().resolve("watched")));
    disks = Disks.make(folder);
  }

  @AfterEach
  void giveBack() throws IOException {
    disks.close();
  }

  @Test
  void powerCuts_atEveryCallOfAWalk_loseNothingCalledKept() throws Exception {
    cutNewWalk(2);
  }

  @Test
  @Tag("long")
  void powerCuts_atEveryCallOfAWalkForLong_loseNothingCalledKept() throws Exception {
    cutNewWalk(40);
  }

  @Test
  void powerCuts_whileATornWalkIsTakenUp_loseNeitherTornBytesNorPhoto() throws Exception {
    cutTornWalk(4);
  }

  @Test
  @Tag("long")
  void powerCuts_whileATornWalkIsTakenUpForLong_loseNeitherTornBytesNorPhoto() throws Exception {
    cutTornWalk(150);
  }

  @Test
  void powerCuts_whileASheetIsReplaced_leaveTheOldOneOrTheNew() throws Exception {
    cutSheet(5);
  }

  private void cutNewWalk(int times) throws Exception {
    Before before = Before.of(tracer.watched());
    cut(before, RecordedWalks.whole(tracer), List.of(), "", times);
    tally.tell("new walk", SEED);
  }

  private void cutTornWalk(int times) throws Exception {
    String torn = RecordedWalks.leaveTorn(tracer);
    Before before = Before.of(tracer.watched());
    List<String> there = Files.readAllLines(RecordedWalks.journal(tracer));
    cut(before, RecordedWalks.takenUp(tracer), there.subList(0, there.size() - 1), torn, times);
    tally.tell("torn walk", SEED);
  }

  private void cut(Before before, Tracer.Run run, List<String> there, String torn, int times)
      throws Exception {
    Platter platter = new Platter(before);
    JournalLines lines = new JournalLines(there);
    boolean last = false;
    for (Call call : run.calls()) {
      platter.take(call);
      lines.take(call);
      boolean saidAgain = call.is(Call.Kind.SAY) && last;
      last = call.is(Call.Kind.SAY);
      for (int i = 0; i < times && !saidAgain; i++) {
        for (Platter.Cut cut : Platter.Cut.values()) {
          Reopened.from(platter.image(cut, random), disks)
              .holds(lines, tally, cut + " after «" + call.words() + "», seed " + SEED)
              .keepsTornBytes(torn);
        }
      }
    }
    FailedCallCrashTest.asOnTheRealDisk(platter, tracer, "at the end");
  }

  private void cutSheet(int times) throws Exception {
    RecordedWalks.whole(tracer);
    Path sheet = tracer.watched().resolve("sheet.csv");
    byte[] old = "the sheet of yesterday".getBytes(UTF_8);
    Files.write(sheet, old);
    Before before = Before.of(tracer.watched());
    Tracer.Run run = tracer.run("", "sheet", RecordedWalks.walk(tracer), "--csv", sheet.toString());
    byte[] fresh = Files.readAllBytes(sheet);
    assertTrue(fresh.length > 500, run::toString);
    Platter platter = new Platter(before);
    int images = 0;
    for (Call call : run.calls()) {
      platter.take(call);
      for (int i = 0; i < times; i++) {
        for (Platter.Cut cut : Platter.Cut.values()) {
          byte[] left = platter.image(cut, random).files().get("sheet.csv");
          boolean whole = Arrays.equals(old, left) || Arrays.equals(fresh, left);
          assertTrue(whole, cut + " after «" + call.words() + "», seed " + SEED);
          images++;
        }
      }
    }
    assertArrayEquals(fresh, platter.image(Platter.Cut.ALL_LOST, random).files().get("sheet.csv"));
    assertEquals(run.calls().size() * times * Platter.Cut.values().length, images);
  }
}
