package loadwalk.report;

import java.util.ArrayList;
import java.util.List;
import loadwalk.report.page.Walks;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.WalkState;

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
    WalkState state = null;
    for (Stamped fact : walk.facts()) {
      List<Stamped> one = List.of(fact);
      bodies.add(
          state == null ? FactText.body(one) : FactText.body(state, one, bodies.size() + 1L));
      state = fact.fact().applyTo(state, fact.wallMillis());
    }
    return bodies;
  }
}
