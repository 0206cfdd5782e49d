package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.plan.StockRules;
import loadwalk.report.Journals;
import loadwalk.report.page.TextPage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measures how the ledger grows: {@code mvn test -Dtest=LedgerGrowthTest -Dtest.included=long
 * -Dtest.excluded=} prints the figures that EVIDENCE.md states.
 */
class LedgerGrowthTest {
  private static final long SEED = 20260314;
  private static final String MAKER = "this program";
  private static final long MEBI = 1 << 20;

  @Test
  void tenThousandWalks_openFromTheIndexComplete() {
    byte[] index = index(10_000);
    assertTrue(index.length < 20 * MEBI, "index of " + index.length + " bytes");
    Ledger ledger = opened(index);
    assertEquals(10_000, ledger.entries().size());
    List<String> lines = TextPage.lines(LedgerPage.of(ledger), 100, false);
    assertTrue(lines.size() > 10_000, lines.size() + " lines");
  }

  @Test
  @Tag("long")
  void growth_isPrinted() {
    for (int round = 0; round < 3; round++) {
      for (int count : new int[] {100, 1000, 10_000}) {
        byte[] index = index(count);
        long used = used();
        long start = cpuNanos();
        Ledger ledger = opened(index);
        long opened = cpuNanos();
        int lines = TextPage.lines(LedgerPage.of(ledger), 100, false).size();
        long worded = cpuNanos();
        System.out.printf(
            "%d walks, seed %d: index %d KiB, opened in %.1f ms and worded in %.1f ms of processor"
                + " time (%d lines), %d KiB kept%n",
            count,
            SEED,
            index.length / 1024,
            (opened - start) / 1e6,
            (worded - opened) / 1e6,
            lines,
            (used() - used) / 1024);
        assertEquals(count, ledger.entries().size());
      }
    }
  }

  @Test
  @Tag("long")
  void folding_isPrinted() {
    List<String> bodies = Journals.practice(1, "full-walk");
    int folded = 500;
    for (int round = 0; round < 4; round++) {
      long start = cpuNanos();
      for (int i = 0; i < folded; i++) {
        assertEquals(7, LedgerEntry.ofBodies(bodies, StockRules.RULES).loads().size());
      }
      System.out.printf(
          "folding: %.2f ms of processor time a walk (%d records)%n",
          (cpuNanos() - start) / 1e6 / folded, bodies.size());
    }
  }

  private static Ledger opened(byte[] index) {
    Map<String, LedgerIndex.Kept> kept = LedgerIndex.read(index, MAKER).kept();
    List<LedgerEntry> entries = kept.values().stream().map(LedgerIndex.Kept::entry).toList();
    return Ledger.of(entries).sorted(LedgerSort.POWER);
  }

  private static byte[] index(int count) {
    Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
    for (LedgerEntry e : Entries.many(count, SEED)) {
      kept.put(e.walk(), new LedgerIndex.Kept("opening " + e.walk(), "", e));
    }
    return new LedgerIndex(kept).bytes(MAKER);
  }

  /** The machine may be busy with other things, so the thread's own time is what is stated. */
  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    System.gc();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
