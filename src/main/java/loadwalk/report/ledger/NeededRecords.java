package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;

/**
 * Picks the records of a journal that a ledger needs.
 *
 * <p>Most of a journal is briefs, the warm-up clock and warm-up temperatures. Of a run of the clock
 * only its last record counts. A record is skipped only if what can be spared is its only fact, and
 * never the last one, whose time is the walk's. JSON escapes a quote inside a text, so the opening
 * of a fact cannot appear anywhere else.
 */
final class NeededRecords {
  private static final String FACT = "{\"fact\":\"";
  private static final List<String> NEEDLESS = List.of(FACT + "briefed\"", FACT + "noted\"");
  private static final String CLOCK = FACT + "warmed\",\"step\":\"";
  private static final String TEMPERATURE =
      FACT + "entered\",\"step\":\"warm-up\",\"reading\":\"sinkCelsius\"";

  private NeededRecords() {}

  static List<String> needed(List<String> bodies) {
    List<String> needed = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      boolean last = i == bodies.size() - 1;
      boolean runsOn = !last && isClock(bodies.get(i)) && isClock(bodies.get(i + 1));
      if (last || (isNeeded(bodies.get(i)) && !(runsOn && sameStep(bodies, i)))) {
        needed.add(bodies.get(i));
      }
    }
    return needed;
  }

  private static boolean isClock(String body) {
    return opens(body, CLOCK);
  }

  private static boolean sameStep(List<String> bodies, int at) {
    return step(bodies.get(at)).equals(step(bodies.get(at + 1)));
  }

  private static String step(String clock) {
    int from = clock.indexOf(CLOCK) + CLOCK.length();
    return clock.substring(from, clock.indexOf('"', from));
  }

  static boolean isNeeded(String body) {
    boolean undoubted = opens(body, TEMPERATURE) && body.contains("\"doubts\":[]");
    return !undoubted && NEEDLESS.stream().noneMatch(fact -> opens(body, fact));
  }

  /** Tells whether a record holds one fact alone, which opens like this. */
  private static boolean opens(String body, String fact) {
    int at = body.indexOf(FACT);
    return at >= 0 && body.indexOf(FACT, at + 1) < 0 && body.startsWith(fact, at);
  }
}
