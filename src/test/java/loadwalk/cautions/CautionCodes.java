package loadwalk.cautions;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The codes of all cautions, each with the levels that it can have.
 *
 * @param levels the levels by code, as {@code codes.md} lists them
 */
record CautionCodes(Map<String, Set<String>> levels) {
  private static final List<String> COLUMNS = List.of("code", "clear", "heed", "halt");

  static CautionCodes read(String text) {
    Map<String, Set<String>> levels = new LinkedHashMap<>();
    for (MarkdownTable.Row row : MarkdownTable.read("codes.md", text, COLUMNS)) {
      Set<String> its = new LinkedHashSet<>(COLUMNS.subList(1, COLUMNS.size()));
      its.removeIf(level -> row.cell(level).equals(MarkdownTable.NONE));
      if (its.isEmpty() || levels.put(row.cell("code"), its) != null) {
        throw row.fault("a code stands once, with a level");
      }
    }
    return new CautionCodes(levels);
  }

  /** Tells whether a caution such as {@code heed lead-amps} can be given. */
  boolean holds(String caution) {
    String[] parts = caution.split(" ", 2);
    return parts.length == 2 && levels.getOrDefault(parts[1], Set.of()).contains(parts[0]);
  }

  /** Returns every caution that can be given, as {@code heed lead-amps}. */
  Set<String> all() {
    Set<String> all = new LinkedHashSet<>();
    levels.forEach((code, its) -> its.forEach(level -> all.add(level + " " + code)));
    return all;
  }
}
