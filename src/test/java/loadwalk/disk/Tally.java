package loadwalk.disk;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** Counts what power cuts left. */
final class Tally {
  private int images;
  private int without;
  private int torn;
  private int inFlight;
  private long called;

  void image(boolean isThere, boolean isTorn, int calledKept, int found) {
    images++;
    without += isThere ? 0 : 1;
    torn += isTorn ? 1 : 0;
    called += calledKept;
    inFlight += Math.max(0, found - calledKept);
  }

  void tell(String what, long seed) {
    System.out.printf(
        "power cuts, %s: %d images, seed %d, %d records called kept, all there once; %d torn tails,"
            + " %d images before the journal, %d records not yet called kept%n",
        what, images, seed, called, torn, without, inFlight);
    assertTrue(torn > 0 && called > images, "images that say nothing");
  }
}
