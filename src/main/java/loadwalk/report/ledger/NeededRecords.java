package loadwalk.report.ledger;

import java.util.List;

/**
 * Picks the records of a journal that a ledger needs.
 *
 * <p>Briefs, the warm-up clock and the temperatures of a warm-up are most of a journal and change
 * nothing that a ledger shows. A record is passed over only where it holds that one fact: in JSON a
 * quote inside a text is escaped, so the opening of a fact can stand nowhere else.
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
