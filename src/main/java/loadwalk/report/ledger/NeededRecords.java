package loadwalk.report.ledger;

import java.util.List;

/**
 * Picks the records of a journal that a ledger needs.
 *
 * <p>Most of a journal is briefs, the warm-up clock and warm-up temperatures, which change nothing
 * that a ledger shows. A record is skipped only if that is its only fact. JSON escapes a quote
 * inside a text, so the opening of a fact cannot appear anywhere else.
 */
final class NeededRecords {
  private static final String FACT = "{\"fact\":\"";
  private static final List<String> NEEDLESS =
      List.of(
          FACT + "briefed\"",
          FACT + "warmed\"",
          FACT + "begun\"",
          FACT + "armed\"",
          FACT + "noted\"",
          FACT + "entered\",\"step\":\"warm-up");

  private NeededRecords() {}

  static List<String> needed(List<String> bodies) {
    return bodies.stream().filter(NeededRecords::isNeeded).toList();
  }

  static boolean isNeeded(String body) {
    int at = body.indexOf(FACT);
    boolean one = at >= 0 && body.indexOf(FACT, at + 1) < 0;
    return !one || NEEDLESS.stream().noneMatch(n -> body.startsWith(n, at));
  }
}
