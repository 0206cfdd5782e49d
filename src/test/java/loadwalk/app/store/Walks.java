package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import loadwalk.journal.KeepResult;
import loadwalk.journal.Recovered;

/** What the tests of journals on a real disk share. */
public final class Walks {
  static final String HEAD = "{\"format\":\"loadwalk-journal/1\"}";
  static final WalkName NAME = new WalkName("brightmoor-900");

  private Walks() {}

  static OpeningOutcome.Writing writing(OpeningOutcome opening) {
    return assertInstanceOf(OpeningOutcome.Writing.class, opening, opening::toString);
  }

  static OpeningOutcome.Watching watching(OpeningOutcome opening) {
    return assertInstanceOf(OpeningOutcome.Watching.class, opening, opening::toString);
  }

  static String refused(OpeningOutcome opening) {
    return opening.refusal().orElseThrow(() -> new AssertionError(opening.toString()));
  }

  static void keep(OpeningOutcome.Writing opening, String body) {
    KeepResult result = opening.walk().append(body);
    assertInstanceOf(KeepResult.Kept.class, result, result::toString);
  }

  static List<String> bodies(Recovered read) {
    return read.bodies();
  }
}
