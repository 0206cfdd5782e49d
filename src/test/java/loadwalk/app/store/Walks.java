package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.KeepResult;
import loadwalk.journal.Recovered;

/** What the tests of journals on a real disk share. */
public final class Walks {
  static final String HEAD = "{\"format\":\"loadwalk-journal/1\"}";
  static final WalkName NAME = new WalkName("brightmoor-900");

  private Walks() {}

  static Opening.Writing writing(Opening opening) {
    return assertInstanceOf(Opening.Writing.class, opening, opening::toString);
  }

  static Opening.Watching watching(Opening opening) {
    return assertInstanceOf(Opening.Watching.class, opening, opening::toString);
  }

  static String refused(Opening opening) {
    return opening.refusal().orElseThrow(() -> new AssertionError(opening.toString()));
  }

  static void keep(Opening.Writing opening, String body) {
    KeepResult result = opening.walk().append(body);
    assertInstanceOf(KeepResult.Kept.class, result, result::toString);
  }

  static List<String> bodies(Recovered read) {
    return read.records().stream().map(JournalRecord::body).toList();
  }
}
