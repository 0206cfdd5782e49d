package loadwalk.report;

import java.util.ArrayList;
import java.util.List;
import loadwalk.report.page.Walks;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;

/** Gives tests of other packages the bodies of whole walks. */
public final class Journals {
  /** The name that each of them gives its walk. */
  public static final String NAME = Walks.NAME;

  private Journals() {}

  /** Returns the bodies of a walk of a practice amplifier. */
  public static List<String> practice(long seed, String sequence) {
    return bodies(Walks.practicing(seed, sequence).toTheEnd());
  }

  static List<String> bodies(Walks walk) {
    List<String> bodies = new ArrayList<>();
    for (Stamped fact : walk.facts()) {
      bodies.add(FactText.body(List.of(fact)));
    }
    return bodies;
  }
}
