package loadwalk.view;

import loadwalk.KeptText;

/** Pictures and transcripts, compared with those kept in {@code src/test/resources/snapshots}. */
public final class Snapshots {
  private Snapshots() {}

  /** Compares a text with the one kept under a name. */
  public static void holds(String name, String text) {
    KeptText.same(KeptText.place("snapshots", name + ".txt"), text);
  }
}
